package portwright.calc.firing.log;

import java.util.List;

/**
 * A log smoothed to even spacing: each point is a straight line through the readings of eight minutes on either side.
 *
 * @param timeS from the first reading
 * @param kelvin smoothed readings
 * @param climbKPerS slope of the line
 * @param damper logged share; NaN where never logged before
 * @param gasPa logged pressure; NaN where never logged before
 * @param reachS how far off the readings are that a point rests on: an edge is smeared that wide
 * @param backS how far before a point they begin, no less than the reach of the smoothing
 * @param aheadS how far after it they end, likewise
 */
record Grid(
        double[] timeS,
        double[] kelvin,
        double[] climbKPerS,
        double[] damper,
        double[] gasPa,
        double[] reachS,
        double[] backS,
        double[] aheadS) {
    static final double SPACING_S = 300;
    /** Reach of the smoothing where there are readings enough. */
    static final double HALF_S = 480;

    static Grid of(FiringLog log) {
        List<LogRow> rows = log.rows();
        List<LogRow> r = log.readings();
        double end = r.get(r.size() - 1).timeS();
        double begin = r.get(0).timeS();
        int n = (int) Math.floor((end - begin) / SPACING_S) + 1;
        Grid g = new Grid(
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n]);
        int from = 0;
        int state = 0;
        double damper = Double.NaN;
        double gas = Double.NaN;
        for (int i = 0; i < n; i++) {
            double t = begin + i * SPACING_S;
            while (r.get(from).timeS() < t - HALF_S) {
                from++;
            }
            int to = from;
            while (to < r.size() && r.get(to).timeS() <= t + HALF_S) {
                to++;
            }
            g.timeS[i] = t;
            g.line(i, r, from, to);
            while (state < rows.size() && rows.get(state).timeS() <= t + 1e-6) {
                LogRow x = rows.get(state++);
                damper = x.damperShare() == null ? damper : x.damperShare();
                gas = x.gasPa() == null ? gas : x.gasPa();
            }
            g.damper[i] = damper;
            g.gasPa[i] = gas;
        }
        return g;
    }

    /** Least squares over readings from..to; with fewer than 3 over the neighbours before and after as well: of two, the straight line between them. */
    private void line(int i, List<LogRow> r, int from, int to) {
        double t = timeS[i];
        int a = from;
        int b = to;
        backS[i] = HALF_S;
        aheadS[i] = HALF_S;
        reachS[i] = HALF_S;
        if (to - from < 3) {
            a = Math.max(0, from - 1);
            b = Math.min(r.size(), to + 1);
            backS[i] = Math.max(HALF_S, t - r.get(a).timeS());
            aheadS[i] = Math.max(HALF_S, r.get(b - 1).timeS() - t);
            reachS[i] = Math.max(backS[i], aheadS[i]);
        }
        double st = 0;
        double sy = 0;
        for (int k = a; k < b; k++) {
            st += r.get(k).timeS() - t;
            sy += r.get(k).kelvin();
        }
        int n = b - a;
        double mt = st / n;
        double my = sy / n;
        double stt = 0;
        double sty = 0;
        for (int k = a; k < b; k++) {
            double d = r.get(k).timeS() - t - mt;
            stt += d * d;
            sty += d * (r.get(k).kelvin() - my);
        }
        climbKPerS[i] = stt > 0 ? sty / stt : 0;
        kelvin[i] = my - climbKPerS[i] * mt;
    }

    int size() {
        return timeS.length;
    }

    /** Index of the last point not after a time. */
    int at(double seconds) {
        int i = (int) Math.floor((seconds - timeS[0]) / SPACING_S + 1e-9);
        return Math.max(0, Math.min(size() - 1, i));
    }
}
