package portwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.calc.draft.Crack;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.FireState;
import portwright.calc.draft.FireUncertainty;
import portwright.calc.draft.Flue;
import portwright.calc.draft.Inlet;
import portwright.calc.draft.Spread;

/** Cost of one balance, one balance with products, and a damper curve with bands. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
public class DraftBenchmark {
    private DraftCase kiln;

    /** Three 30 mm inlets, two 40 mm flues, lid joint, 5 kW propane at 1100 °C. */
    @Setup
    public void kiln() {
        Fuel fuel = Fuels.propane();
        double gas = 5000 / 3.0 / fuel.netHeatByMass();
        List<Inlet> in = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            in.add(Inlet.plain("inlet " + i, 0.03, 0.064, 0).withGas(fuel, gas, gas * 49, 0.2));
        }
        List<Flue> out = List.of(new Flue("flue A", 0.04, 0.064, 0.614, 0.7, 0), new Flue("flue B", 0.04, 0.064, 0.614, 0.7, 0));
        kiln = new DraftCase(1373.15, 0.55, 293.15, 101325, in, out, List.of(new Crack(0.55, 0.3e-3, 1.5, 0.064)), List.of());
    }

    /** Pressures and flows, cold start. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public DraftBalance balance() {
        return DraftBalance.of(kiln);
    }

    /** The same with equilibrium products. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public FireState balanceWithProducts() {
        return FireState.of(kiln);
    }

    /** 25 damper settings with 2 000 draws each: lambda, CO, probe and pressures. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public DamperCurve damperCurveWithBands() {
        return DamperCurve.of(kiln, 25, new FireUncertainty(Spread.usual(false, true), 1, 2000));
    }
}
