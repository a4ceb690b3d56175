package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Bore;
import portwright.geometry.CoilRun;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Segment3;
import portwright.geometry.Solids;
import portwright.geometry.TailHole;
import portwright.model.ElementRun;
import portwright.model.On;
import portwright.review.Review;

/** Sound brick between a hole and the grooves, coils and tails of the elements; through the brick where they lie in another part. */
public final class ElementClearance implements Rule {
    /** The nearest thing of one element. */
    private record Near(double left, String what, Pt at, boolean within) {}

    @Override
    public String id() {
        return "element-clearance";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.DRILLING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        if (!kiln.grooveLacks().isEmpty()) {
            out.lacks(this, kiln.grooveLacks().toArray(String[]::new));
        }
        double stop = limits.value(id(), "limit");
        double caution = stop * limits.value(id(), "caution-factor");
        List<String> unknown = unknown(kiln, caution);
        if (!unknown.isEmpty()) {
            out.lacks(this, unknown.toArray(String[]::new));
        }
        for (Hole h : kiln.holes()) {
            nearest(kiln, h, caution).forEach((element, near) -> {
                boolean stopped = Geo.under(near.left(), stop);
                if (stopped || Geo.under(near.left(), caution)) {
                    double limit = stopped ? stop : caution;
                    Mark[] marks =
                            near.at() == null ? new Mark[0] : new Mark[] {new Mark(h.face(), h.centre(), near.at())};
                    out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "limit")
                            .parts(h.name(), element)
                            .mm(near.left(), limit)
                            .mark(marks)
                            .say(
                                    Geo.mm(near.left()) + " of brick between " + h.name() + " and " + near.what() + " "
                                            + element + "; " + Geo.mm(limit) + " wanted.",
                                    remedy(kiln, h, near, limit - near.left())));
                }
            });
        }
    }

    /** What the clearances of these holes turn on though the design need not give it: tails for wall holes, the groove's slope for holes at the wall. */
    private static List<String> unknown(KilnGeometry kiln, double caution) {
        List<ElementRun> elements = kiln.design().kiln().elements();
        boolean inWall = !kiln.holes(On.WALL).isEmpty();
        boolean atWall = inWall
                || kiln.holes(On.FLOOR).stream()
                        .anyMatch(h -> Geo.under(kiln.inner().depth(h.centre()) - h.drilledRadius(), caution));
        List<String> out = new ArrayList<>();
        for (int i = 0; elements != null && i < elements.size(); i++) {
            ElementRun e = elements.get(i);
            if (e.on() == On.WALL && inWall && e.tails() == null) {
                out.add("kiln.elements[" + i + "].tails");
            }
            if (e.on() == On.WALL && atWall && e.groove() != null && e.groove().slope() == null) {
                out.add("kiln.elements[" + i + "].groove.slope");
            }
        }
        return out;
    }

    private static String remedy(KilnGeometry kiln, Hole h, Near near, double by) {
        String move = near.at() != null
                ? Move.away(kiln, h, near.at(), near.within(), by)
                : "Move " + h.name() + " " + Geo.both(by)
                        + (h.face().on() == On.WALL ? " up or down, away from it." : " toward the centre.");
        return h.face().on() == On.WALL
                ? move
                        + " Between element rows a port rarely passes (a 1 in hole needs rows 3.7 in apart): look for a panel without elements."
                : move;
    }

    private static Map<String, Near> nearest(KilnGeometry kiln, Hole h, double reach) {
        Map<String, Near> all = new LinkedHashMap<>();
        Bore bore = Bore.of(kiln, h);
        double r = h.drilledRadius();
        for (GrooveSolid g : kiln.grooves()) {
            if (g.face().samePart(h.face())) {
                Pt at = g.footprint().nearest(h.centre());
                keep(
                        all,
                        g.name(),
                        new Near(
                                g.footprint().distance(h.centre()) - r,
                                "groove",
                                at,
                                g.footprint().distance(h.centre()) < 0));
            } else if (g.face().on() == On.WALL || h.face().on() == On.WALL) {
                if (farFrom(kiln, bore, g, reach)) {
                    continue;
                }
                keep(all, g.name(), new Near(Solids.distance(bore, g, kiln), "groove", null, false));
            }
        }
        for (CoilRun c : kiln.coils()) {
            for (int i = 0; i < c.pieces().size(); i++) {
                if (c.on() == h.face().on()
                        && (c.on() != On.WALL || c.panels().get(i) == h.face().panel())) {
                    Segment s = inPart(kiln, c, i);
                    keep(
                            all,
                            c.name(),
                            new Near(s.distance(h.centre()) - c.radius() - r, "coil", s.nearest(h.centre()), false));
                }
            }
        }
        for (TailHole t : kiln.tails()) {
            if (t.face().samePart(h.face())) {
                keep(
                        all,
                        t.element(),
                        new Near(
                                t.circle().centre().distance(h.centre())
                                        - t.circle().radius()
                                        - r,
                                "tails of",
                                t.circle().centre(),
                                false));
            }
        }
        return all;
    }

    private static Segment inPart(KilnGeometry kiln, CoilRun c, int i) {
        Segment3 s = c.pieces().get(i);
        if (c.on() != On.WALL) {
            return new Segment(s.a().plan(), s.b().plan());
        }
        var panel = kiln.panel(c.panels().get(i));
        return new Segment(
                new Pt(panel.local(s.a().plan()).x(), s.a().z()),
                new Pt(panel.local(s.b().plan()).x(), s.b().z()));
    }

    /** Whether a groove of another part is surely farther off than the reach, by plan distance alone or height alone. */
    private static boolean farFrom(KilnGeometry kiln, Bore b, GrooveSolid g, double reach) {
        double zLow = Math.min(b.hot().z(), b.hot().z() + b.axis().z() * b.length())
                - (b.axis().z() == 0 ? b.radius() : 0);
        double zHigh = Math.max(b.hot().z(), b.hot().z() + b.axis().z() * b.length())
                + (b.axis().z() == 0 ? b.radius() : 0);
        double gLow;
        double gHigh;
        double plan;
        Pt hot = b.hot().plan();
        Segment axis =
                new Segment(hot, hot.plus(b.axis().x() * b.length(), b.axis().y() * b.length()));
        if (g instanceof GrooveSolid.OnWall w) {
            gLow = Math.min(w.bottom(), w.bottom() - w.drop());
            gHigh = w.top();
            Segment face = new Segment(w.panel().a(), w.panel().b());
            plan = Math.min(
                            Math.min(face.distance(axis.a()), face.distance(axis.b())),
                            Math.min(axis.distance(face.a()), axis.distance(face.b())))
                    - w.depth() * 2;
        } else {
            GrooveSolid.OnSlab s = (GrooveSolid.OnSlab) g;
            gLow = s.on() == On.FLOOR ? -s.depth() : kiln.height();
            gHigh = gLow + s.depth();
            plan = Math.min(s.strip().distance(axis.a()), s.strip().distance(axis.b())) - b.length();
        }
        double apart = Math.max(0, Math.max(gLow - zHigh, zLow - gHigh));
        return Math.max(apart, plan - b.radius()) > reach + 1;
    }

    private static void keep(Map<String, Near> all, String element, Near near) {
        all.merge(element, near, (x, y) -> x.left() <= y.left() ? x : y);
    }
}
