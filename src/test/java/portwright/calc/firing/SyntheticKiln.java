package portwright.calc.firing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** A kiln that fires through a plan with a fault planted: power lost or damper moved at some time. Readings once a minute. */
public final class SyntheticKiln {
    public record Reading(double timeS, double chamberK, int step, double damper) {}

    /** {@code power}: share of the elements' power left at a time. {@code damper}: share added to the plan's at a time, while the gas burns. */
    public record Fault(DoubleUnaryOperator power, DoubleUnaryOperator damper) {
        public static final Fault NONE = new Fault(t -> 1, t -> 0);
    }

    public record Firing(List<Reading> readings, List<ConeDown> cones) {}

    private SyntheticKiln() {}

    public static Firing fire(
            KilnHeat kiln,
            GasExchange gas,
            List<Step> steps,
            double[] planned,
            List<ConeWork> watched,
            Fault fault,
            double longestS) {
        Balance b = new Balance(kiln, kiln.roomK(), 12);
        List<Reading> out = new ArrayList<>();
        List<ConeDown> down = new ArrayList<>();
        double[] work = new double[watched.size()];
        Map<String, FlowCurve> curves = new HashMap<>();
        double t = 0;
        double peak = 0;
        for (int s = 0; s < steps.size(); s++) {
            Step step = steps.get(s);
            double begin = t;
            double start = b.chamberK();
            double set = start;
            boolean done = false;
            while (!done && t < longestS && b.chamberK() > peak - 250) {
                double plan = Double.isNaN(planned[s]) ? 1 : planned[s];
                double d = Math.round(100
                                * Math.max(
                                        0,
                                        Math.min(
                                                1,
                                                plan
                                                        + (step.gas()
                                                                ? fault.damper().applyAsDouble(t)
                                                                : 0))))
                        / 100.0;
                if (Math.round(t) % 60 == 0) {
                    out.add(new Reading(t, b.chamberK(), s, step.portsOpen() ? d : Double.NaN));
                }
                FlowCurve flow = curves.computeIfAbsent(s + "/" + d, k -> new FlowCurve(kiln, gas, step, d));
                double most = !step.electric()
                        ? 0
                        : kiln.elements().fullW()
                                * (step.controlled() ? 1 : step.elementShare())
                                * fault.power().applyAsDouble(t);
                double goal = step.goal() instanceof Step.To to ? to.temperatureK() : Double.NaN;
                double target = Double.NaN;
                if (step.controlled() && step.goal() instanceof Step.Hold) {
                    target = start;
                } else if (step.controlled() && step.rateKPerS() < Step.FULL) {
                    set = Math.min(Double.isNaN(goal) ? 9999 : goal + 1, set + 30 * step.rateKPerS());
                    target = set;
                }
                double before = b.chamberK();
                b.advance(30, target, most, flow);
                b.accept();
                t += 30;
                peak = Math.max(peak, b.chamberK());
                for (int i = 0; i < work.length; i++) {
                    double w = work[i];
                    work[i] += 30 * watched.get(i).perSecond((before + b.chamberK()) / 2);
                    if (w < 1 && work[i] >= 1) {
                        down.add(new ConeDown(watched.get(i).name(), t, b.chamberK()));
                    }
                }
                if (step.goal() instanceof Step.Hold h) {
                    done = t - begin >= h.seconds();
                } else if (step.goal() instanceof Step.ToCone c) {
                    done = down.stream().anyMatch(x -> x.cone().equals(c.cone().name()));
                } else {
                    done = b.chamberK() >= goal - 0.5;
                }
            }
            if (!done) {
                break;
            }
        }
        return new Firing(out, down);
    }
}
