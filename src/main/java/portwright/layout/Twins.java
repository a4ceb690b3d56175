package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.model.On;

/**
 * Turns and mirrorings about the chamber's middle that nothing in the kiln tells apart. Two layouts that one of them carries into each other are the same
 * layout; elements, fittings, joints or an odd outline make them two.
 */
final class Twins {
    /** What lies on a ring, in pairs across the middle, or in it. */
    static final String MIDDLE = "even about the middle";

    private static final String UNSURE = "laid out about the middle, with which the chamber does not repeat";

    /** Nothing is a twin. */
    static final Twins NONE = new Twins(null, 0, List.of(), null, List.of());

    /** Turns that are tried are parts of a circle up to this many sides. */
    private static final int SIDES = 16;

    /** Places a side at which the two are compared. */
    private static final int PLACES = 41;

    private static final double SAME = 1e-6;

    /** How far a hole must lie from every one of another layout for the two to differ clearly: in its diameters, and as a share of the chamber's width (judgement). */
    private static final double DIAMETERS = 2;

    private static final double SHARE = 0.12;

    private final Pt middle;
    private final double width;
    private final List<Move> moves;
    private final Outline chamber;
    private final List<Axis> axes;

    /** A turn by an angle, rad, after a mirroring from left to right where asked for. */
    private record Move(boolean mirror, double angle) {
        Pt of(Pt p, Pt middle) {
            double x = (mirror ? -1 : 1) * (p.x() - middle.x());
            double y = p.y() - middle.y();
            return new Pt(
                    middle.x() + x * Math.cos(angle) - y * Math.sin(angle),
                    middle.y() + x * Math.sin(angle) + y * Math.cos(angle));
        }
    }

    private Twins(Pt middle, double width, List<Move> moves, Outline chamber, List<Axis> axes) {
        this.middle = middle;
        this.width = width;
        this.moves = moves;
        this.chamber = chamber;
        this.axes = axes;
    }

    /** The moves of a kiln that leave what holes of these sizes find in floor and lid as it is. */
    static Twins of(KilnGeometry kiln, Sites sites, Sizes.Choice c) {
        List<Site> slabs = List.of(sites.slab(On.FLOOR, c.inletMm()), sites.slab(On.LID, c.flueMm()));
        return new Twins(
                kiln.centre(),
                kiln.shortWidth(),
                candidates().stream()
                        .filter(m -> slabs.stream().allMatch(s -> keeps(kiln, s, m)))
                        .toList(),
                kiln.inner(),
                Axis.of(kiln));
    }

    private static List<Move> candidates() {
        List<Move> out = new ArrayList<>();
        for (int n = 1; n <= SIDES; n++) {
            for (int k = 0; k < n; k++) {
                double a = 2 * Math.PI * k / n;
                if (out.stream().noneMatch(m -> Math.abs(m.angle() - a) < SAME)) {
                    out.add(new Move(false, a));
                    out.add(new Move(true, a));
                }
            }
        }
        out.removeIf(m -> !m.mirror() && m.angle() == 0);
        return out;
    }

    private static boolean keeps(KilnGeometry kiln, Site s, Move m) {
        Segment box = kiln.inner().bounds();
        double w = (box.b().x() - box.a().x()) / (PLACES - 1);
        double d = (box.b().y() - box.a().y()) / (PLACES - 1);
        for (int i = 0; i < PLACES; i++) {
            for (int j = 0; j < PLACES; j++) {
                Pt p = box.a().plus(i * w, j * d);
                Pt q = m.of(p, kiln.centre());
                if (Math.abs(s.hole(p.x(), p.y()) - s.hole(q.x(), q.y())) > SAME
                        || shelved(kiln, p) != shelved(kiln, q)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean shelved(KilnGeometry kiln, Pt p) {
        return kiln.shelves().stream().anyMatch(s -> s.shape().contains(p));
    }

    /** How the even roles of a layout lie, where the chamber repeats or mirrors itself with them: only then can they be said to heat it evenly; else null. */
    String evenly(Combination c) {
        return evenly(Stream.of(c.inlets(), c.flues()).filter(Spots::even).toList());
    }

    /** Why a layout whose roles are even may not heat evenly. */
    String doubt(Combination c) {
        String in = evenly(List.of(c.inlets()));
        String out = evenly(List.of(c.flues()));
        String why = in == null && out == null
                ? "laid out about the middle, but the chamber does not repeat with it"
                : (c.choice().inlets() == 1 ? "inlet " : "inlets ")
                        + (in == null ? UNSURE : in)
                        + (c.choice().flues() == 1 ? ", flue " : ", flues ")
                        + (out == null ? UNSURE : out);
        return why + ": whether it heats evenly is not sure.";
    }

    private String evenly(List<Spots> roles) {
        if (chamber == null || roles.stream().allMatch(s -> s.symmetric() && repeats(s))) {
            return MIDDLE;
        }
        return axes.stream()
                .filter(a -> roles.stream().allMatch(s -> s.mirrors(a, Axis.ROUNDED_MM)))
                .map(Axis::mirroring)
                .min(Comparator.comparing(
                        m -> roles.stream().noneMatch(s -> s.family().contains(m))))
                .orElse(null);
    }

    private boolean repeats(Spots s) {
        return repeats(chamber, middle, s);
    }

    /** Whether a chamber comes to lie on itself when turned as what lies about its middle does. */
    static boolean repeats(Outline chamber, Pt middle, Spots s) {
        if (s.mirror() != null) {
            return false;
        }
        int n = s.x().length - (s.family().contains("one in the middle") ? 1 : 0);
        return n == 1 ? repeats(chamber, middle) : repeats(chamber, middle, n);
    }

    /** Whether a chamber comes to lie on itself by any turn less than a whole one: its middle is alike to all sides. */
    static boolean repeats(Outline chamber, Pt middle) {
        return IntStream.rangeClosed(2, SIDES).anyMatch(k -> repeats(chamber, middle, k));
    }

    /** Whether it does when turned by a part of a circle. */
    private static boolean repeats(Outline chamber, Pt middle, int parts) {
        Move turn = new Move(false, 2 * Math.PI / parts);
        return chamber.points().stream().allMatch(p -> {
            Pt q = turn.of(p, middle);
            return chamber.nearest(q).distance(q) < Axis.NEAR_MM;
        });
    }

    /** Whether a move carries one layout into the other, each hole to within its diameter. Inlets in the wall are left out. */
    boolean same(Combination a, Combination b) {
        if (a.choice().inlets() != b.choice().inlets()
                || a.choice().flues() != b.choice().flues()
                || a.inlets().inWall()
                || b.inlets().inWall()) {
            return false;
        }
        return moves.stream().anyMatch(m -> {
            Combination moved = new Combination(
                    a.choice(), moved(a.inlets(), m), moved(a.flues(), m), a.cross(), a.sizes(), a.nearFlame());
            return moved.sharesInlets(b) && moved.sharesFlues(b);
        });
    }

    /**
     * Whether a layout lies clearly elsewhere than another: more than half of the drilling ({@link Combination#elsewhere}), and with the same holes in the
     * same parts one of them far from all of the other's, however the kiln's own turns and mirrorings carry the two onto each other.
     *
     * @param fartherMm how much farther off a hole must lie
     */
    boolean clear(Combination c, Combination o, double fartherMm) {
        if (c.elsewhere(o, fartherMm) <= Choosing.CLEAR) {
            return false;
        }
        if (!c.choice().sameHoles(o.choice()) || !c.samePart(o)) {
            return true;
        }
        return apart(c.inlets(), c.flues(), o, fartherMm)
                && (c.inlets().inWall()
                        || moves.stream()
                                .allMatch(m -> apart(moved(c.inlets(), m), moved(c.flues(), m), o, fartherMm)));
    }

    private boolean apart(Spots in, Spots out, Combination o, double fartherMm) {
        return apart(in, o.inlets(), o.choice().inletMm(), fartherMm)
                || apart(out, o.flues(), o.choice().flueMm(), fartherMm);
    }

    private boolean apart(Spots a, Spots b, double diameterMm, double fartherMm) {
        double far = Math.max(DIAMETERS * diameterMm, SHARE * width) + fartherMm;
        return a.farFrom(b) > far || b.farFrom(a) > far;
    }

    private Spots moved(Spots s, Move m) {
        double[] x = new double[s.x().length];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            Pt p = m.of(new Pt(s.x()[i], s.y()[i]), middle);
            x[i] = p.x();
            y[i] = p.y();
        }
        return s.at(x, y);
    }
}
