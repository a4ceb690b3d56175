package portwright.calc.firing.log;

import java.util.List;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.Step;

/** Which step of the plan a record was in at each point: goals met by temperature, logged cones, heat work or time. */
final class Tracker {
    private static final double NEAR_K = 3;

    /** Step at each point; −1 after the last one. */
    final int[] step;
    /** Point at which each step began; −1 when it never did. */
    final int[] begin;

    Tracker(Grid g, double[] kelvin, List<Step> steps, FiringLog log) {
        step = new int[g.size()];
        begin = new int[steps.size()];
        java.util.Arrays.fill(begin, -1);
        int s = 0;
        begin[0] = 0;
        double startK = kelvin[0];
        double[] work = new double[steps.size()];
        for (int i = 0; i < g.size(); i++) {
            double dt = i == 0 ? 0 : g.timeS()[i] - g.timeS()[i - 1];
            for (int k = s; k < steps.size(); k++) {
                if (steps.get(k).goal() instanceof Step.ToCone c && i > 0) {
                    work[k] += dt * c.cone().perSecond((kelvin[i] + kelvin[i - 1]) / 2);
                }
            }
            while (s < steps.size()
                    && done(steps.get(s), g.timeS()[i], kelvin[i], startK, g.timeS()[begin[s]], work[s], log)) {
                s++;
                startK = kelvin[i];
                if (s < steps.size()) {
                    begin[s] = i;
                }
            }
            step[i] = s < steps.size() ? s : -1;
        }
    }

    private static boolean done(Step s, double t, double k, double startK, double beginS, double work, FiringLog log) {
        if (s.goal() instanceof Step.Hold h) {
            return t - beginS >= h.seconds() - 1;
        }
        if (s.goal() instanceof Step.To to) {
            return startK <= to.temperatureK() ? k >= to.temperatureK() - NEAR_K : k <= to.temperatureK() + NEAR_K;
        }
        ConeWork c = ((Step.ToCone) s.goal()).cone();
        for (LogRow r : log.cones()) {
            if (r.cone().equals(c.name())) {
                return log.before(r) <= t;
            }
        }
        return work >= 1;
    }
}
