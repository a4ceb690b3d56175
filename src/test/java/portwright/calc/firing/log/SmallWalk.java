package portwright.calc.firing.log;

import static portwright.calc.firing.log.SmallFiring.to;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.StepWalk.Ready;
import portwright.calc.firing.log.StepWalk.Way;

/** Points of five minutes and rows on them or a little later, written by hand; every climb is that to the next point. */
class SmallWalk {
    static final Way SEEN = new Way(1, 3, 0, false, Ready.SEEN);
    static final Way PLANNED = new Way(1, 3, 0, false, Ready.PLANNED);

    double[] celsius = {};
    double put = 0;
    /** How long after its point each row but the first was read, s. */
    double lateS = 0;

    double[] peak;
    double[] gasPa;
    double[] coneS;
    Way way = SEEN;

    StepWalk walk(Step... steps) {
        int n = celsius.length;
        double[] t = new double[n];
        double[] k = new double[n];
        double[] climb = new double[n];
        List<LogRow> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            t[i] = 300 * i;
            k[i] = celsius[i] + 273.15;
            int to = Math.min(n - 1, i + 1);
            climb[i] = (celsius[to] - celsius[Math.max(0, to - 1)]) / 300;
            rows.add(new LogRow(
                    i + 2, t[i] + (i > 0 ? lateS : 0), k[i], null, null, gasPa == null ? null : gasPa[i], null, ""));
        }
        double[] reach = new double[n];
        Arrays.fill(reach, 480);
        double[] none = new double[n];
        Arrays.fill(none, Double.NaN);
        Grid g = new Grid(t, k, climb, none, gasPa == null ? none : gasPa, reach, reach, reach);
        double[] readings = k.clone();
        for (int i = 0; i < n; i++) {
            readings[i] += put;
        }
        double[] cones = new double[steps.length];
        Arrays.fill(cones, Double.NaN);
        FiringLog log = new FiringLog(rows, List.of(), List.of(), List.of(), Double.NaN, false);
        return new StepWalk(
                g,
                readings,
                peak == null ? new double[n] : peak,
                rows,
                List.of(steps),
                coneS == null ? cones : coneS,
                new Openings(log, List.of(steps), 600),
                way);
    }

    static double[] line(double from, double to, int points) {
        double[] out = new double[points];
        for (int i = 0; i < points; i++) {
            out[i] = from + (to - from) * i / (points - 1);
        }
        return out;
    }

    static double[] join(double[]... parts) {
        return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
    }
}
