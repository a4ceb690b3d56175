package portwright.calc.firing;

import java.util.Optional;
import portwright.data.Cone;
import portwright.data.Cones;

/** The hardest cone that temperatures lay down, by its heat work. */
public final class HardestCone {
    private HardestCone() {}

    /** Its name, empty for none: straight lines between temperatures, K, at times, s. */
    public static String along(double[] timeS, double[] kelvin) {
        String out = "";
        for (Cone c : Cones.load().all()) {
            ConeWork w = ConeWork.of(c);
            double work = 0;
            for (int k = 1; k < timeS.length && work < 1; k++) {
                work += (timeS[k] - timeS[k - 1]) * w.perSecond((kelvin[k] + kelvin[k - 1]) / 2);
            }
            out = work >= 1 ? c.name() : out;
        }
        return out;
    }

    /** Whether a cone needs more heat than another; any needs more than none (empty), none no more than any. */
    public static boolean harder(String cone, String other) {
        return heat(cone) > heat(other);
    }

    private static double heat(String cone) {
        Optional<Cone> c = cone.isEmpty() ? Optional.empty() : Cones.load().find(cone);
        return c.isEmpty() ? Double.NEGATIVE_INFINITY : c.get().ss60();
    }
}
