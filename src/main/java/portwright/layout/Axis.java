package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/**
 * A line through a chamber's middle.
 *
 * @param angle its direction, rad from the right toward the back, 0 ≤ angle &lt; π
 * @param slim width of the chamber over its length, 0 to 1
 */
record Axis(Pt middle, double angle, double slim) {
    /** As far off itself a turned or mirrored chamber may lie: less than brick is cut to. */
    static final double NEAR_MM = 1;

    /** As far off its mirror image a hole may lie, both rounded to a tape. */
    static final double ROUNDED_MM = 1.5;

    /** Axes that are tried in one chamber; a round one has many. */
    private static final int MOST = 4;

    /** Directions nearer than this are the same, rad. */
    private static final double ALIKE = Math.toRadians(1);

    /** Corners flatter than this are none, rad. */
    private static final double FLAT = 1e-3;

    /** Places a side at which the two halves of a slab are compared, and what is the same there. */
    private static final int PLACES = 25;

    private static final double SAME = 1e-6;

    Pt at(double along, double across) {
        return new Pt(
                middle.x() + along * Math.cos(angle) - across * Math.sin(angle),
                middle.y() + along * Math.sin(angle) + across * Math.cos(angle));
    }

    double along(double x, double y) {
        return (x - middle.x()) * Math.cos(angle) + (y - middle.y()) * Math.sin(angle);
    }

    double across(double x, double y) {
        return (y - middle.y()) * Math.cos(angle) - (x - middle.x()) * Math.sin(angle);
    }

    /** The other side of the line. */
    Pt mirrored(double x, double y) {
        return at(along(x, y), -across(x, y));
    }

    /** Whether it runs from front to back. */
    private boolean upright() {
        return Math.abs(angle - Math.PI / 2) < ALIKE;
    }

    private boolean level() {
        return Math.min(angle, Math.PI - angle) < ALIKE;
    }

    /** How what mirrors itself across it lies. */
    String mirroring() {
        return "mirrored "
                + (upright() ? "left and right" : level() ? "front and back" : "across a slanting line of the chamber");
    }

    /** Where what lies on it is. */
    String line() {
        return "on the line through the middle from "
                + (upright() ? "front to back" : level() ? "left to right" : "corner to corner");
    }

    /** Whether an outline comes to lie on itself across it. */
    boolean mirrors(Outline o) {
        return corners(o).stream().allMatch(p -> {
            Pt q = mirrored(p.x(), p.y());
            return o.nearest(q).distance(q) < NEAR_MM;
        });
    }

    /** Every axis across which a chamber mirrors itself: those from front to back and from left to right first. */
    static List<Axis> of(KilnGeometry kiln) {
        Outline o = kiln.inner();
        Pt m = kiln.centre();
        List<Pt> corners = corners(o);
        Pt far = corners.stream().max(Comparator.comparingDouble(m::distance)).orElseThrow();
        List<Double> angles = new ArrayList<>(List.of(Math.PI / 2, 0.0, Math.PI / 4, 3 * Math.PI / 4));
        for (Pt p : corners) {
            if (Math.abs(m.distance(p) - m.distance(far)) < 2 * NEAR_MM) {
                double twice = Math.atan2(far.y() - m.y(), far.x() - m.x()) + Math.atan2(p.y() - m.y(), p.x() - m.x());
                angles.add(turn(twice / 2));
            }
        }
        Segment box = o.bounds();
        double slim = kiln.shortWidth()
                / Math.max(box.b().x() - box.a().x(), box.b().y() - box.a().y());
        List<Axis> out = new ArrayList<>();
        for (double a : angles) {
            Axis axis = new Axis(m, a, slim);
            if (out.stream().noneMatch(b -> Math.abs(Math.sin(b.angle - a)) < Math.sin(ALIKE)) && axis.mirrors(o)) {
                out.add(axis);
            }
        }
        return out;
    }

    /** Those of a slab that are tried: of many those across which the slab itself is most alike. */
    static List<Axis> of(Site site) {
        List<Axis> all = of(site.kiln);
        return all.size() <= MOST
                ? all
                : all.stream()
                        .sorted(Comparator.comparingInt(a -> a.unlike(site)))
                        .limit(MOST)
                        .toList();
    }

    /** Places of a slab from which a hole's margin is another on the other side. */
    private int unlike(Site site) {
        Segment box = site.kiln.inner().bounds();
        double w = (box.b().x() - box.a().x()) / (PLACES - 1);
        double d = (box.b().y() - box.a().y()) / (PLACES - 1);
        int n = 0;
        for (int i = 0; i < PLACES * PLACES; i++) {
            int row = i / PLACES;
            Pt p = box.a().plus(i % PLACES * w, row * d);
            Pt q = mirrored(p.x(), p.y());
            n += Math.abs(site.hole(p.x(), p.y()) - site.hole(q.x(), q.y())) > SAME ? 1 : 0;
        }
        return n;
    }

    private static double turn(double angle) {
        double a = angle - Math.PI * Math.floor(angle / Math.PI);
        return a >= Math.PI - 1e-9 ? 0 : a;
    }

    /** Corners at which an outline bends. */
    private static List<Pt> corners(Outline o) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < o.size(); i++) {
            Pt a = o.corner(i - 1);
            Pt b = o.corner(i);
            Pt c = o.corner(i + 1);
            double cross = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
            if (Math.abs(cross) > FLAT * a.distance(b) * b.distance(c)) {
                out.add(b);
            }
        }
        return out;
    }
}
