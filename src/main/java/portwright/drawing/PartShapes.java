package portwright.drawing;

import java.util.List;
import java.util.function.UnaryOperator;
import portwright.geometry.Circle;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;
import portwright.geometry.TailHole;
import portwright.model.FittingKind;
import portwright.model.On;

/** Everything of a face but its new holes: brick, joints, grooves, fittings, shelves, axes. */
final class PartShapes {
    private static final double HATCH_MM = 2.5;
    private static final double AXIS_OVER_MM = 8;

    private final Pen pen;
    private final KilnGeometry kiln;
    private final Face face;
    private final PartLook look;
    private final Box window;
    private final UnaryOperator<Pt> view;
    private final Names names = new Names();

    PartShapes(Pen pen, KilnGeometry kiln, Face face, PartLook look, Box window, UnaryOperator<Pt> view) {
        this.pen = pen;
        this.kiln = kiln;
        this.face = face;
        this.look = look;
        this.window = window;
        this.view = view;
    }

    /** Paints; answers what may be named. */
    Names paint() {
        List<Pt> rim = seen(PartPainter.partRim(kiln, face));
        pen.fill(rim, Ink.BRICK, 1);
        if (face.on() != On.WALL) {
            slab();
        }
        grooves();
        if (!look.plan()) {
            fittings();
        }
        if (face.on() == On.FLOOR && face.hot() && !look.plan()) {
            kiln.shelves().forEach(this::shelf);
        }
        axes(rim);
        pen.polyline(rim, true, LineStyle.SLAB_EDGE);
        if (face.on() == On.WALL && !face.hot()) {
            List<Pt> inside = seen(PartPainter.partRim(kiln, new Face(On.WALL, face.panel(), true)));
            pen.polyline(inside, true, LineStyle.HIDDEN);
            if (pen.flavour() != Flavour.SCREEN || face.panel() == 1) {
                names.along("the chamber begins behind this line", inside, true);
            }
        }
        return names;
    }

    private List<Pt> seen(List<Pt> points) {
        return points.stream().map(view).toList();
    }

    private void slab() {
        if (!look.plan()) {
            boolean covered =
                    !face.hot() && Boolean.TRUE.equals(kiln.slabOf(face.on()).pan());
            List<Segment> joints = kiln.joints(face.on());
            pen.lines(
                    joints.stream()
                            .map(s -> new Segment(view.apply(s.a()), view.apply(s.b())))
                            .filter(s -> window.clip(s.a(), s.b()) != null)
                            .toList(),
                    covered ? LineStyle.JOINT_BEHIND : LineStyle.JOINT);
            for (int i = 0; i < joints.size(); i++) {
                Segment s = joints.get((i * 7 + joints.size() / 2) % joints.size());
                if (window.clip(view.apply(s.a()), view.apply(s.b())) != null) {
                    names.along(
                            covered ? "brick joint behind the pan" : "brick joint", seen(List.of(s.a(), s.b())), false);
                    break;
                }
            }
        }
        List<Pt> wall = seen(kiln.inner().points());
        pen.polyline(wall, true, face.hot() ? LineStyle.CHAMBER_WALL : LineStyle.HIDDEN);
        names.along(face.hot() ? "chamber wall" : "chamber wall, other face", wall, true);
    }

    private void grooves() {
        for (GrooveSolid g : kiln.grooves()) {
            if (!g.face().samePart(face)) {
                continue;
            }
            Shape shape = g instanceof GrooveSolid.OnWall w ? new Shape.Poly(new Outline(mouth(w))) : g.footprint();
            List<List<Pt>> outlines =
                    ShapeLines.outlines(shape).stream().map(this::seen).toList();
            if (face.hot() && !look.plan()) {
                pen.lines(Hatch.lines(outlines, HATCH_MM, Math.PI / 4, window), LineStyle.GROOVE_HATCH);
            }
            outlines.forEach(o -> pen.polyline(o, true, face.hot() ? LineStyle.GROOVE : LineStyle.HIDDEN));
            String words = face.hot()
                    ? "groove " + g.name() + ", " + look.distance(g.depth()) + " deep"
                    : "groove " + g.name() + " on the other face";
            if (!unrolled()) {
                names.along(words, outlines.get(0), true);
            }
        }
        for (TailHole t : kiln.tails()) {
            if (t.face().samePart(face)) {
                hole(t.circle(), t.name());
            }
        }
    }

    private static List<Pt> mouth(GrooveSolid.OnWall w) {
        Segment m = w.mouth();
        return List.of(new Pt(m.a().x(), m.b().y()), m.b(), new Pt(m.b().x(), m.a().y()), m.a());
    }

    private void hole(Circle c, String name) {
        pen.circle(view.apply(c.centre()), c.radius(), LineStyle.FITTING);
        if (!unrolled()) {
            names.near(name, ShapeLines.box(new Shape.Disc(c), view));
        }
    }

    /** On screen the panels hang side by side and {@link UnrolledWalls} names elements and fittings, which one panel has no room for. */
    private boolean unrolled() {
        return face.on() == On.WALL && pen.flavour() == Flavour.SCREEN;
    }

    private void fittings() {
        for (FittingShape f : kiln.fittings()) {
            if (!f.face().samePart(face)) {
                continue;
            }
            boolean behind = f.outside() && face.hot();
            LineStyle style = behind
                    ? LineStyle.HIDDEN
                    : f.fitting().kind() == FittingKind.CRACK ? LineStyle.BOX : LineStyle.FITTING;
            ShapeLines.draw(pen, f.shape(), view, style);
            if (pen.flavour() != Flavour.SCREEN && style == LineStyle.FITTING && !f.open()) {
                List<List<Pt>> outlines =
                        ShapeLines.outlines(f.shape()).stream().map(this::seen).toList();
                pen.lines(Hatch.lines(outlines, HATCH_MM, -Math.PI / 4, window), LineStyle.CUT_HATCH);
            }
            String side = !behind ? "" : face.on() == On.FLOOR ? " below" : face.on() == On.LID ? " above" : " outside";
            if (!unrolled()) {
                names.near(f.name() + side, ShapeLines.box(f.shape(), view));
            }
        }
    }

    private void shelf(ShelfPlate s) {
        ShapeLines.draw(pen, s.shape(), view, LineStyle.NEIGHBOUR);
        List<Pt> rim = seen(ShapeLines.outlines(s.shape()).get(0));
        names.along(s.name(), rim, true);
        if (s.posts() != null) {
            for (Circle c : s.posts()) {
                pen.circle(view.apply(c.centre()), c.radius(), LineStyle.NEIGHBOUR);
                names.near("post", ShapeLines.box(new Shape.Disc(c), view));
            }
        }
    }

    private void axes(List<Pt> rim) {
        Box b = Box.around(rim).grown(AXIS_OVER_MM);
        if (b.minX() < 0 && b.maxX() > 0) {
            pen.line(new Pt(0, b.minY()), new Pt(0, b.maxY()), LineStyle.AXIS);
        }
        if (face.on() != On.WALL && b.minY() < 0 && b.maxY() > 0) {
            pen.line(new Pt(b.minX(), 0), new Pt(b.maxX(), 0), LineStyle.AXIS);
        }
    }
}
