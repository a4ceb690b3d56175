package portwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import portwright.calc.firing.ConeWork;
import portwright.data.Cone;
import portwright.data.Cones;
import portwright.model.Atmosphere;
import portwright.model.Design;
import portwright.model.FiringStep;
import portwright.model.Heat;

/**
 * One step of the firing as the supply and the room see it.
 *
 * @param index of the step, from 0
 * @param seconds its length
 * @param startC chamber at its start, °C
 * @param endC chamber at its end, °C
 * @param gas whether gas burns
 * @param electric whether the elements may be on
 * @param atmosphere level asked for; null when none is
 */
public record StepTime(
        int index, double seconds, double startC, double endC, boolean gas, boolean electric, Atmosphere atmosphere) {

    private static final double START_C = 20;
    private static final double SLOW_K_PER_H = 50;
    private static final double SLOWEST = 15 / 3600.0;
    private static final double FASTEST = 150 / 3600.0;
    /** Less than half the step between most neighbouring cones (own judgement). */
    private static final double CONE_NEAR_C = 10;

    /**
     * The steps in order. A climb at {@code full} power takes as long as the forecast says; where there is none, or it does not get there, it is
     * counted at 50 °C/h, a slow climb near the top, so that gas burns long (this project's judgement).
     */
    public static Known<List<StepTime>> of(Design design, FiringReview firing, Assumptions assume) {
        if (design.firing() == null || design.firing().steps() == null) {
            return Known.lacks(List.of("firing.steps"));
        }
        List<String> needs = new ArrayList<>();
        List<StepTime> out = new ArrayList<>();
        double at = START_C;
        int i = 0;
        for (FiringStep s : design.firing().steps()) {
            double end = end(s, at);
            double seconds = s.hold() != null ? s.hold().si() : seconds(s, i, Math.abs(end - at), firing, assume);
            if (s.heat() == null) {
                needs.add("firing.steps[" + i + "].heat");
            } else {
                boolean gas = s.heat() == Heat.GAS || s.heat() == Heat.BOTH;
                boolean electric = (s.heat() == Heat.ELECTRIC || s.heat() == Heat.BOTH)
                        && (s.elementShare() == null || s.elementShare().share() > 0);
                out.add(new StepTime(i, seconds, at, end, gas, electric, s.atmosphere()));
            }
            at = end;
            i++;
        }
        return needs.isEmpty() ? Known.of(List.copyOf(out)) : Known.lacks(needs);
    }

    private static double end(FiringStep s, double at) {
        if (s.cone() != null) {
            return coneEndC(s);
        }
        return s.to() == null ? at : s.to().celsius();
    }

    /** Chamber temperature, °C, at which a step's cone is down at the step's rate, within the chart's climbs; fast where no rate is stated. */
    public static double coneEndC(FiringStep s) {
        return endC(Cones.load().find(s.cone()).orElseThrow(), s);
    }

    /** The cone that is down nearest to a step's temperature at the step's rate; empty where none is within 10 °C. */
    public static Optional<String> coneAt(FiringStep s) {
        double c = s.to().celsius();
        return Cones.load().all().stream()
                .min(Comparator.comparingDouble(k -> Math.abs(endC(k, s) - c)))
                .filter(k -> Math.abs(endC(k, s) - c) <= CONE_NEAR_C)
                .map(Cone::name);
    }

    private static double endC(Cone cone, FiringStep s) {
        double rate = s.rate() == null
                ? FASTEST
                : Math.max(SLOWEST, Math.min(FASTEST, s.rate().si()));
        return ConeWork.of(cone).endTemperatureK(rate) - 273.15;
    }

    private static double seconds(FiringStep s, int index, double rise, FiringReview firing, Assumptions assume) {
        if (s.rate() != null) {
            return rise / s.rate().si();
        }
        if (firing.forecast().known()) {
            var steps = firing.forecast().value().nominal().steps();
            if (index < steps.size() && steps.get(index).reached()) {
                return steps.get(index).seconds();
            }
        }
        assume.add(
                "firing.steps[" + index + "].rate",
                "50 °C/h",
                "\"full\" without a forecast that gets there is counted slow, so that gas and CO last long");
        return rise / (SLOW_K_PER_H / 3600);
    }
}
