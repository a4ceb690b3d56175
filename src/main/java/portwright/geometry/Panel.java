package portwright.geometry;

import java.util.List;

/**
 * One wall panel between its mitre lines. Its frame: u along it from its middle, positive to the right as seen from inside; v up from the
 * hot face of the floor; w into the wall from the hot face.
 *
 * @param number from 1
 * @param a inside corner at the left end seen from inside (u = −width/2)
 * @param b inside corner at the right end seen from inside (u = +width/2)
 * @param outerA outside corner at a's mitre line
 * @param outerB outside corner at b's mitre line
 * @param bearing direction of the outward normal, rad clockwise from the back
 */
public record Panel(int number, Pt a, Pt b, Pt outerA, Pt outerB, double bearing) {
    private static final List<String> SIDES =
            List.of("back", "back right", "right", "front right", "front", "front left", "left", "back left");

    /** Where the wall stands, seen from above: one of eight sides. */
    public String side() {
        return SIDES.get((int) Math.round(bearing / (2 * Math.PI / SIDES.size())) % SIDES.size());
    }

    /** The wall as findings, window and sheets call it: {@code wall 2 (right)}. */
    public String words() {
        return "wall " + number + " (" + side() + ")";
    }

    /** Inside width, mm. */
    public double width() {
        return a.distance(b);
    }

    /** Middle of the hot face in plan. */
    public Pt middle() {
        return new Pt((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    /** Wall thickness, mm. */
    public double thickness() {
        return local(outerA).y();
    }

    /** Plan point as (u, w). */
    public Pt local(Pt plan) {
        double width = width();
        double rx = (b.x() - a.x()) / width;
        double ry = (b.y() - a.y()) / width;
        double dx = plan.x() - a.x();
        double dy = plan.y() - a.y();
        return new Pt(dx * rx + dy * ry - width / 2, dy * rx - dx * ry);
    }

    /** (u, w) as a plan point. */
    public Pt plan(double u, double w) {
        double width = width();
        double rx = (b.x() - a.x()) / width;
        double ry = (b.y() - a.y()) / width;
        double along = u + width / 2;
        return new Pt(a.x() + along * rx - w * ry, a.y() + along * ry + w * rx);
    }

    /** (u, v, w) as a point in the kiln. */
    public Pt3 point(double u, double v, double w) {
        Pt p = plan(u, w);
        return new Pt3(p.x(), p.y(), v);
    }

    /** Left mitre line at depth w: least u. */
    public double uMin(double w) {
        Pt o = local(outerA);
        return -width() / 2 + (o.x() + width() / 2) * w / o.y();
    }

    /** Right mitre line at depth w: greatest u. */
    public double uMax(double w) {
        Pt o = local(outerB);
        return width() / 2 + (o.x() - width() / 2) * w / o.y();
    }
}
