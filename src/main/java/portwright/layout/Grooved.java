package portwright.layout;

import java.util.Arrays;

/** Lengths of straight lines inside a groove; in plain arrays, for the inner loops. */
final class Grooved {
    private Grooved() {}

    /**
     * Length of a line's piece inside a groove; where pieces of the groove overlap at a bend it counts once.
     *
     * @param strip of each straight piece: both ends and half the width
     */
    static double length(double[][] strip, double c, double s, double off, double low, double high) {
        double only = 0;
        double[] first = null;
        double[][] several = null;
        int n = 0;
        for (double[] g : strip) {
            double[] in = capsule(g, c, s, off, low, high);
            if (in == null) {
                continue;
            }
            if (n == 0) {
                first = in;
                only = in[1] - in[0];
            } else {
                several = several == null ? new double[strip.length][] : several;
                several[0] = first;
                several[n] = in;
            }
            n++;
        }
        return n < 2 ? only : together(several, n);
    }

    private static double together(double[][] in, int n) {
        Arrays.sort(in, 0, n, (a, b) -> Double.compare(a[0], b[0]));
        double sum = 0;
        double end = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            sum += Math.max(0, in[i][1] - Math.max(end, in[i][0]));
            end = Math.max(end, in[i][1]);
        }
        return sum;
    }

    /** From where to where a line lies inside a piece widened with round ends; null where nowhere between two places of the line. */
    private static double[] capsule(double[] g, double c, double s, double off, double low, double high) {
        double w = g[4];
        double ha = -s * g[0] + c * g[1] - off;
        double hb = -s * g[2] + c * g[3] - off;
        if (Math.min(ha, hb) >= w || Math.max(ha, hb) <= -w) {
            return null;
        }
        double ta = c * g[0] + s * g[1];
        double tb = c * g[2] + s * g[3];
        double lo = Double.POSITIVE_INFINITY;
        double hi = Double.NEGATIVE_INFINITY;
        if (Math.abs(ha) < w) {
            double q = Math.sqrt(w * w - ha * ha);
            lo = Math.min(lo, ta - q);
            hi = Math.max(hi, ta + q);
        }
        if (Math.abs(hb) < w) {
            double q = Math.sqrt(w * w - hb * hb);
            lo = Math.min(lo, tb - q);
            hi = Math.max(hi, tb + q);
        }
        double len = Math.hypot(tb - ta, hb - ha);
        if (len > 0) {
            // the two long sides: the piece shifted by w square to itself
            double nx = -(hb - ha) / len * w;
            double ny = (tb - ta) / len * w;
            for (int side = -1; side <= 1; side += 2) {
                double a = ha + side * ny;
                double b = hb + side * ny;
                if (a > 0 != b > 0) {
                    double k = a / (a - b);
                    double t = ta + side * nx + k * (tb - ta);
                    lo = Math.min(lo, t);
                    hi = Math.max(hi, t);
                }
            }
        }
        lo = Math.max(lo, low);
        hi = Math.min(hi, high);
        return hi > lo ? new double[] {lo, hi} : null;
    }
}
