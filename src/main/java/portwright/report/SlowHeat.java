package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.util.Comparator;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.units.Format;

/** Why a firing reaches a cone at a temperature under the cone's usual one: in a slow climb the work of heat is done earlier. */
final class SlowHeat {
    /** Climb that a cone's usual temperature goes with, °C/h. */
    private static final double USUAL = 60;

    private static final double SLOWEST_CHARTED = 15;
    private static final double FASTEST_CHARTED = 150;
    /** So much lower is told (own judgement: half the step between most neighbouring cones), K. */
    private static final double LOWER_K = 10;

    private SlowHeat() {}

    /** What a run's hottest cone fell at and why so low, °C; empty where it fell about as hot as at 60 °C/h, or no cone fell. */
    static String words(FiringRun run) {
        StepResult r = run.steps().stream()
                .filter(s -> s.reached() && !s.coneDownBefore() && s.step().goal() instanceof Step.ToCone)
                .max(Comparator.comparingDouble(StepResult::endK))
                .orElse(null);
        if (r == null) {
            return "";
        }
        ConeWork cone = ((Step.ToCone) r.step().goal()).cone();
        if (r.endClimbKPerS() * 3600 > FASTEST_CHARTED + 1) {
            return "cone " + cone.name() + " falls at " + n(r.endK() - ZERO_C) + " °C, where the kiln climbs "
                    + n(r.endClimbKPerS() * 3600) + " °C/h: the cone chart ends at " + n(FASTEST_CHARTED)
                    + " °C/h, beyond it this figure is drawn on; trust the cone";
        }
        double usual = cone.endTemperatureK(USUAL / 3600);
        if (r.endK() > usual - LOWER_K) {
            return "";
        }
        double climb = Math.max(0, r.endClimbKPerS() * 3600);
        double slow = cone.endTemperatureK(SLOWEST_CHARTED / 3600);
        return "cone " + cone.name() + " falls on the way there, at " + n(r.endK() - ZERO_C) + " °C after "
                + Format.plain(r.endS() / 3600, 1) + " h, where the climb is down to " + n(climb)
                + " °C/h: long heat works like more heat. At " + n(USUAL) + " °C/h it falls at " + n(usual - ZERO_C)
                + " °C, at " + n(SLOWEST_CHARTED) + " °C/h at " + n(slow - ZERO_C) + " °C"
                + (climb < SLOWEST_CHARTED ? "; no chart goes slower, so trust the cone, not this figure" : "");
    }

    private static String n(double v) {
        return Format.plain(v, 0);
    }
}
