package portwright.calc.firing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

/**
 * Runs the steps of a firing through the heat balance.
 *
 * <p>Energy balances to 1e-3 over any firing (to rounding, in fact: the scheme is conservative). The controller is ideal:
 * it gives exactly the power that follows the rate, between nothing and all there is. An interrupted thread ends its run
 * with a {@link CancellationException}.
 */
public final class Simulation extends Tally {
    /** Shortest time step toward the end of a ramp, s. */
    private static final double SHORTEST_S = 1;

    private static final double STALL_K_PER_S = 1 / 3600.0;
    private static final double STALL_WINDOW_S = 1800;
    /** Windows in a row in which a kiln that is to cool does not. */
    private static final int HOT_WINDOWS = 2;

    private static final double PATIENCE_S = 6 * 3600.0;
    private static final double HOTTEST_K = 1800;
    /** Open ports cool fast: so much finer than a step. */
    private static final double OPEN_FINER = 3;

    private final KilnHeat kiln;
    private final GasExchange gas;
    private final double startK;
    private final StepWatch watch;
    private double keptK;

    private Simulation(KilnHeat kiln, GasExchange gas, List<ConeWork> watched, Numerics numerics, StepWatch watch) {
        super(new Balance(kiln, kiln.roomK(), numerics.intervalsPerLayer()), watched, numerics);
        this.watch = watch;
        this.kiln = kiln;
        this.gas = gas;
        this.startK = kiln.roomK();
        this.keptK = startK;
    }

    /**
     * Computes a firing from a cold kiln.
     *
     * @param watched cones placed in the kiln besides those the steps name
     */
    public static FiringRun run(
            KilnHeat kiln, GasExchange gas, List<Step> steps, List<ConeWork> watched, Numerics numerics) {
        return run(kiln, gas, steps, watched, numerics, (step, share, state) -> {});
    }

    /** The same, with someone who looks at the kiln where each step begins and ends. */
    static FiringRun run(
            KilnHeat kiln,
            GasExchange gas,
            List<Step> steps,
            List<ConeWork> watched,
            Numerics numerics,
            StepWatch watch) {
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a firing needs a step");
        }
        List<ConeWork> all = new ArrayList<>(watched);
        for (Step s : steps) {
            if (s.goal() instanceof Step.ToCone c
                    && all.stream().noneMatch(w -> w.name().equals(c.cone().name()))) {
                all.add(c.cone());
            }
        }
        return new Simulation(kiln, gas, all, numerics, watch).run(steps);
    }

    private FiringRun run(List<Step> steps) {
        List<StepResult> results = new ArrayList<>();
        List<OpenSpell> spells = new ArrayList<>();
        boolean reached = true;
        for (int i = 0; i < steps.size() && reached; i++) {
            if (i > 0 && steps.get(i).gas() != steps.get(i - 1).gas()) {
                spells.add(open(i, steps.get(i - 1), steps.get(i)));
            }
            StepResult r = step(i, steps.get(i));
            results.add(r);
            reached = r.reached();
            keptK = balance.chamberK();
        }
        EnergyBalance energy = new EnergyBalance(
                electricJ,
                fuelNetJ,
                carriedOutJ,
                leakJ,
                radiationJ,
                wallLossJ,
                balance.shellJ(startK),
                balance.loadJ(startK));
        return new FiringRun(samples, results, spells, down, energy, reached, hottestOutsideK);
    }

    /** The minutes that the kiln stands open where gas is lit or put out; the step after them begins from what they leave. */
    private OpenSpell open(int index, Step before, Step after) {
        boolean lighting = after.gas();
        Step beside = lighting ? before : after;
        double beginS = timeS;
        double fromK = balance.chamberK();
        double electric0 = electricJ;
        double lost0 = carriedOutJ + radiationJ;
        between = true;
        burst(index, beside, false, lighting ? gas.lightingS() : OpenSpell.seconds());
        double toK = balance.chamberK();
        double lost = carriedOutJ + radiationJ - lost0;
        double electric = electricJ - electric0;
        double fuel0 = fuelKg;
        if (lighting) {
            burst(index, after, true, OpenSpell.cleanSeconds());
        }
        between = false;
        return new OpenSpell(
                index,
                lighting,
                beginS,
                timeS,
                fromK,
                toK,
                balance.chamberK(),
                lost,
                electric,
                electricJ - electric0 - electric,
                fuelKg - fuel0);
    }

    /** Some minutes with ports open and plate off; the controller, where a step has one, keeps what the chamber had or the lower goal. */
    private void burst(int index, Step as, boolean lit, double seconds) {
        FlowCurve flow = new FlowCurve(kiln, gas, OpenSpell.open(as, lit), 1);
        double least = as.goal() instanceof Step.To t ? Math.min(keptK, t.temperatureK()) : keptK;
        double endS = timeS + seconds;
        while (timeS < endS - 1e-6) {
            double dt = Math.min(numerics.stepS() / OPEN_FINER, Math.min(endS, nextSampleS()) - timeS);
            balance.advance(dt, as.controlled() ? least : Double.NaN, mostW(as), flow);
            commit(dt, flow, index, -1);
        }
        sample(index, flow, climb);
    }

    private double mostW(Step step) {
        return !step.electric() ? 0 : kiln.elements().fullW() * (step.controlled() ? 1 : step.elementShare());
    }

    private StepResult step(int index, Step step) {
        double beginS = timeS;
        double beginK = balance.chamberK();
        double electric0 = electricJ;
        double fuel0 = fuelKg;
        double heat0 = fuelNetJ;
        double share = damper(step, beginK);
        FlowCurve flow = new FlowCurve(kiln, gas, step, share);
        watch.look(step, share, balance);
        double most = mostW(step);
        int cone = step.goal() instanceof Step.ToCone c ? indexOf(c.cone()) : -1;
        double goalK = step.goal() instanceof Step.To t ? t.temperatureK() : Double.NaN;
        double direction = Double.isNaN(goalK) || goalK >= keptK ? 1 : -1;
        double holdS = step.goal() instanceof Step.Hold h ? h.seconds() : Double.POSITIVE_INFINITY;
        boolean done = cone >= 0 && work[cone] >= 1 || holdS <= 0 || direction * (beginK - goalK) >= 0;
        boolean stalled = false;
        boolean tooLong = false;
        boolean heated = step.gas() || most > 0 && !step.controlled();
        int stands = 0;
        double markS = timeS;
        double markK = beginK;
        if (samples.isEmpty()) {
            sample(index, flow, 0);
        }
        while (!done && !stalled && !tooLong) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("the firing was called off");
            }
            double t = balance.chamberK();
            double dt = Math.min(numerics.stepS(), holdS - (timeS - beginS));
            dt = Math.min(dt, nextSampleS() - timeS);
            boolean ramp = holdS == Double.POSITIVE_INFINITY && step.controlled() && step.rateKPerS() < Step.FULL;
            if (ramp && !Double.isNaN(goalK)) {
                dt = Math.min(dt, Math.max(SHORTEST_S, Math.abs(goalK - t) / step.rateKPerS()));
            }
            double rate = ramp ? direction * step.rateKPerS() : Double.NaN;
            double kept = !step.controlled() || ramp
                    ? Double.NaN
                    : holdS < Double.POSITIVE_INFINITY ? keptK : direction < 0 ? goalK : Double.NaN;
            balance.advance(dt, ramp ? t + rate * dt : kept, most, flow);
            double next = balance.nextChamberK();
            double over = Double.isNaN(goalK) ? 0 : direction * (next - goalK);
            if (!Double.isNaN(goalK) && over > 1e-9) {
                dt *= (goalK - t) / (next - t);
                balance.advance(dt, ramp ? t + rate * dt : kept, most, flow);
            } else if (cone >= 0) {
                double add = coneWork(cone, t, next, dt);
                if (work[cone] + add > 1) {
                    dt *= (1 - work[cone]) / add;
                    balance.advance(dt, ramp ? t + rate * dt : kept, most, flow);
                    done = true;
                }
            }
            commit(dt, flow, index, cone >= 0 && done ? cone : -1);
            next = balance.chamberK();
            done = done || !Double.isNaN(goalK) && direction * (next - goalK) > -1e-3 || timeS - beginS >= holdS - 1e-6;
            if (!done && holdS == Double.POSITIVE_INFINITY && timeS - markS >= STALL_WINDOW_S) {
                double slowest = Math.min(STALL_K_PER_S, step.rateKPerS() / 2);
                boolean slow = direction * (next - markK) / (timeS - markS) < slowest;
                stands = slow ? stands + 1 : 0;
                // after plate and ports are shut a face that walls warm again may rise for a while
                stalled = direction < 0
                        ? heated && stands >= HOT_WINDOWS
                        : slow
                                && (cone < 0
                                        || (1 - work[cone]) / watched.get(cone).perSecond(next) > PATIENCE_S);
                markS = timeS;
                markK = next;
            }
            tooLong = !done && holdS == Double.POSITIVE_INFINITY && timeS - beginS > numerics.longestS()
                    || next > HOTTEST_K;
        }
        sample(index, flow, climb);
        watch.look(step, share, balance);
        boolean open = step.portsOpen();
        return new StepResult(
                index,
                step,
                beginS,
                timeS,
                beginK,
                balance.chamberK(),
                done && !tooLong,
                stalled,
                open ? share : Double.NaN,
                flow.at(beginK),
                flow.at(balance.chamberK()),
                electricJ - electric0,
                fuelKg - fuel0,
                fuelNetJ - heat0,
                climb);
    }

    private double damper(Step step, double beginK) {
        if (step.damper() instanceof Step.Share s) {
            return s.open();
        }
        double endK = beginK;
        if (step.goal() instanceof Step.To t) {
            endK = t.temperatureK();
        } else if (step.goal() instanceof Step.ToCone c) {
            endK = c.cone().endTemperatureK(60 / 3600.0);
        }
        double lambda = ((Step.ForLambda) step.damper()).lambda();
        return step.portsOpen() ? gas.damperFor(lambda, (beginK + endK) / 2) : 1;
    }
}
