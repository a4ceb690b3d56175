package portwright.calc.firing.record;

import java.util.List;
import portwright.calc.firing.Step;

/** Which step was in force at each minute of a log: by reading, by hold time, by cones seen down. -1 after the last. */
final class StepMap {
    private static final double ZERO_C = 273.15;
    private static final double NEAR_C = 2;

    private StepMap() {}

    static int[] of(FiringLog log, Track track, List<Step> steps) {
        int[] at = new int[track.size()];
        int step = 0;
        int begin = 0;
        double beginC = track.celsius()[0];
        int top = 0;
        for (int i = 0; i < at.length; i++) {
            top = track.celsius()[i] > track.celsius()[top] ? i : top;
        }
        for (int i = 0; i < at.length; i++) {
            while (step < steps.size() && over(log, track, steps.get(step), i, begin, beginC, top)) {
                step++;
                begin = i;
                beginC = track.celsius()[i];
            }
            at[i] = step < steps.size() ? step : -1;
        }
        return at;
    }

    private static boolean over(FiringLog log, Track track, Step s, int i, int begin, double beginC, int top) {
        double c = track.celsius()[i];
        if (s.gas() && gasOffForGood(track, i, begin)) {
            return true;
        }
        if (s.goal() instanceof Step.Hold h) {
            return (i - begin) * Track.STEP_S >= h.seconds();
        }
        if (s.goal() instanceof Step.To t) {
            double goal = t.temperatureK() - ZERO_C;
            boolean up = goal >= beginC;
            return up ? c >= goal - NEAR_C : c <= goal + NEAR_C;
        }
        String cone = ((Step.ToCone) s.goal()).cone().name();
        double seen = log.rows().stream().filter(r -> r.cone().equals(cone)).mapToDouble(LogRow::timeS).findFirst().orElse(Double.NaN);
        boolean burning = track.gasPa()[i] > 0;
        return Double.isNaN(seen) ? i >= top && !burning && lastFall(track, i) : i * Track.STEP_S >= seen;
    }

    /** The gas has burnt in this step and is noted shut from here on. */
    private static boolean gasOffForGood(Track track, int i, int begin) {
        if (i <= begin || track.gasPa()[i] != 0 || !(track.gasPa()[i - 1] > 0)) {
            return false;
        }
        for (int j = i; j < track.size(); j++) {
            if (track.gasPa()[j] > 0) {
                return false;
            }
        }
        return true;
    }

    /** No cone noted: the step ends at the top when the log never comes near it again. */
    private static boolean lastFall(Track track, int i) {
        double c = track.celsius()[i];
        for (int j = i; j < track.size(); j++) {
            if (track.celsius()[j] > c + 5) {
                return false;
            }
        }
        int later = Math.min(track.size() - 1, i + 20);
        return later > i && track.celsius()[later] < c - 15;
    }
}
