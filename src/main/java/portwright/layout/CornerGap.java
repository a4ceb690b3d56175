package portwright.layout;

import portwright.geometry.GrooveSolid;
import portwright.geometry.Panel;
import portwright.geometry.Pt;

/** Brick between a slab's bore and a groove in the wall, through the corner. */
final class CornerGap implements Obstacle.Gap {
    private final double ax;
    private final double ay;
    private final double ux;
    private final double uy;
    private final double width;
    private final double left;
    private final double right;
    private final double rise;
    private final double fall;
    private final double depth;
    private final double r;

    private CornerGap(Panel p, double rise, double fall, double depth, double r) {
        Pt a = p.a();
        Pt b = p.b();
        width = p.width();
        ax = a.x();
        ay = a.y();
        ux = (b.x() - a.x()) / width;
        uy = (b.y() - a.y()) / width;
        left = depth > 0 ? (p.uMin(depth) + width / 2) / depth : 0;
        right = depth > 0 ? (p.uMax(depth) - width / 2) / depth : 0;
        this.rise = rise;
        this.fall = depth > 0 ? fall / depth : 0;
        this.depth = depth;
        this.r = r;
    }

    static CornerGap of(GrooveSolid.OnWall g, boolean floor, double height, double r) {
        return floor
                ? new CornerGap(g.panel(), g.bottom(), g.drop(), g.depth(), r)
                : new CornerGap(g.panel(), height - g.top(), 0, g.depth(), r);
    }

    /** Least height of the groove over the slab's hot face, mm. */
    double lowest() {
        return Math.max(0, Math.min(rise, rise - fall * depth));
    }

    @Override
    public double at(double x, double y) {
        double along = (x - ax) * ux + (y - ay) * uy;
        double out = (y - ay) * ux - (x - ax) * uy;
        // out: distance inside the hot face (the wall lies to the left of the panel's direction)
        if (fall <= 0) {
            return slice(along, out, 0);
        }
        double lo = 0;
        double hi = depth;
        for (int i = 0; i < 40; i++) {
            double m = (hi - lo) / 3;
            if (slice(along, out, lo + m) <= slice(along, out, hi - m)) {
                hi -= m;
            } else {
                lo += m;
            }
        }
        return slice(along, out, (lo + hi) / 2);
    }

    private double slice(double along, double out, double w) {
        double past = Math.max(0, Math.max(left * w - along, along - width - right * w));
        double in = out + w;
        double g = Math.max(0, Math.sqrt(past * past + in * in) - r);
        double z = Math.max(0, rise - fall * w);
        return Math.sqrt(g * g + z * z);
    }
}
