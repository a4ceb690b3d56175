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

    /** Climb of the chart's middle column. */
    private static final double USUAL_K_PER_S = 60 / 3600.0;

    /** Farther under its hottest reading a kiln is cooling (own judgement). */
    private static final double COOLED_K = 10;

    private static final double APART_S = 45;
    /** Most of a cone's work is done in so long a time before it falls. */
    private static final double WORK_S = 7200;

    /** Rows farther apart may hide a peak. */
    private static final double SELDOM_S = 720;
    /** A kiln just switched off falls at least so fast. */
    static final double FALL_K_PER_S = -60 / 3600.0;
    /** The same at the end of a log, where no row shows how fast: so fast it may fall at the top, and so high the peak may have been (own judgement). */
    private static final double OFF_K_PER_S = -240 / 3600.0;
    /** Offset from which the reading is held to be wrong, K: twice what a cone is good to would be 20; half a cone near 10 is about 12 (this project's judgement). */
    static final double TELLS_K = 15;

    /** No thermocouple in use reads so much low, K: base metal at the top of its range loses some tens (this project's judgement). */
    static final double DRIFTS_K = 120;

    private ConeCheck() {}

    static List<ConeOffset> offsets(FiringLog log, Grid g) {
        List<ConeOffset> out = new ArrayList<>();
        Cones table = Cones.load();
        List<LogRow> readings = thinned(log);
        List<LogRow> peaks = withPeaks(readings);
        double unseen = wiggle(readings) / 2;
        List<Gap> gaps = log.gaps();
        double endS = readings.get(readings.size() - 1).timeS() + SELDOM_S;
        for (LogRow row : log.cones()) {
            // Where readings lack, so does the work that laid the cone down.
            if (row.timeS() > endS
                    || gaps.stream().anyMatch(x -> x.fromS() < row.timeS() && x.toS() > row.timeS() - WORK_S)) {
                continue;
            }
            ConeWork w = ConeWork.of(table.find(row.cone()).orElseThrow());
            double late = offset(w, peaks, row.timeS());
            int end = g.at(row.timeS());
            double f = row.timeS() - g.timeS()[end];
            double reading = g.kelvin()[end] + f * g.climbKPerS()[end];
            if (Double.isNaN(late)) {
                if (row.timeS() > peaks.get(0).timeS() && work(w, peaks, row.timeS(), WIDEST_K) < 1) {
                    out.add(new ConeOffset(row.cone(), row.timeS(), reading, WIDEST_K, WIDEST_K));
                }
                continue;
            }
            // So early a fall may need an offset beyond what is tried: it then lies above.
            double found = offset(w, readings, late < 0 ? noted(log, row) : log.before(row));
            double early = Double.isNaN(found) ? WIDEST_K : found;
            double sure = late * early <= 0 || late < 0 && cooled(log.readings(), row)
                    ? 0
                    : Math.abs(late) < Math.abs(early) ? late : early;
            sure = Math.signum(sure) * Math.max(0, Math.abs(sure) - unseen);
            double mean = Math.abs(late - early) > KNOWN_K ? sure : (late + early) / 2;
            double usual = w.endTemperatureK(USUAL_K_PER_S) - reading;
            boolean slow = sure < 0 && climb(g, end) < w.slowestKPerS();
            if (slow) {
                sure = usual > 0 ? 0 : Math.max(usual, sure);
                mean = sure;
            }
            out.add(new ConeOffset(row.cone(), row.timeS(), reading, mean, sure, slow));
        }
        return out;
    }

    /** When a cone may have fallen at the earliest, s: where rows lie far apart, one that fell between two is often noted in the next but one. */
    private static double noted(FiringLog log, LogRow row) {
        double before = log.before(row);
        double again = before;
        for (LogRow r : log.readings()) {
            again = r.timeS() < before - 1e-6 ? r.timeS() : again;
        }
        return row.timeS() - before > SELDOM_S ? again : before;
    }

    /** Whether the kiln has cooled since its hottest reading: a cone that is first noted then fell before, nobody knows when. */
    private static boolean cooled(List<LogRow> readings, LogRow row) {
        double top = 0;
        double now = Double.NaN;
        for (LogRow r : readings) {
            if (r.timeS() <= row.timeS() + 1e-6) {
                top = Math.max(top, r.kelvin());
                now = r.kelvin();
            }
        }
        return now < top - COOLED_K;
    }

    /** Mean climb over the time in which a cone does most of its work, K/s. */
    private static double climb(Grid g, int end) {
        int from = g.at(g.timeS()[end] - WORK_S);
        return end > from
                ? (g.kelvin()[end] - g.kelvin()[from]) / (g.timeS()[end] - g.timeS()[from])
                : Double.POSITIVE_INFINITY;
    }

    /** Cones that cannot have bent at their reading: a wrong entry, or a thermocouple that has failed. */
    static List<LogFinding> cannotBe(List<ConeOffset> all) {
        return all.stream()
                .filter(ConeOffset::cannotBe)
                .map(o -> new LogFinding(
                                LogFinding.Kind.CONE, o.timeS(), o.readingK(), Double.NaN, o.surelyK(), false, true)
                        .withCones(false, null, o.cone()))
                .toList();
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
                        false,
                        true));
    }

    /** What must be added to the readings so that the cone falls at a time, K; NaN beyond ±200 K. */
    private static double offset(ConeWork w, List<LogRow> g, double timeS) {
        double lo = -WIDEST_K;
        double hi = WIDEST_K;
        if (work(w, g, timeS, lo) > 1 || work(w, g, timeS, hi) < 1) {
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

    /** The readings with the peak that may stand unseen between two rows: where the climb before meets the fall after. */
    private static List<LogRow> withPeaks(List<LogRow> r) {
        List<LogRow> out = new ArrayList<>();
        for (int i = 0; i < r.size(); i++) {
            out.add(r.get(i));
            if (i == 0 || i + 1 == r.size() || r.get(i + 1).timeS() - r.get(i).timeS() < SELDOM_S) {
                continue;
            }
            LogRow a = r.get(i);
            LogRow b = r.get(i + 1);
            double rise = slope(r.get(i - 1), a);
            double fall = i + 2 < r.size() ? Math.min(slope(b, r.get(i + 2)), FALL_K_PER_S) : OFF_K_PER_S;
            double t = (b.kelvin() - a.kelvin() - fall * (b.timeS() - a.timeS())) / (rise - fall);
            boolean falls = slope(a, b) < rise / 2 && (i + 2 == r.size() || slope(b, r.get(i + 2)) < 0);
            if (rise > 0 && falls && t > 0) {
                out.add(a.reading(a.kelvin() + rise * t).at(a.timeS() + t));
            }
        }
        return out;
    }

    private static double slope(LogRow a, LogRow b) {
        return (b.kelvin() - a.kelvin()) / (b.timeS() - a.timeS());
    }

    /** How far readings that lie far apart stand off the line of their neighbours, K (median): so much may go unseen between them. */
    private static double wiggle(List<LogRow> r) {
        List<Double> off = new ArrayList<>();
        for (int i = 1; i + 1 < r.size(); i++) {
            LogRow a = r.get(i - 1);
            LogRow b = r.get(i + 1);
            if (b.timeS() - a.timeS() > 2 * SELDOM_S) {
                off.add(Math.abs(
                        r.get(i).kelvin() - a.kelvin() - slope(a, b) * (r.get(i).timeS() - a.timeS())));
            }
        }
        return off.isEmpty() ? 0 : Followed.median(off);
    }

    /** Readings put right by the cones: nothing at 600 °C, straight lines to and between the cones, constant beyond. */
    static double[] corrected(Grid g, List<ConeOffset> offsets) {
        double[] out = g.kelvin().clone();
        List<ConeOffset> used = offsets.stream()
                .filter(ConeOffset::tells)
                .sorted((a, b) -> Double.compare(a.readingK(), b.readingK()))
                .toList();
        if (used.stream().noneMatch(o -> Math.abs(o.surelyK()) >= TELLS_K)) {
            return out;
        }
        for (int i = 0; i < out.length; i++) {
            double t = out[i];
            if (t < FROM_K) {
                continue;
            }
            double k0 = FROM_K;
            double d0 = 0;
            double add = used.get(used.size() - 1).offsetK();
            for (ConeOffset o : used) {
                if (t < o.readingK()) {
                    add = d0 + (o.offsetK() - d0) * (t - k0) / (o.readingK() - k0);
                    break;
                }
                k0 = o.readingK();
                d0 = o.offsetK();
            }
            out[i] = t + add;
        }
        return out;
    }
}
