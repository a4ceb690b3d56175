package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * More power than a fixed share asks, all through what a step tells of it. Rows far apart leave too few minutes for what stays on to be seen coming on; a relay that is stuck shut
 * shows in the level all the same.
 */
final class MorePower {
    /**
     * Share of full power over what is asked (this project's judgement: sound kilns of another model, with loss, load, gas and draught of their own, reached 0.06; a relay stuck
     * under 75 % of the elements gives 0.25).
     */
    private static final double MORE = 0.15;

    private static final int LEAST = 2;

    private MorePower() {}

    /** The finding of the first step that tells it; null for none. */
    static LogFinding of(Followed f) {
        double full = f.c.kiln().elements().fullW();
        for (int s = 0; s < f.c.steps().size(); s++) {
            Step step = f.c.steps().get(s);
            if (!step.electric() || !(step.elementShare() < 1)) {
                continue;
            }
            List<Integer> told = new ArrayList<>();
            for (int i = 0; i < f.intervals(); i++) {
                if (f.tracker.step[i] == s && !Double.isNaN(f.asked[i]) && f.kelvin[i] > FallsOff.WARM_K) {
                    told.add(i);
                }
            }
            double missing =
                    Followed.median(told.stream().map(i -> f.missing(i, true)).toList());
            if (told.size() >= LEAST && missing < -MORE) {
                int first = told.get(0);
                return new LogFinding(
                                Kind.MORE_POWER,
                                f.grid.timeS()[first],
                                f.grid.kelvin()[first],
                                Double.NaN,
                                Double.NaN,
                                false,
                                f.offsets.isEmpty())
                        .ofElements(missing / step.elementShare(), full);
            }
        }
        return null;
    }
}
