package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.ConeWork;
import portwright.data.Cones;

/** How far the meter reads from the cones. */
final class Drift {
    private Drift() {}

    private static final double ZERO_C = 273.15;
    private static final double WIDEST_K = 250;
    /** Below this temperature no drift is taken out of the reading. */
    private static final double FROM_C = 600;

    static List<ConeOffset> offsets(FiringLog log, Track track) {
        Cones cones = Cones.load();
        List<ConeOffset> out = new ArrayList<>();
        for (LogRow r : log.rows()) {
            if (r.cone().isEmpty()) {
                continue;
            }
            cones.find(r.cone()).ifPresent(c -> {
                ConeWork work = ConeWork.of(c);
                int end = Math.min(track.size() - 1, (int) Math.round(r.timeS() / Track.STEP_S));
                double low = -WIDEST_K;
                double high = WIDEST_K;
                while (high - low > 0.05) {
                    double mid = (low + high) / 2;
                    if (done(work, track, end, mid) < 1) {
                        low = mid;
                    } else {
                        high = mid;
                    }
                }
                out.add(new ConeOffset(c.name(), r.timeS(), track.celsius()[end], (low + high) / 2));
            });
        }
        return out;
    }

    private static double done(ConeWork work, Track track, int end, double offset) {
        double sum = 0;
        for (int i = 1; i <= end; i++) {
            sum += Track.STEP_S * work.perSecond((track.celsius()[i] + track.celsius()[i - 1]) / 2 + offset + ZERO_C);
        }
        return sum;
    }

    /**
     * Correction for each minute: nothing below 600 °C, from there in step with the reading, by least squares through the
     * cones. Kinks between single cones would look like jumps of power.
     */
    static double[] correction(List<ConeOffset> offsets, Track track) {
        double xx = 0;
        double xy = 0;
        for (ConeOffset o : offsets) {
            double x = o.readC() - FROM_C;
            if (x > 0) {
                xx += x * x;
                xy += x * o.offsetK();
            }
        }
        double slope = xx == 0 ? 0 : xy / xx;
        double[] out = new double[track.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = slope * Math.max(0, track.celsius()[i] - FROM_C);
        }
        return out;
    }
}
