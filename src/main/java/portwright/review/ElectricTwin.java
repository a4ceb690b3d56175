package portwright.review;

import java.util.Comparator;
import java.util.List;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.Simulation;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;

/**
 * The same load fired by electricity alone: the same goals and holds at the same rates, ports plugged, leaks as they are, all the power there is where a
 * rate cannot be kept. What cools by itself does so here too.
 *
 * @param lastClimbKPerS mean climb over the last 100 K before its hottest step ends; NaN where it does not get there or climbs less
 * @param slower whether the kiln is slower there than that step asks
 */
public record ElectricTwin(FiringRun run, double lastClimbKPerS, boolean slower) {
    private static final double LAST_K = 100;
    private static final double KEPT = 0.9;

    static ElectricTwin of(KilnHeat kiln, GasExchange gas, List<Step> steps, List<ConeWork> watched) {
        FiringRun run = Simulation.run(kiln, gas, steps(steps), watched, Numerics.STANDARD);
        StepResult top = run.steps().stream()
                .filter(r -> r.step().electric() && !(r.step().goal() instanceof Step.Hold))
                .max(Comparator.comparingDouble(StepResult::endK))
                .orElse(null);
        double from = top == null || !run.reached() ? Double.NaN : run.timeAtK(top.endK() - LAST_K);
        double to = Double.isNaN(from) ? Double.NaN : run.timeAtK(top.endK() - 1e-3);
        double climb = to > from ? LAST_K / (to - from) : Double.NaN;
        return new ElectricTwin(
                run, climb, top != null && climb < KEPT * top.step().rateKPerS());
    }

    static List<Step> steps(List<Step> steps) {
        return steps.stream()
                .map(s -> s.electric() || s.gas()
                        ? Step.electric(s.goal(), s.rateKPerS())
                        : new Step(s.goal(), s.rateKPerS(), false, false, Step.CONTROLLER, false, s.damper()))
                .toList();
    }

    /**
     * Whether it reaches its goals only by creeping: slower at the end than 15 °C/h, the slowest climb for which the cone chart gives a
     * temperature, and slower than asked.
     */
    public boolean creeps() {
        return slower && lastClimbKPerS < StepTime.SLOWEST;
    }

    /** What it takes. */
    public FiringTotals totals() {
        return FiringTotals.of(run);
    }

    /** Whether it is a firing whose price may stand beside another's. */
    public boolean comparable() {
        return run.reached() && !creeps();
    }
}
