package portwright.layout;

import portwright.geometry.JointPattern;

/** Brick left between a hole and a joint that it does not cut, in plain arithmetic. */
final class Joints {
    /** A sliver narrower than this breaks out (common practice). */
    static final double SLIVER_MM = 20;

    private final JointPattern p;
    private final double r;
    private final double cos;
    private final double sin;

    Joints(JointPattern pattern, double radius) {
        p = pattern;
        r = radius;
        cos = Math.cos(-pattern.turn());
        sin = Math.sin(-pattern.turn());
    }

    /** Least width of brick left to an uncut joint, mm, when below the sliver's limit; else infinite. */
    double sliver(double px, double py) {
        double dx = px - p.origin().x();
        double dy = py - p.origin().y();
        double x = dx * cos + dy * sin;
        double y = dy * cos - dx * sin;
        double reach = r + SLIVER_MM;
        double least = Double.POSITIVE_INFINITY;
        long r0 = (long) Math.floor((y - reach) / p.row());
        long r1 = (long) Math.floor((y + reach) / p.row());
        for (long k = r0; k <= r1; k++) {
            double gap = Math.abs(y - k * p.row()) - r;
            least = gap > 0 ? Math.min(least, gap) : least;
            double shift = p.half() && Math.floorMod(k, 2L) == 1 ? p.brickLength() / 2 : 0;
            long e0 = (long) Math.ceil((x - reach - shift) / p.brickLength());
            long e1 = (long) Math.floor((x + reach - shift) / p.brickLength());
            for (long e = e0; e <= e1; e++) {
                double ex = e * p.brickLength() + shift;
                double end = Math.sqrt(Plain.square(ex, k * p.row(), ex, (k + 1) * p.row(), x, y)) - r;
                least = end > 0 ? Math.min(least, end) : least;
            }
        }
        return least < SLIVER_MM ? least : Double.POSITIVE_INFINITY;
    }
}
