package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Readings that stand at the very same figure for an hour and more in a hot kiln. A controller may hold a kiln so; where the plan holds
 * nothing, thermocouple, instrument or logger was frozen. Limits are this project's judgement.
 */
final class Frozen {
    private static final double LEAST_S = 3600;
    private static final int LEAST_ROWS = 12;
    private static final double WARM_K = 353.15;
    /** A kiln that climbs so fast before does not come to rest by itself from one row to the next. */
    private static final double CLIMB_K_PER_S = 30 / 3600.0;

    private static final double BEFORE_S = 1200;

    private Frozen() {}

    /** All such times among readings, in time order. */
    static List<DeadSpell> of(List<LogRow> r) {
        List<DeadSpell> out = new ArrayList<>();
        int i = 0;
        while (i < r.size()) {
            int j = i;
            while (j + 1 < r.size() && r.get(j + 1).kelvin().equals(r.get(i).kelvin())) {
                j++;
            }
            LogRow a = r.get(i);
            LogRow b = r.get(j);
            if (j - i + 1 >= LEAST_ROWS && b.timeS() - a.timeS() >= LEAST_S && a.kelvin() > WARM_K && climbed(r, i)) {
                out.add(new DeadSpell(a.line(), b.line(), a.timeS(), b.timeS(), a.kelvin()));
            }
            i = j + 1;
        }
        return out;
    }

    private static boolean climbed(List<LogRow> r, int i) {
        int k = i;
        while (k > 0 && r.get(i).timeS() - r.get(k).timeS() < BEFORE_S) {
            k--;
        }
        double span = r.get(i).timeS() - r.get(k).timeS();
        return (r.get(i).kelvin() - r.get(k).kelvin()) / span > CLIMB_K_PER_S;
    }
}
