package portwright.calc.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import portwright.data.SafetyNumber;
import portwright.units.Celsius;

/**
 * A cylinder that is drawn harder than the air can warm it: the liquid cools until the regulator starves.
 *
 * <p>Lumped heat balance: {@code (m c + ms cs) dT/dt = U A(m) (Ta - T) - q h(T)}, {@code dm/dt = -q}. Fourth-order
 * Runge-Kutta, steps of at most 5 s. Heat capacities from memory; the liquid is taken as one temperature. Below 0 °C frost covers the wet
 * wall and U counts at 0.65 (common practice, no source); the worked example is without frost. Example: 20 lb cylinder full at 15 °C with 8 kg of steel,
 * 20 kW gross: 5.9 °C after 30 min, -16.1 °C after 2 h.
 */
public final class ShortDraw {

    private static final double STEP_S = 5;
    private static final double EMPTY_KG = 0.02;
    private static final double FREEZING_K = Celsius.ZERO_C;

    private ShortDraw() {}

    /**
     * One point of the course.
     *
     * @param timeS from the start of the draw
     * @param liquidK liquid temperature
     * @param liquidKg left
     */
    public record Point(double timeS, double liquidK, double liquidKg) {}

    /** Why a draw ended. */
    public enum End {
        /** The time asked for ran out first. */
        LASTS,
        /** The liquid fell to the coldest useful temperature. */
        TOO_COLD,
        /** The cylinder is empty. */
        EMPTY
    }

    /**
     * The course of a draw.
     *
     * @param points about one a minute, first and last included
     * @param end why it ended
     * @param endS when it ended
     */
    public record Course(List<Point> points, End end, double endS) {
        public Course {
            points = List.copyOf(points);
        }
    }

    /**
     * Follows one cylinder.
     *
     * @param cylinder the cylinder
     * @param liquid what is in it
     * @param startKg liquid at the start
     * @param startK its temperature at the start
     * @param ambientK air temperature
     * @param drawKgPerS gas taken, constant, above 0
     * @param coldestK temperature at which the regulator starves
     * @param limitS longest time to follow
     */
    public static Course follow(
            Drum cylinder,
            Liquid liquid,
            double startKg,
            double startK,
            double ambientK,
            double drawKgPerS,
            double coldestK,
            double limitS) {
        double lo = liquid.minK();
        return follow(
                cylinder,
                liquid.densityKgPerM3(),
                t -> liquid.latentJPerKg(Math.max(lo, t)),
                SafetyNumber.value("frost-factor"),
                startKg,
                startK,
                ambientK,
                drawKgPerS,
                coldestK,
                limitS);
    }

    static Course follow(
            Drum cylinder,
            double density,
            DoubleUnaryOperator latent,
            double frost,
            double startKg,
            double startK,
            double ambientK,
            double drawKgPerS,
            double coldestK,
            double limitS) {
        if (!(drawKgPerS > 0 && startKg > 0 && limitS > 0)
                || !Double.isFinite(drawKgPerS + startKg + limitS + startK + ambientK)) {
            throw new IllegalArgumentException("a draw needs gas, liquid and time above 0, got " + drawKgPerS
                    + " kg/s, " + startKg + " kg, " + limitS + " s");
        }
        double u = SafetyNumber.value("boil-off-u");
        double bottom = SafetyNumber.value("boil-off-bottom");
        double c = SafetyNumber.value("liquid-heat-capacity");
        double steel = cylinder.steelKg() * SafetyNumber.value("steel-heat-capacity");
        Rate rate = (m, t) -> (u
                                * (t < FREEZING_K ? frost : 1)
                                * cylinder.wettedAreaM2(Math.max(0, m), density, bottom)
                                * (ambientK - t)
                        - drawKgPerS * latent.applyAsDouble(t))
                / (Math.max(0, m) * c + steel);
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, startK, startKg));
        double time = 0;
        double t = startK;
        double next = 60;
        while (true) {
            double m = startKg - drawKgPerS * time;
            End end = t <= coldestK ? End.TOO_COLD : m <= EMPTY_KG ? End.EMPTY : time >= limitS ? End.LASTS : null;
            if (end != null || time >= next) {
                points.add(new Point(time, t, Math.max(0, m)));
                next += 60;
            }
            if (end != null) {
                return new Course(points, end, time);
            }
            double h = Math.min(STEP_S, limitS - time);
            double half = m - drawKgPerS * h / 2;
            double full = m - drawKgPerS * h;
            double k1 = rate.of(m, t);
            double k2 = rate.of(half, t + h / 2 * k1);
            double k3 = rate.of(half, t + h / 2 * k2);
            double k4 = rate.of(full, t + h * k3);
            t += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            time = Math.min(limitS, time + h);
        }
    }

    private interface Rate {
        double of(double kg, double k);
    }
}
