package portwright.review;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Sample;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;

/**
 * The chamber of one step as cold as it may be, °C: the lower of what the steps say and what the forecast reaches.
 *
 * @param litC when gas is lit for it, after the open minutes; at its start where none are before it
 * @param startC at its start, after the clean fire that follows a lighting
 * @param endC at its end
 * @param lowestC lowest within it, start and end included
 */
public record ColdSide(double litC, double startC, double endC, double lowestC) {
    /** The forecast ends a step this near to its goal; a held temperature wanders less (K). */
    private static final double SAME_K = 0.01;

    /** What the steps say, without a forecast. */
    static ColdSide said(double startC, double endC) {
        return new ColdSide(startC, startC, endC, Math.min(startC, endC));
    }

    /**
     * What a forecast makes of the steps. A step after one that does not get to its goal starts no hotter than that one ended, and no later one ends
     * hotter than it: the forecast stops there and nothing shows more. Where ports stand open before a step, it starts from what they leave.
     *
     * @param said what the steps say, one each
     * @param run the forecast of the same steps
     */
    static List<ColdSide> of(List<ColdSide> said, FiringRun run) {
        List<ColdSide> out = new ArrayList<>();
        double start = Math.min(said.get(0).startC, run.samples().get(0).chamberK() - ZERO_C);
        double shown = Double.POSITIVE_INFINITY;
        for (int i = 0; i < said.size(); i++) {
            double lit = Math.min(start, openC(run, i));
            start = Math.max(lit, Math.min(start, begunC(run, i)));
            double end = Math.min(said.get(i).endC, shown);
            double lowest = Math.min(lit, end);
            if (i < run.steps().size()) {
                StepResult r = run.steps().get(i);
                boolean there = r.reached() && r.step().goal() instanceof Step.To;
                end = there ? said.get(i).endC : lower(said.get(i).endC, r.endK() - ZERO_C);
                end = Math.abs(end - start) < SAME_K ? start : end;
                lowest = lower(Math.min(lit, end), coldestC(run, i));
                shown = r.reached() ? Double.POSITIVE_INFINITY : end;
            }
            out.add(new ColdSide(lit, start, end, lowest));
            start = end;
        }
        return List.copyOf(out);
    }

    /** After the open minutes before a step: gas is lit at this; infinite without them. */
    private static double openC(FiringRun run, int step) {
        return run.before(step).map(s -> s.toK() - ZERO_C).orElse(Double.POSITIVE_INFINITY);
    }

    /** After all minutes between it and the step before: the step starts from this; infinite without them. */
    private static double begunC(FiringRun run, int step) {
        return run.before(step).map(s -> s.endK() - ZERO_C).orElse(Double.POSITIVE_INFINITY);
    }

    private static double coldestC(FiringRun run, int step) {
        return run.samples().stream()
                        .filter(s -> s.step() == step)
                        .mapToDouble(Sample::chamberK)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY)
                - ZERO_C;
    }

    private static double lower(double saidC, double computedC) {
        return computedC < saidC - SAME_K ? computedC : saidC;
    }
}
