package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/**
 * A firing that is not the plan's, read as one by electricity alone.
 *
 * @param why what tells so
 * @param mostShare most of the design's full element power that it took for half an hour, over 450 °C; NaN where it was never so hot
 * @param mostK reading then, K
 */
public record OwnFiring(OtherFiring.Why why, double mostShare, double mostK) {
    private static final double WARM_K = 723.15;
    private static final int HALF_HOUR = 6;

    /** The firing of a log that is no firing of the plan; null for one that is. */
    static OwnFiring of(Followed f) {
        double full = f.c.kiln().elements().fullW();
        if (f.c.planned()) {
            return null;
        }
        double most = Double.NaN;
        double at = Double.NaN;
        for (int i = 0; full > 0 && i + HALF_HOUR <= f.intervals(); i++) {
            List<Double> shares = new ArrayList<>();
            for (int k = i; k < i + HALF_HOUR && !f.blind[k] && f.kelvin[k] > WARM_K; k++) {
                shares.add(f.logged.get(k).neededW() / full);
            }
            double median = Followed.median(shares);
            if (shares.size() == HALF_HOUR && !(median <= most)) {
                most = median;
                at = f.kelvin[i + HALF_HOUR / 2];
            }
        }
        return new OwnFiring(f.other, most, at);
    }
}
