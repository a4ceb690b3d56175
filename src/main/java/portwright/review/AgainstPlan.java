package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogRow;
import portwright.calc.firing.log.RecordResult;
import portwright.calc.firing.log.StepRecord;

/**
 * Where a record that keeps the plan differs from it without a fault that it proves: steps slower than their rate, climbs off the forecast, gas lit at
 * another time. Limits are this project's judgement. Nothing is told of a firing that is not the plan's.
 *
 * @param slow steps that climb slower than their rate though the forecast keeps it; empty where fewer than two do
 * @param off climbs off the forecast where no controller leads them
 * @param sags the step whose hold ends under what it was to hold no farther than the forecast has it
 * @param lit when gas was lit, where the log tells it and it is 20 minutes and more off the plan
 */
public record AgainstPlan(List<Slow> slow, List<OffForecast> off, Optional<StepRow> sags, Optional<Lit> lit) {
    private static final double KEPT = 0.90;
    /** Share of a rate from which a forecast counts as keeping it. */
    static final double FORECAST_KEEPS = 0.95;

    private static final double LEAST_S = 1800;
    private static final int SEVERAL = 2;
    private static final double LIT_S = 1200;

    /**
     * A step slower than asked.
     *
     * @param index from 0
     * @param climbKPerS mean over the step
     * @param askedKPerS rate of the plan
     */
    public record Slow(int index, double climbKPerS, double askedKPerS) {}

    /**
     * Gas lit off the plan.
     *
     * @param index step that burns gas first, from 0
     * @param lateS after the reading met the goal of the step before, s; below 0 before
     * @param kelvin reading then
     * @param goalK goal of the step before
     */
    public record Lit(int index, double lateS, double kelvin, double goalK) {}

    /** Of one record of a review, by its number from 0. */
    public static AgainstPlan of(RecordReview r, int record) {
        RecordResult x = r.results().get(record);
        if (x.own() != null || x.scaleDoubted()) {
            return new AgainstPlan(List.of(), List.of(), Optional.empty(), Optional.empty());
        }
        List<Step> steps = r.review().firing().steps().value();
        List<StepResult> forecast =
                r.review().firing().forecast().value().nominal().steps();
        return new AgainstPlan(
                slow(forecast, x, steps),
                OffForecast.of(x, steps, forecast),
                sags(r.review(), x),
                lit(r.logs().get(record), steps));
    }

    /** Whether a climb differs from plan or forecast, so that a record without findings is not one without anything to look at. */
    public boolean unevenClimb() {
        return !slow.isEmpty() || !off.isEmpty();
    }

    private static List<Slow> slow(List<StepResult> forecast, RecordResult x, List<Step> steps) {
        List<Slow> out = new ArrayList<>();
        for (StepRecord s : x.steps()) {
            double asked = steps.get(s.index()).rateKPerS();
            boolean rated = Double.isFinite(asked) && !(steps.get(s.index()).goal() instanceof Step.Hold);
            if (rated
                    && s.index() < forecast.size()
                    && forecast.get(s.index()).climbKPerS() >= FORECAST_KEEPS * asked
                    && s.endS() - s.startS() >= LEAST_S
                    && s.climbKPerS() > 0
                    && s.climbKPerS() < KEPT * asked) {
                out.add(new Slow(s.index(), s.climbKPerS(), asked));
            }
        }
        return out.size() < SEVERAL ? List.of() : out;
    }

    /** The last step as forecast, where the record's hold sags as the forecast's does. */
    private static Optional<StepRow> sags(Review review, RecordResult x) {
        if (x.kept()) {
            return Optional.empty();
        }
        StepRecord last = x.steps().get(x.steps().size() - 1);
        return review.firing().rows(review.fire()).stream()
                .filter(row -> row.index() == last.index() && row.sags())
                .filter(row -> last.sagK() <= row.holdC() - row.endC() + StepRecord.SAGS_K)
                .findFirst();
    }

    /** The first row with gas against the end of the last step before the plan's gas. */
    private static Optional<Lit> lit(FiringLog log, List<Step> steps) {
        int gas = 1;
        while (gas < steps.size() && !steps.get(gas).gas()) {
            gas++;
        }
        if (gas >= steps.size() || !(steps.get(gas - 1).goal() instanceof Step.To goal)) {
            return Optional.empty();
        }
        LogRow before = null;
        LogRow first = null;
        for (LogRow row : log.rows()) {
            first = first == null && row.gasPa() != null && row.gasPa() > 0 ? row : first;
            before = first == null && row.gasPa() != null ? row : before;
        }
        double met = met(log, goal.temperatureK());
        if (before == null || first == null || Double.isNaN(met)) {
            return Optional.empty();
        }
        double late = first.timeS() > met ? Math.max(0, before.timeS() - met) : first.timeS() - met;
        double kelvin = reading(log, first.timeS());
        return Math.abs(late) < LIT_S ? Optional.empty() : Optional.of(new Lit(gas, late, kelvin, goal.temperatureK()));
    }

    /** When the readings first meet a temperature; NaN for never. */
    private static double met(FiringLog log, double kelvin) {
        return log.readings().stream()
                .filter(r -> r.kelvin() >= kelvin - 3)
                .mapToDouble(LogRow::timeS)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static double reading(FiringLog log, double timeS) {
        return log.readings().stream()
                .filter(r -> r.timeS() <= timeS)
                .reduce((a, b) -> b)
                .map(LogRow::kelvin)
                .orElse(Double.NaN);
    }
}
