package portwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.Forecast;
import portwright.data.Cone;
import portwright.data.Cones;
import portwright.model.Atmosphere;
import portwright.model.Design;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.units.Celsius;

/**
 * One step of the firing as the supply and the room see it.
 *
 * @param index of the step, from 0
 * @param seconds its length
 * @param slowSeconds the same by the slow end of the forecast's band, brick conducting 20 % more: with gas never shorter, without gas {@code seconds}
 * @param startC chamber at its start as asked, °C
 * @param endC chamber at its end as asked, °C; without heat no higher than at its start
 * @param cold the chamber as cold as it may be
 * @param coldest the same by the cold end of the forecast's band, brick conducting 20 % more; {@code cold} without a forecast
 * @param hold whether it holds for a time
 * @param gas whether gas burns
 * @param electric whether the elements may be on
 * @param atmosphere level asked for; null when none is
 */
public record StepTime(
        int index,
        double seconds,
        double slowSeconds,
        double startC,
        double endC,
        ColdSide cold,
        ColdSide coldest,
        boolean hold,
        boolean gas,
        boolean electric,
        Atmosphere atmosphere) {

    private static final double START_C = 20;
    /** Slowest climb of the cone chart, K/s. */
    static final double SLOWEST = 15 / 3600.0;

    private static final double FASTEST = 150 / 3600.0;
    /** Less than half the step between most neighbouring cones (own judgement). */
    private static final double CONE_NEAR_C = 10;

    /** The steps in order. Their lengths are those of {@link StepLength}. */
    public static Known<List<StepTime>> of(Design design, FiringReview firing, Assumptions assume) {
        if (design.firing() == null
                || design.firing().steps() == null
                || design.firing().steps().isEmpty()) {
            return Known.lacks(List.of("firing.steps"));
        }
        List<FiringStep> steps = design.firing().steps();
        List<String> needs = new ArrayList<>();
        List<ColdSide> said = new ArrayList<>();
        double at = START_C;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).heat() == null) {
                needs.add("firing.steps[" + i + "].heat");
            }
            double end = end(design, steps.get(i), at);
            said.add(ColdSide.said(at, end));
            at = end;
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        Forecast forecast =
                steps.stream().anyMatch(StepTime::gas) ? firing.forecast().value() : null;
        List<ColdSide> cold = forecast == null ? said : ColdSide.of(said, forecast.nominal());
        List<ColdSide> coldest = forecast == null ? said : ColdSide.of(said, forecast.slow());
        List<StepTime> out = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            FiringStep s = steps.get(i);
            double rise = Math.abs(said.get(i).endC() - said.get(i).startC());
            double seconds = StepLength.seconds(s, i, rise, forecast == null ? null : forecast.nominal(), assume);
            double slow = forecast == null || !gas(s)
                    ? seconds
                    : Math.max(seconds, StepLength.seconds(s, i, rise, forecast.slow(), new Assumptions()));
            out.add(new StepTime(
                    i,
                    seconds,
                    slow,
                    said.get(i).startC(),
                    said.get(i).endC(),
                    cold.get(i),
                    coldest.get(i),
                    s.hold() != null,
                    gas(s),
                    electric(design, s),
                    s.atmosphere()));
        }
        return Known.of(List.copyOf(out));
    }

    static boolean gas(FiringStep s) {
        return s.heat() == Heat.GAS || s.heat() == Heat.BOTH;
    }

    private static boolean electric(Design design, FiringStep s) {
        boolean none = design.kiln() != null && design.kiln().noElements();
        return !none
                && (s.heat() == Heat.ELECTRIC || s.heat() == Heat.BOTH)
                && (s.elementShare() == null || s.elementShare().share() > 0);
    }

    private static double end(Design design, FiringStep s, double at) {
        double asked = s.cone() != null ? coneEndC(s) : s.to() == null ? at : s.to().celsius();
        return gas(s) || electric(design, s) ? asked : Math.min(at, asked);
    }

    /** Chamber temperature, °C, at which a step's cone is down at the step's rate, reckoned beyond the chart's fastest as the forecast does; the chart's fastest where no rate is stated. */
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

    /** A step's cone in words with the rate that its temperature is reckoned at, for a slower climb brings it down sooner; says where its climb is one that the chart has no temperature for. */
    static String coneWords(FiringStep s) {
        return "cone " + s.cone()
                + (beyondChart(s)
                        ? ", faster than the cone chart's 150 °C/h"
                        : s.rate() == null ? "" : " at " + s.rate().typed() + " as asked");
    }

    /** Whether a step asks for a cone at a rate beyond the cone chart's fastest. */
    public static boolean beyondChart(FiringStep s) {
        return s.cone() != null && s.rate() != null && s.rate().si() > FASTEST * (1 + 1e-9);
    }

    private static double endC(Cone cone, FiringStep s) {
        double rate = s.rate() == null ? FASTEST : Math.max(SLOWEST, s.rate().si());
        return ConeWork.of(cone).endTemperatureK(rate) - Celsius.ZERO_C;
    }
}
