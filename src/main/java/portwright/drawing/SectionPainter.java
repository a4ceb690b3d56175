package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Circle;
import portwright.geometry.CoilRun;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Segment3;
import portwright.geometry.ShelfPlate;
import portwright.model.On;

/**
 * The kiln cut upright through its middle from left to right, seen towards the back. Picture: x to the right, y up from
 * the hot face of the floor. Ports and shelves beside the cut are shown as if they lay in it.
 */
public final class SectionPainter {
    private static final double ROOM_MM = 12;
    private static final double HATCH_MM = 6;
    /** So much of a shelf's name lies over or under that shelf. */
    private static final double OWN_SHARE = 0.6;

    private final KilnGeometry kiln;

    public SectionPainter(KilnGeometry kiln) {
        this.kiln = kiln;
    }

    private double[] across(Outline o) {
        return o.across(kiln.centre().y());
    }

    /** What the picture needs. */
    public Box bounds() {
        double[] f = across(kiln.slab(On.FLOOR));
        double[] l = across(kiln.slab(On.LID));
        double[] w = across(kiln.wallOuter());
        return new Box(
                        Math.min(Math.min(f[0], l[0]), w[0]),
                        -kiln.thickness(On.FLOOR),
                        Math.max(Math.max(f[1], l[1]), w[1]),
                        kiln.height() + kiln.thickness(On.LID))
                .grown(ROOM_MM);
    }

    /** Paints what lies in the window, without words. */
    public void shapes(Pen pen, Box window) {
        double[] inner = across(kiln.inner());
        double[] outer = across(kiln.wallOuter());
        double h = kiln.height();
        slab(pen, window, On.FLOOR, -kiln.thickness(On.FLOOR), 0);
        slab(pen, window, On.LID, h, h + kiln.thickness(On.LID));
        wall(pen, window, outer[0], inner[0]);
        wall(pen, window, inner[1], outer[1]);
        coils(pen);
        SectionFittings.of(kiln).forEach(f -> pen.polyline(f.box().corners(), true, LineStyle.NEIGHBOUR));
        kiln.shelves().forEach(s -> shelf(pen, s));
        Pt c = kiln.centre();
        pen.line(
                new Pt(c.x(), -kiln.thickness(On.FLOOR) - ROOM_MM),
                new Pt(c.x(), h + kiln.thickness(On.LID) + ROOM_MM),
                LineStyle.AXIS);
    }

    /** Names holes and shelves where there is room. */
    public void names(Pen pen, Labels labels) {
        double h = kiln.height();
        for (Hole hole : kiln.holes()) {
            if (hole.face().on() != On.WALL) {
                double y = hole.face().on() == On.FLOOR ? -kiln.thickness(On.FLOOR) : h + kiln.thickness(On.LID);
                labels.place(hole.name(), beside(pen, hole, y), TextStyle.LABEL_BOLD);
            }
        }
        kiln.shelves().forEach(s -> name(pen, labels, s));
        cuts().forEach(labels::keepFree);
        SectionFittings.of(kiln).forEach(f -> labels.place(f.name(), labels.near(f.box()), TextStyle.SMALL));
    }

    /** Words keep off the plates of the shelves. */
    public void keepFree(Labels labels) {
        kiln.shelves().forEach(s -> labels.keepFree(plate(s)));
    }

    /** The brick that is cut: floor, lid and walls. */
    private List<Box> cuts() {
        double[] floor = across(kiln.slab(On.FLOOR));
        double[] lid = across(kiln.slab(On.LID));
        double[] inner = across(kiln.inner());
        double[] outer = across(kiln.wallOuter());
        double h = kiln.height();
        return List.of(
                new Box(floor[0], -kiln.thickness(On.FLOOR), floor[1], 0),
                new Box(lid[0], h, lid[1], h + kiln.thickness(On.LID)),
                new Box(outer[0], 0, inner[0], h),
                new Box(inner[1], 0, outer[1], h));
    }

    /** Over a hole in the lid; beside one in the floor, where the burner stands under it. */
    private List<Labels.Spot> beside(Pen pen, Hole hole, double y) {
        double x = hole.centre().x();
        double size = pen.textSize(TextStyle.LABEL);
        if (hole.face().on() == On.LID) {
            Pt at = new Pt(x, y + pen.size(2, 6));
            return List.of(
                    new Labels.Spot(at, Pen.Align.CENTRE, 0),
                    new Labels.Spot(at, Pen.Align.LEFT, 0),
                    new Labels.Spot(at, Pen.Align.RIGHT, 0));
        }
        double out = hole.diameter() / 2 + pen.size(7, 26);
        double at = y - pen.size(2, 5) - size;
        boolean left = x < kiln.centre().x();
        List<Labels.Spot> spots = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            double low = at - row * size * Words.LEADING;
            spots.add(
                    new Labels.Spot(new Pt(left ? x - out : x + out, low), left ? Pen.Align.RIGHT : Pen.Align.LEFT, 0));
            spots.add(
                    new Labels.Spot(new Pt(left ? x + out : x - out, low), left ? Pen.Align.LEFT : Pen.Align.RIGHT, 0));
        }
        return spots;
    }

    /** A slab with a gap for every hole. */
    private void slab(Pen pen, Box window, On on, double low, double high) {
        double[] rim = across(kiln.slab(on));
        List<Hole> holes = new ArrayList<>(kiln.holes(on));
        holes.sort(java.util.Comparator.comparingDouble(x -> x.centre().x()));
        double from = rim[0];
        for (Hole h : holes) {
            double l = h.centre().x() - h.diameter() / 2;
            double r = h.centre().x() + h.diameter() / 2;
            if (l > from) {
                cut(pen, window, new Box(from, low, l, high));
            }
            from = Math.max(from, r);
            pen.line(
                    new Pt(h.centre().x(), low - 6),
                    new Pt(h.centre().x(), high + 6),
                    LineStyle.AXIS,
                    h.inlet() ? Ink.COBALT : Ink.UMBER);
        }
        if (rim[1] > from) {
            cut(pen, window, new Box(from, low, rim[1], high));
        }
    }

    private void cut(Pen pen, Box window, Box b) {
        pen.fill(b.corners(), Ink.BRICK, 1);
        pen.lines(Hatch.lines(List.of(b.corners()), HATCH_MM, Math.PI / 4, window), LineStyle.CUT_HATCH);
        pen.polyline(b.corners(), true, LineStyle.CUT_BRICK);
    }

    private void wall(Pen pen, Box window, double from, double to) {
        cut(pen, window, new Box(from, 0, to, kiln.height()));
        double middle = (from + to) / 2;
        boolean left = middle < kiln.centre().x();
        for (GrooveSolid g : kiln.grooves()) {
            if (g instanceof GrooveSolid.OnWall w && crossed(w.panel(), left)) {
                double x = left ? to : from;
                Box mouth = new Box(left ? x - w.depth() : x, w.bottom(), left ? x : x + w.depth(), w.top());
                pen.fill(mouth.corners(), Ink.PAPER, 1);
                pen.polyline(mouth.corners(), true, LineStyle.GROOVE);
            }
        }
    }

    private boolean crossed(Panel p, boolean left) {
        double y = kiln.centre().y();
        boolean crosses = p.a().y() <= y != p.b().y() <= y;
        return crosses && (p.middle().x() < kiln.centre().x()) == left;
    }

    private void coils(Pen pen) {
        double y = kiln.centre().y();
        for (CoilRun c : kiln.coils()) {
            for (Segment3 s : c.pieces()) {
                double a = s.a().y() - y;
                double b = s.b().y() - y;
                if (a <= 0 != b <= 0) {
                    double t = a / (a - b);
                    pen.circle(
                            new Pt(s.a().x() + t * (s.b().x() - s.a().x()), s.a().z() + t * (s.b().z() - s.a().z())),
                            c.radius(),
                            LineStyle.COIL);
                }
            }
        }
    }

    private static Box plate(ShelfPlate s) {
        Box plan = ShapeLines.box(s.shape(), p -> p);
        return new Box(plan.minX(), s.bottom(), plan.maxX(), s.top() > s.bottom() ? s.top() : s.bottom() + 1);
    }

    /** Over the plate, middle or ends, else under it; never over a wall, nor as much over the shelf beside. */
    private void name(Pen pen, Labels labels, ShelfPlate s) {
        double[] in = kiln.inner().across(kiln.centre().y());
        double rim = pen.size(0.6, 2);
        Box b = plate(s);
        double over = b.maxY() + pen.size(1.2, 4);
        double under = b.minY() - pen.size(1.2, 4) - pen.textSize(TextStyle.LABEL) * 0.8;
        List<Labels.Spot> spots = new ArrayList<>();
        for (double y : new double[] {over, under}) {
            spots.add(new Labels.Spot(new Pt(b.centre().x(), y), Pen.Align.CENTRE, 0));
            spots.add(new Labels.Spot(new Pt(b.minX(), y), Pen.Align.LEFT, 0));
            spots.add(new Labels.Spot(new Pt(b.maxX(), y), Pen.Align.RIGHT, 0));
            spots.add(new Labels.Spot(new Pt(in[0] + rim, y), Pen.Align.LEFT, 0));
            spots.add(new Labels.Spot(new Pt(in[1] - rim, y), Pen.Align.RIGHT, 0));
        }
        spots.removeIf(spot -> {
            Box words = labels.extent(s.name(), spot, TextStyle.LABEL);
            double own = Math.min(words.maxX(), b.maxX()) - Math.max(words.minX(), b.minX());
            return words.minX() < in[0] || words.maxX() > in[1] || own < OWN_SHARE * words.width();
        });
        labels.place(s.name(), spots, TextStyle.LABEL);
    }

    private void shelf(Pen pen, ShelfPlate s) {
        Box b = plate(s);
        pen.fill(b.corners(), Ink.BISQUE, 1);
        pen.polyline(b.corners(), true, LineStyle.CHAMBER_WALL);
        if (s.posts() != null) {
            for (Circle c : s.posts()) {
                pen.polyline(
                        new Box(c.centre().x() - c.radius(), 0, c.centre().x() + c.radius(), s.bottom()).corners(),
                        true,
                        LineStyle.NEIGHBOUR);
            }
        }
    }
}
