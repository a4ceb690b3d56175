package portwright.geometry;

import java.util.List;

/** A groove or a slot: its straight pieces and its share of the thickness. */
record SectionStrip(double[] ax, double[] ay, double[] bx, double[] by, double halfWidth, double factor) {
    static SectionStrip of(Shape.Strip s, double factor) {
        List<Segment> p = s.pieces();
        return new SectionStrip(
                p.stream().mapToDouble(e -> e.a().x()).toArray(),
                p.stream().mapToDouble(e -> e.a().y()).toArray(),
                p.stream().mapToDouble(e -> e.b().x()).toArray(),
                p.stream().mapToDouble(e -> e.b().y()).toArray(),
                s.halfWidth(),
                factor);
    }

    /** Length of the line between a and b that lies in a groove; pieces that overlap at a bend count once. */
    double covered(double dx, double dy, double offset, double a, double b) {
        int n = ax.length;
        double[] from = null;
        double[] to = null;
        int k = 0;
        for (int i = 0; i < n; i++) {
            double lo = Double.POSITIVE_INFINITY;
            double hi = Double.NEGATIVE_INFINITY;
            for (int end = 0; end < 2; end++) {
                double px = end == 0 ? ax[i] : bx[i];
                double py = end == 0 ? ay[i] : by[i];
                double off = dy * px - dx * py - offset;
                double half2 = halfWidth * halfWidth - off * off;
                if (half2 > 0) {
                    double half = Math.sqrt(half2);
                    double at = dx * px + dy * py;
                    lo = Math.min(lo, at - half);
                    hi = Math.max(hi, at + half);
                }
            }
            double ex = bx[i] - ax[i];
            double ey = by[i] - ay[i];
            double len = Math.hypot(ex, ey);
            if (len > 0) {
                // the rectangle of the piece: |across| ≤ halfWidth, 0 ≤ along ≤ len
                double ux = ex / len;
                double uy = ey / len;
                double px = offset * dy - ax[i];
                double py = -offset * dx - ay[i];
                double along0 = px * ux + py * uy;
                double alongK = dx * ux + dy * uy;
                double across0 = px * uy - py * ux;
                double acrossK = dx * uy - dy * ux;
                double t0 = Math.max(low(along0, alongK, 0, len), low(across0, acrossK, -halfWidth, halfWidth));
                double t1 = Math.min(high(along0, alongK, 0, len), high(across0, acrossK, -halfWidth, halfWidth));
                if (t1 > t0) {
                    lo = Math.min(lo, t0);
                    hi = Math.max(hi, t1);
                }
            }
            lo = Math.max(lo, a);
            hi = Math.min(hi, b);
            if (hi > lo) {
                if (from == null) {
                    from = new double[n];
                    to = new double[n];
                }
                from[k] = lo;
                to[k++] = hi;
            }
        }
        return k == 0 ? 0 : union(from, to, k);
    }

    private static double low(double at0, double slope, double min, double max) {
        if (slope == 0) {
            return at0 < min || at0 > max ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return slope > 0 ? (min - at0) / slope : (max - at0) / slope;
    }

    private static double high(double at0, double slope, double min, double max) {
        if (slope == 0) {
            return at0 < min || at0 > max ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return slope > 0 ? (max - at0) / slope : (min - at0) / slope;
    }

    private static double union(double[] from, double[] to, int k) {
        for (int i = 1; i < k; i++) {
            double f = from[i];
            double t = to[i];
            int j = i - 1;
            for (; j >= 0 && from[j] > f; j--) {
                from[j + 1] = from[j];
                to[j + 1] = to[j];
            }
            from[j + 1] = f;
            to[j + 1] = t;
        }
        double total = 0;
        double end = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < k; i++) {
            total += Math.max(0, to[i] - Math.max(end, from[i]));
            end = Math.max(end, to[i]);
        }
        return total;
    }
}
