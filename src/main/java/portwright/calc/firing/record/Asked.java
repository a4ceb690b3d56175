package portwright.calc.firing.record;

import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Step;

/** What the elements were asked to give at each minute of a record. */
final class Asked {
    /** Climb this far under the asked one, K/s, means the controller gave all it had. */
    private static final double BEHIND = 12 / 3600.0;
    private static final double AHEAD = 25 / 3600.0;

    private final KilnAsDesigned design;
    private final Track track;
    private final int[] step;
    private final double fullW;
    private final double[] holdC;

    Asked(KilnAsDesigned design, Track track, int[] step) {
        this.design = design;
        this.track = track;
        this.step = step;
        KilnHeat k = design.kiln();
        fullW = k.elements().fullW();
        holdC = new double[step.length];
        double begin = track.celsius()[0];
        for (int i = 0; i < step.length; i++) {
            if (i > 0 && step[i] != step[i - 1]) {
                begin = track.celsius()[i];
            }
            holdC[i] = begin;
        }
    }

    double fullW() {
        return fullW;
    }

    boolean electric(int i) {
        return step[i] >= 0 && s(i).electric() && !(s(i).elementShare() == 0);
    }

    private Step s(int i) {
        return design.steps().get(step[i]);
    }

    boolean hold(int i) {
        return step[i] >= 0 && s(i).goal() instanceof Step.Hold;
    }

    /** The step wants to climb or hold. */
    boolean upward(int i) {
        return step[i] >= 0 && (!(s(i).goal() instanceof Step.To t) || t.temperatureK() - 273.15 >= holdC[i]);
    }

    boolean controlled(int i) {
        return Double.isNaN(s(i).elementShare());
    }

    /** The climb is under what was asked, or the hold sags: whatever power there was, was on. */
    boolean behind(int i) {
        if (step[i] < 0 || !upward(i)) {
            return false;
        }
        if (hold(i)) {
            return track.celsius()[i] < holdC[i] - 5;
        }
        return s(i).rateKPerS() == Step.FULL || track.climb(i) < s(i).rateKPerS() - BEHIND;
    }

    /** The climb runs over what the controller asks. */
    boolean ahead(int i) {
        if (!electric(i) || !controlled(i)) {
            return false;
        }
        if (hold(i)) {
            return track.celsius()[i] > holdC[i] + 10 && track.climb(i) > 10 / 3600.0;
        }
        return upward(i) && s(i).rateKPerS() < Step.FULL && track.climb(i) > s(i).rateKPerS() + AHEAD;
    }

    /** Power that must have been on, W; NaN where a controller shed some. */
    double certainW(int i) {
        if (!electric(i)) {
            return Double.NaN;
        }
        if (!controlled(i)) {
            return fullW * s(i).elementShare();
        }
        return behind(i) ? fullW : Double.NaN;
    }
}
