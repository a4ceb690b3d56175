package portwright.review;

import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import portwright.calc.firing.Elements;
import portwright.calc.firing.KilnHeat;

/**
 * How much a firing can lose before its last goal is lost, with brick as tabled. NaN where it is lost already; infinite where even the most
 * that is tried does not lose it.
 *
 * @param elementRise resistance over that of new elements at which the goal is lost, as a share; worn elements have 0.1 to 0.3
 * @param voltageDrop the same loss of power as a supply under its voltage, share of the voltage
 * @param lossFactor loss factor of the shell at which it is lost, elements as the design has them
 */
public record PowerMargin(double elementRise, double voltageDrop, double lossFactor) {
    private static final double MOST_RISE = 1;
    private static final double MOST_FACTOR = 3;
    private static final double CLOSE = 0.005;

    static PowerMargin of(KilnHeat kiln, Predicate<KilnHeat> reaches) {
        Elements e = kiln.elements();
        if (!reaches.test(kiln)) {
            return new PowerMargin(Double.NaN, Double.NaN, Double.NaN);
        }
        double rise = lost(
                e.resistanceRise(),
                MOST_RISE,
                r -> reaches.test(kiln.withElements(new Elements(e.nominalW(), r, e.voltageShare()))));
        double drop = Double.isInfinite(rise)
                ? Double.POSITIVE_INFINITY
                : 1 - Math.sqrt((1 + e.resistanceRise()) / (1 + rise));
        double factor = lost(kiln.lossFactor(), MOST_FACTOR, f -> reaches.test(kiln.withLossFactor(f)));
        return new PowerMargin(rise, drop, factor);
    }

    private static double lost(double from, double most, DoublePredicate reaches) {
        if (most <= from || reaches.test(most)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = from;
        double high = most;
        while (high - low > CLOSE) {
            double mid = (low + high) / 2;
            if (reaches.test(mid)) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return high;
    }
}
