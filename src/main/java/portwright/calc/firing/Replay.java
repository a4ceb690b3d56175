package portwright.calc.firing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * The heat balance read backwards: which element power the kiln needed to follow a temperature that was measured. Walls, load,
 * gas and air are those of the forecast. Valid for readings smoothed over several minutes; the first hour of a kiln that was warm
 * when the record began is not to be trusted.
 */
public final class Replay {
    private static final double LONGEST_STEP_S = 60;
    private static final double NO_LIMIT_W = 1e9;

    private Replay() {}

    /** How gas and ports stand over one interval. */
    public record Setting(boolean gas, boolean portsOpen, double damperShare) {
        /** Electric firing with the ports plugged. */
        public static final Setting PLUGGED = new Setting(false, false, 1);
    }

    /**
     * One interval.
     *
     * @param timeS its end
     * @param chamberK at its end
     * @param neededW mean element power over it
     * @param begin gas and air at its beginning, set as in the interval
     * @param flow gas and air at its end
     */
    public record Need(double timeS, double chamberK, double neededW, GasExchange.Flow begin, GasExchange.Flow flow) {}

    /**
     * Follows a record; one result an interval, so one fewer than times.
     *
     * @param timeS rising, s
     * @param chamberK smoothed chamber temperatures, K
     * @param setting of the interval that begins at an index
     */
    public static List<Need> run(
            KilnHeat kiln, GasExchange gas, double[] timeS, double[] chamberK, IntFunction<Setting> setting) {
        Balance balance = new Balance(kiln, chamberK[0], Numerics.STANDARD.intervalsPerLayer());
        Map<Setting, FlowCurve> curves = new HashMap<>();
        List<Need> out = new ArrayList<>();
        for (int i = 0; i + 1 < timeS.length; i++) {
            Setting s = setting.apply(i);
            Setting set = new Setting(s.gas(), s.portsOpen() || s.gas(), s.damperShare());
            FlowCurve flow = curves.computeIfAbsent(set, k -> new FlowCurve(kiln, gas, step(k), k.damperShare()));
            double span = timeS[i + 1] - timeS[i];
            int n = Math.max(1, (int) Math.ceil(span / LONGEST_STEP_S));
            double energy = 0;
            for (int k = 1; k <= n; k++) {
                balance.advance(span / n, chamberK[i] + (chamberK[i + 1] - chamberK[i]) * k / n, NO_LIMIT_W, flow);
                balance.accept();
                energy += balance.powerW() * span / n;
            }
            out.add(new Need(
                    timeS[i + 1], chamberK[i + 1], energy / span, flow.at(chamberK[i]), flow.at(chamberK[i + 1])));
        }
        return out;
    }

    private static Step step(Setting s) {
        return new Step(
                new Step.Hold(1),
                Step.FULL,
                true,
                s.gas(),
                Step.CONTROLLER,
                s.portsOpen(),
                new Step.Share(s.damperShare()));
    }
}
