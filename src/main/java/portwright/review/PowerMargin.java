package portwright.review;

import java.util.function.DoubleFunction;
import java.util.function.Function;
import portwright.calc.firing.Elements;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.KilnHeat;

/**
 * How much a firing can lose before one of its goals is lost, with brick as tabled. NaN where it is lost already; infinite where even the most
 * that is tried does not lose it.
 *
 * @param elementRise resistance over that of new elements at which the goal is lost, as a share; worn elements have 0.1 to 0.3
 * @param voltageDrop the same loss of power as a supply under its voltage, share of the voltage
 * @param lossFactor loss factor of the shell at which it is lost, elements as the design has them
 * @param riseStep index of the step whose goal the resistance loses; −1 where nothing is lost, or all was lost before
 * @param lossStep the same of the loss factor
 */
public record PowerMargin(double elementRise, double voltageDrop, double lossFactor, int riseStep, int lossStep) {
    private static final double MOST_RISE = 1;
    private static final double MOST_FACTOR = 3;
    private static final double CLOSE = 0.005;

    static PowerMargin of(KilnHeat kiln, Function<KilnHeat, FiringRun> fire) {
        Elements e = kiln.elements();
        if (!fire.apply(kiln).reached()) {
            return new PowerMargin(Double.NaN, Double.NaN, Double.NaN, -1, -1);
        }
        Lost rise = lost(
                e.resistanceRise(),
                MOST_RISE,
                r -> fire.apply(kiln.withElements(new Elements(e.nominalW(), r, e.voltageShare()))));
        double drop = Double.isInfinite(rise.at)
                ? Double.POSITIVE_INFINITY
                : 1 - Math.sqrt((1 + e.resistanceRise()) / (1 + rise.at));
        Lost factor = lost(kiln.lossFactor(), MOST_FACTOR, f -> fire.apply(kiln.withLossFactor(f)));
        return new PowerMargin(rise.at, drop, factor.at, rise.step, factor.step);
    }

    /** The least of a quantity at which a goal is lost, and whose. */
    private record Lost(double at, int step) {
        static final Lost NOTHING = new Lost(Double.POSITIVE_INFINITY, -1);
    }

    private static Lost lost(double from, double most, DoubleFunction<FiringRun> fire) {
        FiringRun run = most <= from ? null : fire.apply(most);
        if (run == null || run.reached()) {
            return Lost.NOTHING;
        }
        double low = from;
        double high = most;
        int step = run.last().index();
        while (high - low > CLOSE) {
            double mid = (low + high) / 2;
            FiringRun tried = fire.apply(mid);
            if (tried.reached()) {
                low = mid;
            } else {
                high = mid;
                step = tried.last().index();
            }
        }
        return new Lost(high, step);
    }
}
