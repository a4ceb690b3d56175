package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Two of the kiln's own numbers from a record: the loss factor from stretches with the gas off and a known element power,
 * the flow factor of holes and flues from stretches with the gas on and a known element power. Element power is known
 * where the step asks for a fixed share, for full power, or where a controller fell behind. NaN with the reason where the
 * record cannot tell.
 *
 * @param lossFactor new value
 * @param lossMinutes minutes it rests on
 * @param flowFactor new value, against the design as it stands
 * @param flowMinutes minutes it rests on
 * @param notes why a number is missing
 */
public record Fit(double lossFactor, int lossMinutes, double flowFactor, int flowMinutes, List<String> notes) {
    private static final int LEAST_MIN = 30;
    private static final double HOT_C = 500;
    private static final double LOSS_LOW = 0.6;
    private static final double LOSS_HIGH = 2.5;
    private static final double FLOW_LOW = 0.4;
    private static final double FLOW_HIGH = 2.0;
    private static final double SCAN = 0.1;

    public Fit {
        notes = List.copyOf(notes);
    }

    /** Fits a record. A drifted meter is corrected by the cones first. */
    public static Fit of(FiringLog log, KilnAsDesigned design) {
        Track raw = Track.of(log, design.shareOfMm());
        List<ConeOffset> cones = Drift.offsets(log, raw);
        int[] step = StepMap.of(log, raw, design.steps());
        boolean drifted = cones.stream().anyMatch(c -> Math.abs(c.offsetK()) > Signs.DRIFT_K);
        Track track = drifted ? raw.shifted(Drift.correction(cones, raw)) : raw;
        Asked asked = new Asked(design, track, step);
        Powers nominal = new Powers(design, track, step, 1);
        List<Integer> changes = nominal.changes();
        IntPredicate known = i -> step[i] >= 0 && i > 30 && !track.missing()[i] && track.celsius()[i] > HOT_C && !Double.isNaN(asked.certainW(i))
                && changes.stream().noneMatch(c -> i - c >= -6 && i - c < 15);
        List<String> notes = new ArrayList<>();
        int[] dry = minutes(track, i -> known.test(i) && !nominal.portsOpen(i));
        double loss = Double.NaN;
        if (dry.length < LEAST_MIN) {
            notes.add("loss factor: fewer than " + LEAST_MIN + " minutes above 500 °C with the gas off and all elements on; fire half an hour at full power before the gas");
        } else {
            loss = root(f -> gap(nominal.elementsW(design.kiln().withLossFactor(f)), asked, dry), LOSS_LOW, LOSS_HIGH);
            if (Double.isNaN(loss)) {
                notes.add("loss factor: no value from 0.6 to 2.5 fits; element power or load differ from the design");
            }
        }
        double used = Double.isNaN(loss) ? design.kiln().lossFactor() : loss;
        int[] wet = minutes(track, i -> known.test(i) && nominal.gasOn(i));
        double flow = Double.NaN;
        if (wet.length < LEAST_MIN) {
            notes.add("flow factor: fewer than " + LEAST_MIN + " minutes with the gas on and a known element power; leave the elements on a fixed share for a while");
        } else {
            DoubleUnaryOperator gap = f -> gap(new Powers(design, track, step, f).elementsW(design.kiln().withLossFactor(used)), asked, wet);
            List<Double> roots = roots(gap);
            flow = roots.isEmpty() ? Double.NaN : roots.get(0);
            if (roots.size() > 1) {
                notes.add(String.format(Locale.ROOT, "flow factor: %.2f fits as well: heat alone cannot tell a rich fire from a lean one; flame and probe can", roots.get(1)));
            }
            if (Double.isNaN(flow)) {
                notes.add("flow factor: no value from 0.4 to 2 fits; the damper noted, the gas or the load differ from the design");
            }
        }
        return new Fit(loss, dry.length, flow, wet.length, notes);
    }

    /** All roots over the range, nearest to 1 first: heat has a maximum near lambda 1, so there can be two. */
    private static List<Double> roots(DoubleUnaryOperator gap) {
        List<Double> out = new ArrayList<>();
        double last = gap.applyAsDouble(FLOW_LOW);
        for (double f = FLOW_LOW; f < FLOW_HIGH - 1e-9; f += SCAN) {
            double next = gap.applyAsDouble(f + SCAN);
            if (last * next <= 0 && last != next) {
                out.add(root(gap, f, f + SCAN));
            }
            last = next;
        }
        out.sort((a, b) -> Double.compare(Math.abs(a - 1), Math.abs(b - 1)));
        return out;
    }

    private static int[] minutes(Track track, IntPredicate p) {
        return IntStream.range(0, track.size()).filter(p).toArray();
    }

    private static double gap(double[] watts, Asked asked, int[] minutes) {
        double sum = 0;
        for (int i : minutes) {
            sum += watts[i] - asked.certainW(i);
        }
        return sum / minutes.length;
    }

    /** Root of a function by false position with halving; NaN if the ends do not enclose one. */
    private static double root(DoubleUnaryOperator f, double low, double high) {
        double a = low;
        double b = high;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa * fb > 0) {
            return Double.NaN;
        }
        for (int i = 0; i < 40 && b - a > 1e-3; i++) {
            double x = i % 3 == 2 ? (a + b) / 2 : a + (b - a) * fa / (fa - fb);
            x = Math.min(b - 1e-4, Math.max(a + 1e-4, x));
            double fx = f.applyAsDouble(x);
            if (fx * fa > 0) {
                a = x;
                fa = fx;
            } else {
                b = x;
                fb = fx;
            }
        }
        return Math.abs(fa) < Math.abs(fb) ? a : b;
    }
}
