package portwright.calc.draft;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Products;

/**
 * The balance with what burns in it.
 *
 * @param balance pressures and flows
 * @param products equilibrium products at chamber temperature; null without gas and when an inlet spills
 */
public record FireState(DraftBalance balance, Products products) {
    private static final double LEAST_LAMBDA = 1e-6;

    /** Solves one case. */
    public static FireState of(DraftCase kiln) {
        DraftBalance b = DraftBalance.of(kiln);
        OptionalDouble lambda = b.lambda();
        Products p = lambda.isPresent() && lambda.getAsDouble() > LEAST_LAMBDA
                ? Products.of(
                        fuel(b), Air.ROOM, lambda.getAsDouble(), kiln.chamberTemperature(), kiln.atmosphericPressure())
                : null;
        return new FireState(b, p);
    }

    /** Lambda; empty without gas and when an inlet spills. */
    public OptionalDouble lambda() {
        return balance.lambda();
    }

    /** Products whose digits may be shown. */
    public Optional<Products> shown() {
        return products == null || products.formal() ? Optional.empty() : Optional.of(products);
    }

    /** Gas flows, but the composition is only formal or does not exist. */
    public boolean formal() {
        return products == null || products.formal();
    }

    /**
     * Heat left in the chamber, W: enthalpy of air and gas at room temperature less enthalpy of all that leaves at chamber
     * temperature, unburnt CO and H2 counted as lost. Negative when the flows only cool.
     */
    public double heatW() {
        DraftCase k = balance.kiln();
        double in = k.roomTemperature();
        double out = k.chamberTemperature();
        if (!(balance.gasFlow() > 0)) {
            return balance.airFlow() / Air.ROOM.molarMass() * (Air.ROOM.enthalpy(in) - Air.ROOM.enthalpy(out));
        }
        Fuel f = fuel(balance);
        double lambda = Math.max(LEAST_LAMBDA, balance.airFlow() / balance.airNeed());
        Products p = products != null ? products : Products.of(f, Air.ROOM, lambda, out, k.atmosphericPressure());
        return balance.gasFlow() / f.molarMass() * p.availableHeat(in);
    }

    /** Net heat of the gas that enters, W. */
    public double fuelNetW() {
        return balance.gasFlow() > 0 ? balance.gasFlow() * fuel(balance).netHeatByMass() : 0;
    }

    /** The one fuel, or the mixture of what enters. */
    static Fuel fuel(DraftBalance b) {
        List<Inlet> in = b.kiln().inlets();
        Fuel first = null;
        boolean one = true;
        double mol = 0;
        for (int i = 0; i < in.size(); i++) {
            if (b.inlets().get(i).gas() > 0) {
                Fuel f = in.get(i).fuel();
                one &= first == null || first.equals(f);
                first = first == null ? f : first;
                mol += b.inlets().get(i).gas() / f.molarMass();
            }
        }
        if (one) {
            return first;
        }
        double[] sum = new double[9];
        for (int i = 0; i < in.size(); i++) {
            double gas = b.inlets().get(i).gas();
            if (gas > 0) {
                Fuel f = in.get(i).fuel();
                double x = gas / f.molarMass() / mol;
                double[] part = {
                    f.carbon(),
                    f.hydrogen(),
                    f.oxygen(),
                    f.nitrogen(),
                    f.molarMass(),
                    f.grossHeat(),
                    f.netHeat(),
                    f.formationEnthalpy(),
                    f.heatCapacity()
                };
                for (int j = 0; j < part.length; j++) {
                    sum[j] += x * part[j];
                }
            }
        }
        return new Fuel(
                "mixture", sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], sum[6], sum[7], sum[8], first.source());
    }
}
