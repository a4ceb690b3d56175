package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import portwright.calc.firing.ConeWork;
import portwright.data.Cones;

/** Thermocouple against cones. */
final class ConeCheck {
    private static final double WIDEST_K = 200;
    private static final double FROM_K = 873.15;
    /** Span of the offset, by the time between two readings, beyond which its middle says nothing. */
    private static final double KNOWN_K = 20;

    private static final double APART_S = 45;
    /** Offset from which the reading is held to be wrong, K: twice what a cone is good to would be 20; half a cone near 10 is about 12 (this project's judgement). */
    static final double TELLS_K = 15;

    private ConeCheck() {}

    static List<ConeOffset> offsets(FiringLog log, Grid g) {
        List<ConeOffset> out = new ArrayList<>();
        Cones table = Cones.load();
        List<LogRow> readings = thinned(log);
        for (LogRow row : log.cones()) {
            ConeWork w = ConeWork.of(table.find(row.cone()).orElseThrow());
            double late = offset(w, readings, row.timeS());
            if (Double.isNaN(late)) {
                continue;
            }
            // So early a fall may need an offset beyond what is tried: it then lies above.
            double found = offset(w, readings, log.before(row));
            double early = Double.isNaN(found) ? WIDEST_K : found;
            double sure = late * early <= 0 ? 0 : Math.abs(late) < Math.abs(early) ? late : early;
            double mean = Math.abs(late - early) > KNOWN_K ? sure : (late + early) / 2;
            int end = g.at(row.timeS());
            double f = row.timeS() - g.timeS()[end];
            out.add(new ConeOffset(row.cone(), row.timeS(), g.kelvin()[end] + f * g.climbKPerS()[end], mean, sure));
        }
        return out;
    }

    /** A reading that the cones prove wrong: from the first cone that shows it, as far as any cone shows it. */
    static Optional<LogFinding> wrong(List<ConeOffset> offsets) {
        List<ConeOffset> off =
                offsets.stream().filter(o -> Math.abs(o.surelyK()) >= TELLS_K).toList();
        return off.stream()
                .max(Comparator.comparingDouble(o -> Math.abs(o.surelyK())))
                .map(o -> new LogFinding(
                        LogFinding.Kind.THERMOCOUPLE,
                        off.get(0).timeS(),
                        off.get(0).readingK(),
                        Double.NaN,
                        o.offsetK(),
                        false));
    }

    /** What must be added to the readings so that the cone falls at a time, K; NaN beyond ±200 K. */
    private static double offset(ConeWork w, List<LogRow> g, double timeS) {
        double lo = -WIDEST_K;
        double hi = WIDEST_K;
        if (timeS <= g.get(0).timeS() || work(w, g, timeS, lo) > 1 || work(w, g, timeS, hi) < 1) {
            return Double.NaN;
        }
        for (int k = 0; k < 50; k++) {
            double mid = (lo + hi) / 2;
            if (work(w, g, timeS, mid) < 1) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return (lo + hi) / 2;
    }

    private static double work(ConeWork w, List<LogRow> g, double untilS, double offset) {
        double sum = 0;
        for (int i = 0; i + 1 < g.size() && g.get(i).timeS() < untilS; i++) {
            double span = g.get(i + 1).timeS() - g.get(i).timeS();
            double dt = Math.min(untilS - g.get(i).timeS(), span);
            double a = g.get(i).kelvin() + offset;
            double b = a + (g.get(i + 1).kelvin() - g.get(i).kelvin()) * dt / span;
            sum += dt * (w.perSecond(a) + 4 * w.perSecond((a + b) / 2) + w.perSecond(b)) / 6;
        }
        return sum;
    }

    /** Readings as they stand, thinned to one a minute: smoothing would cut the peaks that do the work. */
    private static List<LogRow> thinned(FiringLog log) {
        List<LogRow> out = new ArrayList<>();
        for (LogRow r : log.readings()) {
            if (out.isEmpty() || r.timeS() >= out.get(out.size() - 1).timeS() + APART_S) {
                out.add(r);
            }
        }
        return out;
    }

    /** Readings put right by the cones: nothing at 600 °C, straight lines to and between the cones, constant beyond. */
    static double[] corrected(Grid g, List<ConeOffset> offsets) {
        double[] out = g.kelvin().clone();
        List<ConeOffset> used = offsets.stream()
                .sorted((a, b) -> Double.compare(a.readingK(), b.readingK()))
                .toList();
        if (used.stream().noneMatch(o -> Math.abs(o.surelyK()) >= TELLS_K)) {
            return out;
        }
        for (int i = 0; i < out.length; i++) {
            double t = out[i];
            double k0 = FROM_K;
            double d0 = 0;
            double add = used.get(used.size() - 1).offsetK();
            for (ConeOffset o : used) {
                if (t < o.readingK()) {
                    add = o.readingK() <= k0
                            ? o.offsetK()
                            : d0 + (o.offsetK() - d0) * Math.max(0, t - k0) / (o.readingK() - k0);
                    break;
                }
                k0 = o.readingK();
                d0 = o.offsetK();
            }
            out[i] = t + (t < FROM_K ? 0 : add);
        }
        return out;
    }
}
