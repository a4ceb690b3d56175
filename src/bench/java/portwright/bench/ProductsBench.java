package portwright.bench;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.Equilibrium;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.calc.combustion.GibbsMinimiser;
import portwright.calc.combustion.Products;

/** One state of products, new temperature and kept temperature, beside a general-purpose minimiser for the same composition. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ProductsBench {

    private final Fuel fuel = Fuels.propane();
    private final GibbsMinimiser minimiser = new GibbsMinimiser(GibbsMinimiser.SIX);
    private final Equilibrium kept = Equilibrium.at(1473.15);
    private double lambda = 0.6;

    private double next() {
        lambda += 0.00137;
        if (lambda > 1.4) {
            lambda -= 0.8;
        }
        return lambda;
    }

    @Benchmark
    public Products stateAtNewTemperature() {
        double l = next();
        return Products.of(fuel, Air.ROOM, l, 1300 + 100 * l, 101325);
    }

    @Benchmark
    public Products stateAtKeptTemperature() {
        return kept.burn(fuel, Air.ROOM, next(), 101325);
    }

    @Benchmark
    public double stateWithEnthalpyAndMolarMass() {
        double l = next();
        Products p = Products.of(fuel, Air.ROOM, l, 1300 + 100 * l, 101325);
        return p.enthalpy() + p.molarMass();
    }

    @Benchmark
    public Map<String, Double> generalMinimiser() {
        double l = next();
        double o2 = l * fuel.stoichOxygen();
        double[] b = {fuel.carbon(), fuel.hydrogen(), 2 * o2, 2 * o2 * 0.7905 / 0.2095};
        return minimiser.solve(b, 1300 + 100 * l, 1.01325, 0);
    }
}
