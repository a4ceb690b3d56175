package portwright.calc.firing;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The shell in the steady state: what it loses at a chamber temperature, and where the climb ends. */
public final class SteadyShell {
    private SteadyShell() {}

    private static final int PASSES = 30;
    private static final double HIGHEST_K = 2300;

    /**
     * Steady loss of the whole shell at a chamber temperature, W: conduction through the layers with k(T) times the loss
     * factor, then natural convection and radiation.
     *
     * @param chamberK hot face, K
     */
    public static double lossW(KilnHeat kiln, double chamberK) {
        double sum = 0;
        for (ShellPart p : kiln.parts()) {
            sum += partLossW(p, kiln.lossFactor(), kiln.roomK(), chamberK);
        }
        return sum;
    }

    /** Steady loss of one part, W. */
    public static double partLossW(ShellPart part, double lossFactor, double roomK, double chamberK) {
        PartGrid grid = new PartGrid(part, lossFactor, roomK, roomK, 20);
        for (int i = 0; i < PASSES; i++) {
            grid.eliminate(0);
            grid.complete(chamberK);
        }
        return grid.lossW();
    }

    /**
     * The stall temperature: where heat in equals steady loss, K. It is approached, never passed.
     *
     * @param heatW heat into the chamber at a chamber temperature in K, all sources together, W
     * @return K, at most 2300
     */
    public static double stallK(KilnHeat kiln, DoubleUnaryOperator heatW) {
        double low = kiln.roomK();
        double high = HIGHEST_K;
        if (heatW.applyAsDouble(high) > lossW(kiln, high)) {
            return high;
        }
        while (high - low > 0.05) {
            double mid = (low + high) / 2;
            if (heatW.applyAsDouble(mid) > lossW(kiln, mid)) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return (low + high) / 2;
    }

    /** Where elements alone, full on, ports plugged and leaks as they are, end the climb, K. */
    public static double stallElectricK(KilnHeat kiln, GasExchange gas) {
        return stallK(kiln, t -> kiln.elements().fullW() + gas.plugged(t).heatW());
    }

    /** Heat into the chamber at a chamber temperature as a step makes it with elements full on, W. */
    public static DoubleUnaryOperator heatOf(KilnHeat kiln, GasExchange gas, Step step, double damperShare) {
        double electricW = !step.electric()
                ? 0
                : kiln.elements().fullW() * (Double.isNaN(step.elementShare()) ? 1 : step.elementShare());
        List<OpenPort> ports = step.portsOpen() ? kiln.ports() : List.of();
        return t -> electricW
                + (step.portsOpen() ? gas.at(step.gas(), damperShare, t) : gas.plugged(t)).heatW()
                - ports.stream()
                        .mapToDouble(p -> (p.flue() ? damperShare : 1) * p.radiationW(t, kiln.roomK()))
                        .sum();
    }
}
