package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Looks for faults in a record. Limits are this project's judgement, tuned on computed firings with planted faults. */
final class Signs {
    private static final double ZERO_C = 273.15;
    /** Nothing is said of the first minutes and of a chamber under this: the load's lag hides the power. */
    private static final double LEAST_C = 250;
    private static final int SETTLE_MIN = 25;
    static final double DRIFT_K = 25;
    private static final double LOST = 0.22;
    private static final double PART = 0.79;
    private static final double DROP = 0.16;

    private final KilnAsDesigned design;
    private final Track track;
    private final int[] step;
    private final Powers powers;
    private final Asked asked;
    private final double[] watts;
    private final List<Integer> changes;
    private final int last;
    private final List<Sign> out = new ArrayList<>();

    Signs(KilnAsDesigned design, Track track, int[] step, Powers powers, Asked asked, double[] watts) {
        this.design = design;
        this.track = track;
        this.step = step;
        this.powers = powers;
        this.asked = asked;
        this.watts = watts;
        this.changes = powers.changes();
        int end = 0;
        while (end < step.length && step[end] >= 0) {
            end++;
        }
        // smoothing and a cone seen late reach back before the end of the last step
        this.last = end == step.length ? end - 3 : end - 6 - (int) (track.windowS() / 60);
    }

    List<Sign> find(List<ConeOffset> cones) {
        drift(cones);
        air();
        double full = asked.fullW();
        runs(i -> usable(i) && asked.electric(i) && asked.behind(i) && watts[i] < LOST * certain(i), 10,
                (a, b) -> sign(Kind.POWER_LOST, a, b, 1 - Math.max(0, mean(a, b)) / certain(a)));
        runs(i -> usable(i) && asked.ahead(i) && watts[i] > 0.8 * full, 12, (a, b) -> sign(Kind.POWER_STUCK, a, b, mean(a, b) / full));
        part();
        runs(i -> usable(i) && asked.upward(i) && heated(i) && track.climb(i) < -12 / 3600.0, 10, (a, b) -> sign(Kind.FALLING, a, b, -slope(a, b) * 3600));
        runs(i -> usable(i) && asked.upward(i) && !asked.hold(i) && heated(i) && Math.abs(track.climb(i)) < 6 / 3600.0, 35,
                (a, b) -> sign(Kind.STALL, a, b, slope(a, b) * 3600));
        givenUp();
        merge();
        out.sort((x, y) -> Double.compare(x.fromS(), y.fromS()));
        return out;
    }

    /** After a stall or a lasting lack of power somebody switches off: a loss that runs to the end of the log says nothing more. */
    private void givenUp() {
        double end = (track.size() - 10) * Track.STEP_S;
        double first = out.stream().filter(s -> s.kind() == Kind.STALL || s.kind() == Kind.PART_POWER_LOST).mapToDouble(Sign::fromS).min().orElse(Double.NaN);
        out.removeIf(s -> (s.kind() == Kind.POWER_LOST || s.kind() == Kind.FALLING) && s.toS() > end && s.fromS() > first + 1800);
    }

    private boolean heated(int i) {
        return asked.electric(i) || powers.gasOn(i);
    }

    private double certain(int i) {
        double w = asked.certainW(i);
        return Double.isNaN(w) ? asked.fullW() : w;
    }

    private boolean usable(int i) {
        return step[i] >= 0 && i >= SETTLE_MIN && !track.missing()[i] && track.celsius()[i] > LEAST_C && i < last;
    }

    private void drift(List<ConeOffset> cones) {
        for (ConeOffset c : cones) {
            if (Math.abs(c.offsetK()) > DRIFT_K) {
                out.add(new Sign(Kind.THERMOCOUPLE, c.timeS(), c.timeS(), c.readC(), c.offsetK(), c.cone()));
            }
        }
    }

    /** Damper noted further open than the step asks while that carries heat away. */
    private void air() {
        runs(i -> usable(i) && powers.gasOn(i) && !Double.isNaN(track.damper()[i]) && powers.share(i) > powers.planned(i) + 0.08
                && cost(i) > 0.04 * asked.fullW(), 12, (a, b) -> sign(Kind.TOO_MUCH_AIR, a, b, cost((a + b) / 2)));
    }

    private double cost(int i) {
        return powers.flow(i, powers.planned(i)).heatW() - powers.flow(i, powers.share(i)).heatW();
    }

    private void part() {
        int window = (int) Math.max(12, track.windowS() / 60);
        int drop = -1;
        double size = 0;
        for (int i = SETTLE_MIN + window; i < track.size() - window - 6; i++) {
            if (!usable(i) || !asked.electric(i) || step[i] != step[i + window]) {
                continue;
            }
            int from = i;
            if (changes.stream().anyMatch(c -> Math.abs(c - from) <= 1.5 * window + 6)) {
                continue;
            }
            double d = (mean(i - window - 5, i - 5) - mean(i + 5, i + window + 5)) / asked.fullW();
            boolean slower = asked.behind(i + window) && track.climb(i + window) < track.climb(i - window) - 12 / 3600.0;
            if (d > size && slower) {
                size = d;
                drop = i;
            }
        }
        boolean sudden = size > DROP;
        List<Sign> low = new ArrayList<>();
        List<Sign> keep = new ArrayList<>(out);
        out.clear();
        runs(i -> usable(i) && asked.electric(i) && !Double.isNaN(asked.certainW(i)) && watts[i] < PART * asked.certainW(i)
                && watts[i] >= 0.1 * asked.certainW(i) && changes.stream().noneMatch(c -> i - c >= 0 && i - c < 15), 25,
                (a, b) -> low.add(new Sign(Kind.PART_POWER_LOST, a * Track.STEP_S, b * Track.STEP_S, track.celsius()[a], 1 - mean(a, b) / certain(a), "")));
        out.addAll(keep);
        boolean longLow = !low.isEmpty() && low.get(0).fromS() < drop * Track.STEP_S - 1800;
        if (sudden && !longLow) {
            out.add(new Sign(Kind.PART_POWER_LOST, drop * Track.STEP_S, (drop + 2.0 * window) * Track.STEP_S, track.celsius()[drop], size, ""));
        } else if (!low.isEmpty()) {
            Sign s = low.get(0);
            int a = (int) (s.fromS() / Track.STEP_S);
            boolean withGas = powers.gasOn(a) && Double.isNaN(track.damper()[a])
                    && changes.stream().anyMatch(c -> a - c >= 0 && a - c < 40 && powers.gasOn(c) != powers.gasOn(c - 1));
            out.add(withGas ? new Sign(Kind.AIR_OR_POWER, s.fromS(), s.toS(), s.celsius(), s.value(), "") : s);
        }
    }

    /** The edge of a whole loss looks like a part loss: one event, one sign. */
    private void merge() {
        List<Sign> lost = out.stream().filter(s -> s.kind() == Kind.POWER_LOST).toList();
        out.removeIf(s -> s.kind() == Kind.PART_POWER_LOST && lost.stream().anyMatch(l -> s.fromS() > l.fromS() - 1800 && s.fromS() <= l.toS()));
    }

    private double mean(int a, int b) {
        double sum = 0;
        int from = Math.max(0, a);
        int to = Math.min(watts.length - 1, b);
        for (int i = from; i <= to; i++) {
            sum += watts[i];
        }
        return sum / (to - from + 1);
    }

    private double slope(int a, int b) {
        return (track.celsius()[b] - track.celsius()[a]) / (Math.max(1, b - a) * Track.STEP_S);
    }

    private void sign(Kind kind, int a, int b, double value) {
        out.add(new Sign(kind, a * Track.STEP_S, b * Track.STEP_S, track.celsius()[a], value, ""));
    }

    private interface Run {
        void found(int from, int to);
    }

    /** Calls back for each stretch of at least {@code minutes}, gaps of up to three minutes bridged. */
    private boolean runs(IntPredicate test, int minutes, Run run) {
        int begin = -1;
        int last = -1;
        boolean any = false;
        for (int i = 0; i <= track.size(); i++) {
            boolean yes = i < track.size() && test.test(i);
            if (yes) {
                begin = begin < 0 ? i : begin;
                last = i;
            } else if (begin >= 0 && (i - last > 3 || i == track.size())) {
                if (last - begin + 1 >= minutes) {
                    run.found(begin, last);
                    any = true;
                }
                begin = -1;
            }
        }
        return any;
    }
}
