package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
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
    private static final String ID = "element-clearance";

    /** The nearest thing of one element. */
    private record Near(double left, String what, Pt at) {}

    @Override
    public String id() {
        return ID;
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
        double stop = stop(limits);
        double caution = stop * limits.value(id(), "caution-factor");
        List<String> unknown = unknown(kiln, caution);
        if (!unknown.isEmpty()) {
            out.lacks(this, unknown.toArray(String[]::new));
        }
        Set<String> names = names(kiln);
        for (Hole h : kiln.holes()) {
            for (String element : names) {
                Near near = nearest(kiln, h, element, caution);
                if (near == null) {
                    continue;
                }
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
                                    Geo.mm(near.left(), stop, caution) + " of brick between " + h.name() + " and "
                                            + near.what() + " " + element + "; " + Geo.asked(stopped, stop, caution)
                                            + ".",
                                    remedy(kiln, limits, h, element, caution)));
                }
            }
        }
    }

    /** Least brick to a groove, coil or tail, mm. */
    static double stop(Limits limits) {
        return limits.value(ID, "limit");
    }

    /** What the clearances of these holes turn on though the design need not give it: tails for holes in or at the wall, the groove's slope for wall holes and floor holes at the wall. */
    private static List<String> unknown(KilnGeometry kiln, double caution) {
        List<ElementRun> elements = kiln.design().kiln().elements();
        boolean inWall = !kiln.holes(On.WALL).isEmpty();
        boolean floorAtWall = inWall || atWall(kiln, On.FLOOR, caution);
        boolean tailsCount = floorAtWall || atWall(kiln, On.LID, caution);
        List<String> out = new ArrayList<>();
        for (int i = 0; elements != null && i < elements.size(); i++) {
            ElementRun e = elements.get(i);
            if (e.on() == On.WALL && tailsCount && e.tails() == null) {
                out.add("kiln.elements[" + i + "].tails");
            }
            if (e.on() == On.WALL
                    && floorAtWall
                    && e.groove() != null
                    && e.groove().slope() == null) {
                out.add("kiln.elements[" + i + "].groove.slope");
            }
        }
        return out;
    }

    private static boolean atWall(KilnGeometry kiln, On on, double reach) {
        return kiln.holes(on).stream()
                .anyMatch(h -> Geo.under(kiln.inner().depth(h.centre()) - h.drilledRadius(), reach));
    }

    private static String remedy(KilnGeometry kiln, Limits limits, Hole h, String element, double wanted) {
        String move = Move.sentence(kiln, limits, h, wanted, x -> room(kiln, x, element, wanted));
        return h.face().on() == On.WALL
                ? move + " Between element rows a port rarely passes" + pitch(kiln, limits, h, element)
                        + ": look for a panel without elements."
                : move;
    }

    /** How far apart two rows of the element would have to lie for the hole to pass between them; empty where it has none in the wall. */
    private static String pitch(KilnGeometry kiln, Limits limits, Hole h, String element) {
        DoubleStream grooves = kiln.grooves().stream()
                .filter(g -> g.name().equals(element))
                .filter(GrooveSolid.OnWall.class::isInstance)
                .map(GrooveSolid.OnWall.class::cast)
                .mapToDouble(g -> g.top() - Math.min(g.bottom(), g.bottom() - g.drop()));
        DoubleStream coils = kiln.coils().stream()
                .filter(c -> c.name().equals(element) && c.on() == On.WALL)
                .mapToDouble(c -> 2 * c.radius());
        OptionalDouble row = DoubleStream.concat(grooves, coils).max();
        return row.isEmpty()
                ? ""
                : " (" + h.name() + " needs rows "
                        + Geo.both(2 * h.drilledRadius() + row.getAsDouble() + 2 * stop(limits)) + " apart)";
    }

    /**
     * Brick between a hole and the nearest groove, coil or tail of an element, mm; farther than {@code reach} is told roughly.
     *
     * @return infinite where nothing of it is known
     */
    public static double room(KilnGeometry kiln, Hole h, String element, double reach) {
        Near near = nearest(kiln, h, element, reach);
        return near == null ? Double.POSITIVE_INFINITY : near.left();
    }

    /** Every element with a groove, coil or tail. */
    public static Set<String> names(KilnGeometry kiln) {
        Set<String> names = new LinkedHashSet<>();
        kiln.grooves().forEach(g -> names.add(g.name()));
        kiln.coils().forEach(c -> names.add(c.name()));
        kiln.tails().forEach(t -> names.add(t.element()));
        return names;
    }

    /** What of an element lies nearest to a hole; null when nothing of it is within reach. */
    private static Near nearest(KilnGeometry kiln, Hole h, String element, double reach) {
        Near best = null;
        Bore bore = Bore.of(kiln, h);
        double r = h.drilledRadius();
        for (GrooveSolid g : kiln.grooves()) {
            if (!g.name().equals(element)) {
                continue;
            }
            if (g.face().samePart(h.face())) {
                best = nearer(
                        best,
                        g.footprint().distance(h.centre()) - r,
                        "groove",
                        g.footprint().nearest(h.centre()));
            } else {
                best = nearer(best, Solids.distance(bore, g.solids(kiln), reach), "groove", null);
            }
        }
        for (CoilRun c : kiln.coils()) {
            for (int i = 0; c.name().equals(element) && i < c.pieces().size(); i++) {
                if (c.on() == h.face().on()
                        && (c.on() != On.WALL || c.panels().get(i) == h.face().panel())) {
                    Segment s = inPart(kiln, c, i);
                    best = nearer(best, s.distance(h.centre()) - c.radius() - r, "coil", s.nearest(h.centre()));
                } else if (c.wide()) {
                    best = nearer(best, Solids.distance(bore, List.of(c.solid(i)), reach), "coil", null);
                }
            }
        }
        for (TailHole t : kiln.tails()) {
            if (!t.element().equals(element)) {
                continue;
            }
            Pt at = t.circle().centre();
            if (t.face().samePart(h.face())) {
                best = nearer(best, at.distance(h.centre()) - t.circle().radius() - r, "tails of", at);
            } else {
                best = nearer(best, Solids.distance(bore, Bore.of(kiln, t), reach), "tails of", null);
            }
        }
        return best;
    }

    private static Near nearer(Near best, double left, String what, Pt at) {
        return best == null || left < best.left() ? new Near(left, what, at) : best;
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
}
