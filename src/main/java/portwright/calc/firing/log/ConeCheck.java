package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.ConeWork;
import portwright.data.Cones;

/** Thermocouple against cones. */
final class ConeCheck {
    private static final double WIDEST_K = 200;
    private static final double FROM_K = 873.15;
    /** Offset from which the reading is held to be wrong, K: twice what a cone is good to would be 20; half a cone near 10 is about 12 (this project's judgement). */
    static final double TELLS_K = 15;

    private ConeCheck() {}

    static List<ConeOffset> offsets(FiringLog log, Grid g) {
        List<ConeOffset> out = new ArrayList<>();
        Cones table = Cones.load();
        for (LogRow row : log.cones()) {
            ConeWork w = ConeWork.of(table.find(row.cone()).orElseThrow());
            double late = offset(w, g, row.timeS());
            if (Double.isNaN(late)) {
                continue;
            }
            double found = offset(w, g, log.before(row));
            double early = Double.isNaN(found) ? late : found;
            double sure = late * early <= 0 ? 0 : Math.abs(late) < Math.abs(early) ? late : early;
            int end = g.at(row.timeS());
            double f = row.timeS() - g.timeS()[end];
            out.add(new ConeOffset(
                    row.cone(), row.timeS(), g.kelvin()[end] + f * g.climbKPerS()[end], (late + early) / 2, sure));
        }
        return out;
    }

    /** What must be added to the readings so that the cone falls at a time, K; NaN beyond ±200 K. */
    private static double offset(ConeWork w, Grid g, double timeS) {
        double lo = -WIDEST_K;
        double hi = WIDEST_K;
        if (g.at(timeS) < 1 || work(w, g, timeS, lo) > 1 || work(w, g, timeS, hi) < 1) {
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

    private static double work(ConeWork w, Grid g, double untilS, double offset) {
        double sum = 0;
        for (int i = 0; i + 1 < g.size() && g.timeS()[i] < untilS; i++) {
            double dt = Math.min(untilS, g.timeS()[i + 1]) - g.timeS()[i];
            double a = g.kelvin()[i] + offset;
            double b = a + (g.kelvin()[i + 1] - g.kelvin()[i]) * dt / (g.timeS()[i + 1] - g.timeS()[i]);
            sum += dt * (w.perSecond(a) + 4 * w.perSecond((a + b) / 2) + w.perSecond(b)) / 6;
        }
        return sum;
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
