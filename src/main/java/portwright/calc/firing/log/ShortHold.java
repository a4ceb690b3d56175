package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * A last hold by electricity that stands short of what it was to hold though its controller must give all there is: beside it the few minutes of known
 * power that a record has are enough to tell of a circuit that is out. A kiln that falls was switched off.
 */
final class ShortHold {
    /** So much at the end of a log says whether the kiln falls (judgement), s. */
    private static final double LAST_S = 600;

    private ShortHold() {}

    /** The finding of intervals before an end; null for none. */
    static LogFinding of(Followed f, int end) {
        int hold = f.tracker.over - 1;
        Step step = f.c.steps().get(hold);
        List<StepRecord> went = StepRecord.of(f, new double[f.c.steps().size()]);
        boolean ledHold = step.goal() instanceof Step.Hold
                && step.electric()
                && !step.gas()
                && !step.portsOpen()
                && Double.isNaN(step.elementShare());
        if (!ledHold
                || went.isEmpty()
                || went.get(went.size() - 1).index() != hold
                || !went.get(went.size() - 1).sags()
                || falls(f.c.log().readings())) {
            return null;
        }
        double full = f.c.kiln().elements().fullW();
        List<Double> missing = new ArrayList<>();
        int first = -1;
        for (int i = 0; i < end; i++) {
            if (!Double.isNaN(f.asked[i])) {
                missing.add(f.missing(i, true) * full / f.asked[i]);
                first = first < 0 ? i : first;
            }
        }
        double share = Followed.median(missing);
        return share >= FromTheStart.CIRCUIT
                ? new LogFinding(
                                Kind.ELEMENT,
                                f.grid.timeS()[first],
                                f.grid.kelvin()[first],
                                Double.NaN,
                                Double.NaN,
                                false,
                                f.offsets.isEmpty())
                        .ofElements(share, full)
                        .toldBehind()
                : null;
    }

    /** Whether the last readings fall as those of a kiln that was switched off. */
    private static boolean falls(List<LogRow> r) {
        LogRow last = r.get(r.size() - 1);
        int k = r.size() - 1;
        while (k > 0 && last.timeS() - r.get(k).timeS() < LAST_S) {
            k--;
        }
        return last.kelvin() - r.get(k).kelvin()
                <= ConeCheck.FALL_K_PER_S * (last.timeS() - r.get(k).timeS());
    }
}
