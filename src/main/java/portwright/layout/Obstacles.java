package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import portwright.check.rules.geometry.FittingClearance;
import portwright.geometry.Bore;
import portwright.geometry.Convex;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;
import portwright.geometry.Solids;
import portwright.geometry.TailHole;
import portwright.model.FittingKind;
import portwright.model.On;

/** Collects what a hole of one diameter keeps away from on one slab. */
final class Obstacles {
    private final KilnGeometry kiln;
    private final On on;
    private final LayoutLimits limits;
    private final double d;
    private final double r;
    private final double t;
    private final List<Obstacle> list = new ArrayList<>();

    private Obstacles(KilnGeometry kiln, On on, LayoutLimits limits, double diameter, double oversize) {
        this.kiln = kiln;
        this.on = on;
        this.limits = limits;
        this.d = diameter;
        this.r = (diameter + oversize) / 2;
        this.t = kiln.thickness(on);
    }

    /** All but the coils. {@code bodyMm}: widest burner body under an inlet, 0 for none. */
    static List<Obstacle> of(
            KilnGeometry kiln,
            On on,
            LayoutLimits limits,
            double diameter,
            double oversize,
            boolean inlet,
            double bodyMm) {
        Obstacles o = new Obstacles(kiln, on, limits, diameter, oversize);
        o.outlines();
        o.elements();
        o.fittings(inlet ? bodyMm : 0);
        if (inlet) {
            o.posts();
        }
        return o.list;
    }

    private void outlines() {
        double inside = limits.value("inside-chamber", "stop");
        list.add(new Obstacle(
                "inside-chamber",
                "chamber",
                inside,
                inside + LayoutLimits.INSIDE_MM,
                Plain.depth(kiln.inner(), r),
                0,
                0,
                false,
                null,
                inside + r));
        double stop =
                Math.max(limits.value("edge-distance", "stop-diameters") * d, limits.value("edge-distance", "stop"));
        double caution = Math.max(
                Math.max(limits.value("edge-distance", "caution-diameters") * d, t),
                limits.value("edge-distance", "caution"));
        list.add(new Obstacle(
                "edge-distance",
                on.id() + " rim",
                stop,
                Math.max(stop, caution),
                Plain.depth(kiln.slab(on), r),
                0,
                1,
                false,
                null,
                stop + r));
    }

    private void elements() {
        double stop = limits.elementStop();
        double caution = limits.elementCaution();
        for (GrooveSolid g : kiln.grooves()) {
            if (g.face().on() == on) {
                double deep = Math.min(1, g.depth() / t);
                list.add(new Obstacle(
                        "element-clearance",
                        g.name(),
                        stop,
                        caution,
                        Plain.gap(g.footprint(), r),
                        0,
                        deep,
                        true,
                        g.footprint(),
                        stop + r));
            } else if (g instanceof GrooveSolid.OnWall w) {
                acrossCorner(w, stop, caution);
            }
        }
        for (TailHole tail : kiln.tails()) {
            throughWall(
                    "element-clearance",
                    tail.element(),
                    tail.face(),
                    new Shape.Disc(tail.circle()),
                    List.of(Bore.of(kiln, tail)),
                    stop,
                    caution);
        }
        list.addAll(CoilRoom.of(kiln, on, stop, caution, r));
    }

    /** A groove behind the wall's hot face, above the floor's hot face or below the lid's. */
    private void acrossCorner(GrooveSolid.OnWall w, double stop, double caution) {
        CornerGap gap = CornerGap.of(w, on == On.FLOOR, kiln.height(), r);
        double low = gap.lowest();
        if (low < 4 * caution) {
            Shape line = new Shape.Strip(List.of(w.panel().a(), w.panel().b()), 0);
            double keep = low >= stop ? Double.NaN : r + Math.sqrt(stop * stop - low * low);
            list.add(new Obstacle("element-clearance", w.name(), stop, caution, gap, 0, 0, true, line, keep));
        }
    }

    private void fittings(double bodyMm) {
        for (FittingShape f : kiln.fittings()) {
            boolean outside = f.face().on() == On.WALL && f.outside();
            if (f.face().on() != on && f.face().on() != On.WALL) {
                continue;
            }
            double caution = limits.fitting(f.fitting());
            double stop = caution / 2;
            if (f.face().on() != on && !outside) {
                throughWall("fitting-clearance", f.name(), f.face(), f.shape(), f.solids(kiln), stop, caution);
                continue;
            }
            Shape shape = outside ? plate(f) : f.shape();
            if (outside) {
                double rise = rise(f);
                Obstacle.Gap plan = Plain.gap(shape, r);
                double keep = rise >= stop ? Double.NaN : r + Math.sqrt(stop * stop - rise * rise);
                list.add(new Obstacle(
                        "fitting-clearance",
                        f.name(),
                        stop,
                        caution,
                        (x, y) -> {
                            double g = Math.max(0, plan.at(x, y));
                            return Math.sqrt(g * g + rise * rise);
                        },
                        0,
                        1,
                        false,
                        shape,
                        keep));
            } else {
                list.add(new Obstacle(
                        "fitting-clearance",
                        f.name(),
                        stop,
                        caution,
                        Plain.gap(shape, r),
                        0,
                        1,
                        false,
                        shape,
                        stop + r));
            }
            if (f.face().on() == on && FittingClearance.unturned(f)) {
                Shape round = FittingClearance.anyWayRound(f);
                list.add(new Obstacle(
                        "fitting-clearance",
                        f.name() + WallSite.UNTURNED,
                        Double.NaN,
                        0,
                        Plain.gap(round, r + stop),
                        0,
                        1,
                        false,
                        round,
                        Double.NaN));
            }
            boolean under = f.fitting().kind() == FittingKind.LEG || f.fitting().kind() == FittingKind.STAND_BAR;
            if (bodyMm > 0 && under && on == On.FLOOR) {
                double room = limits.value("burner-room", "limit");
                list.add(new Obstacle(
                        "burner-room",
                        f.name(),
                        0,
                        room,
                        Plain.gap(shape, bodyMm / 2),
                        1,
                        1,
                        false,
                        shape,
                        bodyMm / 2));
            }
        }
    }

    /** Something that passes the wall near the slab, through the corner. */
    private void throughWall(
            String rule, String part, Face face, Shape inPanel, List<Convex> solids, double stop, double caution) {
        Segment box = box(inPanel);
        double low = on == On.FLOOR ? box.a().y() : kiln.height() - box.b().y();
        if (low >= caution) {
            return;
        }
        Panel p = kiln.panel(face.panel());
        Shape line =
                new Shape.Strip(List.of(p.plan(box.a().x(), 0), p.plan(box.b().x(), 0)), 0);
        double keep = low >= stop ? Double.NaN : r + Math.sqrt(stop * stop - Math.max(0, low) * Math.max(0, low));
        list.add(new Obstacle(
                rule,
                part,
                stop,
                caution,
                (x, y) -> Solids.distance(Bore.slab(kiln, on, new Pt(x, y), r), solids, Double.POSITIVE_INFINITY),
                0,
                1,
                rule.equals("element-clearance"),
                line,
                keep));
    }

    /** The side of a fitting outside the wall that faces the kiln, seen from above. */
    private Shape plate(FittingShape f) {
        Panel p = kiln.panel(f.face().panel());
        Segment box = box(f.shape());
        double w = kiln.thickness(On.WALL) + (Double.isNaN(f.standoff()) ? 0 : f.standoff());
        return new Shape.Strip(List.of(p.plan(box.a().x(), w), p.plan(box.b().x(), w)), 0);
    }

    /** How far it stands above (below) the slab. */
    private double rise(FittingShape f) {
        Segment box = box(f.shape());
        double low = on == On.FLOOR ? -t : kiln.height();
        return Math.max(0, Math.max(box.a().y() - (low + t), low - box.b().y()));
    }

    private static Segment box(Shape s) {
        if (s instanceof Shape.Poly p) {
            return p.outline().bounds();
        }
        List<Pt> points = s instanceof Shape.Disc d ? List.of(d.circle().centre()) : ((Shape.Strip) s).path();
        double r = s instanceof Shape.Disc d ? d.circle().radius() : ((Shape.Strip) s).halfWidth();
        Segment b = new Outline(points).bounds();
        return new Segment(b.a().plus(-r, -r), b.b().plus(r, r));
    }

    private void posts() {
        for (ShelfPlate s : kiln.shelves()) {
            if (s.posts() == null || s.posts().isEmpty()) {
                continue;
            }
            for (int i = 0; i < s.posts().size(); i++) {
                Pt at = s.posts().get(i).centre();
                boolean stacked = kiln.shelves().stream()
                        .anyMatch(o -> o.bottom() < s.bottom() && o.shape().contains(at));
                if (!stacked) {
                    Shape post = new Shape.Disc(s.posts().get(i));
                    double reach = s.bottom() * LayoutLimits.FLAME_TAN + limits.value("post-in-flame", "caution");
                    list.add(new Obstacle(
                            "post-in-flame",
                            s.postName(i),
                            0,
                            reach,
                            Plain.gap(post, d / 2),
                            0,
                            0,
                            false,
                            post,
                            d / 2));
                }
            }
        }
    }
}
