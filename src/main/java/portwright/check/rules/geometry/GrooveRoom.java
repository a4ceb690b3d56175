package portwright.check.rules.geometry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Convex;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Shape;
import portwright.geometry.Solids;
import portwright.geometry.TailHole;
import portwright.model.FittingKind;
import portwright.review.Review;

/** What else claims the brick round an element's groove: fittings that go through it, the grooves of other elements, its own tails beside it. */
public final class GrooveRoom implements Rule {
    private static final String ID = "groove-room";
    private static final Set<FittingKind> PASSING =
            Set.of(FittingKind.THERMOCOUPLE, FittingKind.SPYHOLE, FittingKind.VENT, FittingKind.OTHER);

    private record Pair(String a, String b) {}

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        if (!kiln.grooveLacks().isEmpty()) {
            out.lacks(this, kiln.grooveLacks().toArray(String[]::new));
        }
        if (!kiln.fittingLacks().isEmpty()) {
            out.lacks(this, kiln.fittingLacks().toArray(String[]::new));
        }
        fittings(kiln, limits, out);
        grooves(kiln, limits, out);
        tails(kiln, limits, out);
    }

    /** The nearest groove of each element to each fitting that goes through the brick. */
    private void fittings(KilnGeometry kiln, Limits limits, Findings out) {
        double limit = limits.value(ID, "fitting");
        for (FittingShape f : kiln.fittings()) {
            if (f.outside() || !PASSING.contains(f.fitting().kind())) {
                continue;
            }
            Map<String, Double> left = new LinkedHashMap<>();
            for (GrooveSolid g : kiln.grooves()) {
                if (g.face().samePart(f.face())) {
                    left.merge(g.name(), room(kiln, f, g, limit), Math::min);
                }
            }
            left.forEach((element, mm) -> {
                if (Geo.under(mm, limit)) {
                    out.add(Geo.finding(this, Severity.CAUTION, limits, "fitting")
                            .parts(f.name(), element)
                            .mm(mm, limit)
                            .say(
                                    mm <= 0
                                            ? f.name() + " lies in the groove of " + element + "."
                                            : Geo.mm(mm, limit) + " of brick between " + f.name()
                                                    + " and the groove of " + element + "; " + Geo.mm(limit)
                                                    + " wanted.",
                                    remedy(f.fitting().kind())));
                }
            });
        }
    }

    private static double room(KilnGeometry kiln, FittingShape f, GrooveSolid g, double reach) {
        if (f.shape() instanceof Shape.Disc d) {
            return g.footprint().distance(d.circle().centre()) - d.circle().radius();
        }
        double best = Double.POSITIVE_INFINITY;
        List<Convex> solids = g.solids(kiln);
        for (Convex c : f.solids(kiln)) {
            best = Math.min(best, Solids.distance(c, solids, reach));
        }
        return best;
    }

    private static String remedy(FittingKind kind) {
        return kind == FittingKind.THERMOCOUPLE
                ? "Measure its place again, or put it between two grooves: a probe that touches a live coil carries the mains, and beside a coil it reads the coil."
                : "Measure its place again, or put it between two grooves: nothing holds the coil where it breaks in.";
    }

    private void grooves(KilnGeometry kiln, Limits limits, Findings out) {
        double limit = limits.value(ID, "groove");
        Map<Pair, Double> left = new LinkedHashMap<>();
        List<GrooveSolid> all = kiln.grooves();
        for (int i = 0; i < all.size(); i++) {
            for (int k = i + 1; k < all.size(); k++) {
                GrooveSolid a = all.get(i);
                GrooveSolid b = all.get(k);
                if (!a.name().equals(b.name()) && a.face().samePart(b.face())) {
                    left.merge(new Pair(a.name(), b.name()), room(kiln, a, b, limit), Math::min);
                }
            }
        }
        left.forEach((pair, mm) -> {
            if (Geo.under(mm, limit)) {
                out.add(
                        Geo.finding(this, Severity.CAUTION, limits, "groove")
                                .parts(pair.a, pair.b)
                                .mm(mm, limit)
                                .say(
                                        mm <= 0
                                                ? "The grooves of " + pair.a + " and " + pair.b
                                                        + " run into each other."
                                                : Geo.mm(mm, limit) + " of brick between the grooves of " + pair.a
                                                        + " and " + pair.b + "; " + Geo.mm(limit) + " wanted.",
                                        "Measure both again: two elements seldom share a groove, and a thin rib of brick between them breaks out."));
            }
        });
    }

    /** Brick between two grooves of one part, mm; negative by how much two rows of a wall overlap, 0 where grooves of a slab meet. */
    private static double room(KilnGeometry kiln, GrooveSolid a, GrooveSolid b, double reach) {
        if (a instanceof GrooveSolid.OnWall x && b instanceof GrooveSolid.OnWall y) {
            return Math.max(x.bottomAt(x.depth()) - y.top(), y.bottomAt(y.depth()) - x.top());
        }
        double best = Double.POSITIVE_INFINITY;
        List<Convex> solids = b.solids(kiln);
        for (Convex c : a.solids(kiln)) {
            best = Math.min(best, Solids.distance(c, solids, reach));
        }
        return best;
    }

    private void tails(KilnGeometry kiln, Limits limits, Findings out) {
        double limit = limits.value(ID, "tails");
        for (TailHole t : kiln.tails()) {
            List<GrooveSolid> own = kiln.grooves().stream()
                    .filter(g -> g.name().equals(t.element()) && g instanceof GrooveSolid.OnWall)
                    .toList();
            double off = own.stream()
                    .filter(g -> g.face().samePart(t.face()))
                    .mapToDouble(g -> g.footprint().distance(t.circle().centre()))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            boolean elsewhere = Double.isInfinite(off);
            if (!own.isEmpty() && Geo.over(off, limit)) {
                var draft = Geo.finding(this, Severity.CAUTION, limits, "tails").parts(t.element());
                out.add(
                        (elsewhere ? draft : draft.mm(off, limit))
                                .say(
                                        elsewhere
                                                ? t.name() + " pass a panel where " + t.element() + " has no groove."
                                                : "The middle of " + t.name() + " is " + Geo.mm(off)
                                                        + " off its groove.",
                                        "Measure the holes of the tails again: clearances to live tails are worked out from this place."));
            }
        }
    }
}
