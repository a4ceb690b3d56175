package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Replay.Setting;

/**
 * Whether a log that tells neither of gas nor of the damper fits a firing by electricity alone, ports plugged, better than the plan's gas. A
 * reduction with too little element power can look the same, so it is a doubt and no more. Limits are this project's judgement.
 */
final class GasDoubt {
    /** So large a share of the power asked must be missing with the plan's gas. */
    private static final double MISSING = 0.12;
    /** Without gas no more than so much of that may be missing, or too much. */
    private static final double LEFT = 0.5;

    private static final int LEAST = 6;

    private GasDoubt() {}

    static boolean of(Followed f) {
        if (!f.c.planned() || f.damperLogged || Arrays.stream(f.grid.gasPa()).anyMatch(pa -> !Double.isNaN(pa))) {
            return false;
        }
        List<Replay.Need> electric = Replay.run(
                f.c.kiln(),
                f.c.gas(),
                f.grid.timeS(),
                f.kelvin,
                i -> f.gasOn(i) ? Setting.PLUGGED : f.setting(i, true));
        List<Double> with = new ArrayList<>();
        List<Double> without = new ArrayList<>();
        for (int i = 0; i < f.intervals(); i++) {
            if (f.gasOn(i) && f.asked[i] > 0) {
                with.add(1 - f.planned.get(i).neededW() / f.asked[i]);
                without.add(1 - electric.get(i).neededW() / f.asked[i]);
            }
        }
        double gas = Followed.median(with);
        return with.size() >= LEAST && gas > MISSING && Math.abs(Followed.median(without)) < LEFT * gas;
    }
}
