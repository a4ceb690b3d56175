package portwright.layout;

import java.util.List;
import portwright.geometry.JointPattern;

/** How a hole lies to the brick joints, in plain arithmetic: clear of them, or well across them. */
final class JointMargin {
    static final String RULE = "joint-sliver";
    /** The part of a term that tells of a joint that the hole cuts. */
    static final String CUT = "cut joint";
    /** Joints farther off than so many times the limit are not looked for. */
    private static final double FAR = 3;

    private final JointPattern p;
    private final double radius;
    private final double drilled;
    private final double sliver;
    private final double cut;
    private final double cos;
    private final double sin;

    /**
     * @param radius of the hole drilled to size, mm; what cuts a joint
     * @param drilled of the largest hole, mm; what is left to a joint
     * @param sliver least brick left to a joint that is not cut, mm
     * @param cut least that a hole reaches over a joint that it cuts, mm
     */
    JointMargin(JointPattern pattern, double radius, double drilled, double sliver, double cut) {
        p = pattern;
        this.radius = radius;
        this.drilled = drilled;
        this.sliver = sliver;
        this.cut = Math.min(cut, radius / 2);
        cos = Math.cos(-pattern.turn());
        sin = Math.sin(-pattern.turn());
    }

    /** The margin of a hole with a joint so far from its centre, mm. */
    private double margin(double off) {
        double left = off - drilled;
        return left > 0
                ? Scale.atLeast(left, Double.NaN, sliver)
                : Scale.atLeast(Math.max(0, radius - off), Double.NaN, cut);
    }

    /** Least margin over the joints near a place: 1 where the rule begins to ask for caution. */
    double margin(double px, double py) {
        return seek(px, py)[0];
    }

    /** That margin in words' numbers: brick left to the joint, or how far the hole reaches over it; null where no joint is near. */
    Term term(double px, double py, String hole) {
        double[] worst = seek(px, py);
        if (Double.isNaN(worst[1])) {
            return null;
        }
        double left = worst[1] - drilled;
        return left > 0
                ? new Term(RULE, List.of(hole), left, Double.NaN, sliver, "mm", worst[0])
                : new Term(RULE, List.of(hole, CUT), Math.max(0, radius - worst[1]), Double.NaN, cut, "mm", worst[0]);
    }

    /** Margin and distance of the joint that lies worst. */
    private double[] seek(double px, double py) {
        double dx = px - p.origin().x();
        double dy = py - p.origin().y();
        double x = dx * cos + dy * sin;
        double y = dy * cos - dx * sin;
        double reach = drilled + FAR * sliver;
        double least = Scale.FREE;
        double at = Double.NaN;
        long r0 = (long) Math.floor((y - reach) / p.row());
        long r1 = (long) Math.floor((y + reach) / p.row());
        for (long k = r0; k <= r1; k++) {
            double off = Math.abs(y - k * p.row());
            if (margin(off) < least) {
                least = margin(off);
                at = off;
            }
            double shift = p.half() && Math.floorMod(k, 2L) == 1 ? p.brickLength() / 2 : 0;
            long e0 = (long) Math.ceil((x - reach - shift) / p.brickLength());
            long e1 = (long) Math.floor((x + reach - shift) / p.brickLength());
            for (long e = e0; e <= e1; e++) {
                double ex = e * p.brickLength() + shift;
                double end = Math.sqrt(Plain.square(ex, k * p.row(), ex, (k + 1) * p.row(), x, y));
                if (margin(end) < least) {
                    least = margin(end);
                    at = end;
                }
            }
        }
        return new double[] {least, at};
    }
}
