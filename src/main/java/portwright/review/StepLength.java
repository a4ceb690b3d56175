package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.StepResult;
import portwright.model.Design;
import portwright.model.FiringStep;

/** How long the steps last, and which lengths nothing proves. */
final class StepLength {
    private static final double SLOW_K_PER_H = 50;

    private StepLength() {}

    /**
     * Length of a step in s. A hold lasts as long as it says. With gas the longer of the stated rate's time and the forecast's counts, so that gas and CO
     * last; without gas the shorter, so that room and cylinder rest little. A climb at {@code full} power that no forecast gets through is counted at
     * 50 °C/h, a slow climb near the top (this project's judgement), and is {@link #unproven}. The minutes between steps are counted to the step beside
     * that has the same gas or none.
     *
     * @param run the forecast, or the slow end of its band; null where there is none
     */
    static double seconds(FiringStep s, int index, double riseK, FiringRun run, Assumptions assume) {
        double beside = run == null ? 0 : run.besideS(index);
        return beside + alone(s, index, riseK, run, assume);
    }

    private static double alone(FiringStep s, int index, double riseK, FiringRun run, Assumptions assume) {
        if (s.hold() != null) {
            return s.hold().si();
        }
        boolean gas = StepTime.gas(s);
        StepResult r =
                run == null || index >= run.steps().size() ? null : run.steps().get(index);
        double said = s.rate() != null ? riseK / s.rate().si() : Double.NaN;
        if (r != null && r.reached()) {
            return Double.isNaN(said) ? r.seconds() : gas ? Math.max(said, r.seconds()) : Math.min(said, r.seconds());
        }
        if (Double.isNaN(said)) {
            assume.add(
                    "firing.steps[" + index + "].rate",
                    "50 °C/h",
                    "\"full\" without a forecast that gets there is counted slow, so that gas and CO last long");
            said = riseK / (SLOW_K_PER_H / 3600);
        }
        return r != null && gas ? Math.max(said, r.seconds()) : said;
    }

    /**
     * Fields without which the time that gas burns is not proven: those that the forecast lacks, or the goal of the first step that it does not get to.
     * A rate that is stated proves nothing, the kiln may be slower. Empty where every step from the first gas to the last is a hold or is reached.
     */
    static List<String> unproven(Design design, FiringReview firing) {
        if (design.firing() == null || design.firing().steps() == null) {
            return List.of();
        }
        List<FiringStep> steps = design.firing().steps();
        int first = -1;
        int last = -1;
        for (int i = 0; i < steps.size(); i++) {
            if (StepTime.gas(steps.get(i))) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        List<String> out = new ArrayList<>();
        for (int i = Math.max(first, 0); i <= last && out.isEmpty(); i++) {
            if (steps.get(i).hold() != null) {
                continue;
            }
            if (!firing.forecast().known()) {
                out.addAll(firing.forecast().needs());
            } else {
                List<StepResult> run = firing.forecast().value().nominal().steps();
                if (i >= run.size() || !run.get(i).reached()) {
                    int end = Math.min(i, run.size() - 1);
                    out.add("firing.steps[" + end + "]." + (steps.get(end).cone() != null ? "cone" : "to"));
                }
            }
        }
        return List.copyOf(out);
    }
}
