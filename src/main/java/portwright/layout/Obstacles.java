package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;
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
    static List<Obstacle> of(KilnGeometry kiln, On on, LayoutLimits limits, double diameter, double oversize, boolean inlet, double bodyMm) {
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
        list.add(new Obstacle("inside-chamber", "chamber", 0, LayoutLimits.INSIDE_MM, Plain.depth(kiln.inner(), r), 0, 0, false, null, r));
        double stop = Math.max(d, limits.value("edge-distance", "stop", 50));
        double caution = Math.max(Math.max(1.5 * d, t), limits.value("edge-distance", "caution", 75));
        list.add(new Obstacle("edge-distance", on.id() + " rim", stop, Math.max(stop, caution), Plain.depth(kiln.slab(on), r), 0, 1, false, null, stop + r));
    }

    private void elements() {
        double stop = limits.elementStop();
        double caution = limits.elementCaution();
        for (GrooveSolid g : kiln.grooves()) {
            double deep = Math.min(1, g.depth() / t);
            if (g.face().on() == on) {
                list.add(new Obstacle("element-clearance", g.name(), stop, caution, Plain.gap(g.footprint(), r), 0, deep, true, g.footprint(), stop + r));
            } else if (g instanceof GrooveSolid.OnWall w) {
                double rise = on == On.FLOOR ? w.bottom() : kiln.height() - w.top();
                double drop = on == On.FLOOR ? w.drop() : 0;
                acrossCorner("element-clearance", g.name(), hotLine(w.panel()), rise, drop, w.depth(), stop, caution);
            }
        }
        for (TailHole tail : kiln.tails()) {
            Panel p = kiln.panel(tail.face().panel());
            Pt c = tail.circle().centre();
            double rise = on == On.FLOOR ? c.y() - tail.circle().radius() : kiln.height() - c.y() - tail.circle().radius();
            double half = tail.circle().radius();
            Shape mouth = new Shape.Strip(List.of(p.plan(c.x() - half, 0), p.plan(c.x() + half, 0)), 0);
            acrossCorner("element-clearance", tail.name(), mouth, rise, 0, 0, stop, caution);
        }
    }

    private static Shape hotLine(Panel p) {
        return new Shape.Strip(List.of(p.a(), p.b()), 0);
    }

    /** A solid behind the wall's hot face, {@code rise} above (below) the slab's hot face, falling by {@code drop} over its depth. */
    private void acrossCorner(String rule, String name, Shape line, double rise, double drop, double depth, double stop, double caution) {
        double up = Math.max(0, rise);
        double s = depth > 0 ? drop / depth : 0;
        Obstacle.Gap plan = Plain.gap(line, r);
        Obstacle.Gap gap = (x, y) -> {
            double g = Math.max(0, plan.at(x, y));
            double w = Math.max(0, Math.min(depth, (s * up - g) / (1 + s * s)));
            double z = Math.max(0, up - s * w);
            return Math.sqrt((g + w) * (g + w) + z * z);
        };
        if (up - drop < caution * 4) {
            double low = Math.max(0, up - drop);
            double keep = low >= stop ? Double.NaN : r + Math.sqrt(stop * stop - low * low);
            list.add(new Obstacle(rule, name, stop, caution, gap, 0, 0, true, line, keep));
        }
    }

    private void fittings(double bodyMm) {
        for (FittingShape f : kiln.fittings()) {
            Shape shape = null;
            if (f.face().on() == on) {
                shape = f.shape();
            } else if (f.face().on() == On.WALL && f.outside()) {
                shape = outsideWall(f);
            }
            if (shape == null) {
                continue;
            }
            double caution = f.fitting().clear() != null ? f.fitting().clear().mm()
                    : limits.value("fitting-clearance", f.fitting().kind().id(), LayoutLimits.fitting(f.fitting().kind()));
            list.add(new Obstacle("fitting-clearance", f.name(), caution / 2, caution, Plain.gap(shape, r), 0, 1, false, shape, caution / 2 + r));
            boolean under = f.fitting().kind() == FittingKind.LEG || f.fitting().kind() == FittingKind.STAND_BAR;
            if (bodyMm > 0 && under && on == On.FLOOR) {
                double room = limits.value("burner-room", "caution", 50);
                list.add(new Obstacle("burner-room", f.name(), 0, room, Plain.gap(shape, bodyMm / 2), 1, 1, false, shape, bodyMm / 2));
            }
        }
    }

    private Shape outsideWall(FittingShape f) {
        Panel p = kiln.panel(f.face().panel());
        double u0;
        double u1;
        if (f.shape() instanceof Shape.Disc disc) {
            u0 = disc.circle().centre().x() - disc.circle().radius();
            u1 = disc.circle().centre().x() + disc.circle().radius();
        } else if (f.shape() instanceof Shape.Poly poly) {
            u0 = poly.outline().bounds().a().x();
            u1 = poly.outline().bounds().b().x();
        } else {
            return null;
        }
        double w = p.thickness() + (Double.isNaN(f.standoff()) ? 0 : f.standoff());
        return new Shape.Strip(List.of(p.plan(u0, w), p.plan(u1, w)), 0);
    }

    private void posts() {
        for (ShelfPlate s : kiln.shelves()) {
            if (s.posts() == null || s.posts().isEmpty()) {
                continue;
            }
            for (int i = 0; i < s.posts().size(); i++) {
                Pt at = s.posts().get(i).centre();
                boolean stacked = kiln.shelves().stream().anyMatch(o -> o.bottom() < s.bottom() && o.shape().contains(at));
                if (!stacked) {
                    Shape post = new Shape.Disc(s.posts().get(i));
                    double reach = (s.bottom() + 10) * LayoutLimits.FLAME_TAN;
                    list.add(new Obstacle("post-in-flame", s.postName(i), 0, reach, Plain.gap(post, d / 2), 0, 0, false, post, d / 2));
                }
            }
        }
    }

}
