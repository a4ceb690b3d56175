package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Bore;
import portwright.geometry.Circle;
import portwright.geometry.Convex;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.Shape;
import portwright.geometry.Solids;
import portwright.model.FittingKind;
import portwright.model.Kiln;
import portwright.model.Size2;
import portwright.review.Review;
import portwright.source.Source;

/** Room between a hole and each fitting; through the brick, or through the air outside, where the fitting is on another part. */
public final class FittingClearance implements Rule {
    private static final String ID = "fitting-clearance";
    private static final Source WALK = Source.judgement("only who stands before the kiln knows what it carries");
    /** What most kilns have where a hole may come. */
    private static final List<FittingKind> USUAL = List.of(
            FittingKind.LEG,
            FittingKind.HINGE,
            FittingKind.LATCH,
            FittingKind.HANDLE,
            FittingKind.VENT,
            FittingKind.THERMOCOUPLE,
            FittingKind.SPYHOLE,
            FittingKind.TERMINALS,
            FittingKind.CONTROL_BOX);

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
        if (!kiln.fittingLacks().isEmpty()) {
            out.lacks(this, kiln.fittingLacks().toArray(String[]::new));
        }
        whole(kiln.design().kiln(), limits, out);
        for (Hole h : kiln.holes()) {
            for (FittingShape f : kiln.fittings()) {
                judge(kiln, limits, out, h, f);
            }
        }
    }

    /** Asks whether the list names all there are, until that is stated. */
    private void whole(Kiln kiln, Limits limits, Findings out) {
        if (kiln.fittings() == null || kiln.fittings().isEmpty() || Boolean.TRUE.equals(kiln.fittingsComplete())) {
            return;
        }
        int n = kiln.fittings().size();
        List<String> missing = USUAL.stream()
                .filter(k -> kiln.fittings().stream().noneMatch(f -> f.kind() == k))
                .map(FittingKind::id)
                .toList();
        out.add(
                Geo.finding(this, Severity.NOTE, limits, null)
                        .source(WALK)
                        .say(
                                (n == 1 ? "1 fitting is" : n + " fittings are") + " listed; is that all?"
                                        + (missing.isEmpty()
                                                ? ""
                                                : " Not among them: " + String.join(", ", missing) + ".")
                                        + " No room is kept to what is not listed.",
                                "Go round the kiln, add what is missing, then state that the list is complete (kiln.fittingsComplete)."));
    }

    /** Clearance without a caution, mm; half of it is a stop. */
    static double wanted(Limits limits, FittingShape f) {
        return f.fitting().clear() != null
                ? f.fitting().clear().mm()
                : limits.value(ID, f.fitting().kind().id());
    }

    /** Clearance of a hole to a fitting, mm; farther than {@code reach} is told roughly. */
    public static double room(KilnGeometry kiln, Hole h, FittingShape f, double reach) {
        return room(kiln, h, f, f.face().samePart(h.face()) ? List.of() : f.solids(kiln), reach);
    }

    private static double room(KilnGeometry kiln, Hole h, FittingShape f, List<Convex> solids, double reach) {
        return f.face().samePart(h.face())
                ? f.shape().distance(h.centre()) - h.drilledRadius()
                : Solids.distance(Bore.of(kiln, h), solids, reach);
    }

    /** Whether it is oblong and its turn is not given. */
    public static boolean unturned(FittingShape f) {
        Size2 size = f.fitting().size();
        return size != null
                && f.fitting().turn() == null
                && size.width().mm() != size.depth().mm();
    }

    /** The disc that holds an oblong fitting whichever way it lies. */
    public static Shape.Disc anyWayRound(FittingShape f) {
        Size2 size = f.fitting().size();
        Pt at = new Pt(f.fitting().at().xMm(), f.fitting().at().yMm());
        return new Shape.Disc(
                new Circle(at, Math.hypot(size.width().mm(), size.depth().mm()) / 2));
    }

    /** Least clearance whichever way an oblong fitting lies whose turn is not given, mm; infinite for others. */
    public static double otherWayRound(Hole h, FittingShape f) {
        return unturned(f) ? anyWayRound(f).distance(h.centre()) - h.drilledRadius() : Double.POSITIVE_INFINITY;
    }

    private void judge(KilnGeometry kiln, Limits limits, Findings out, Hole h, FittingShape f) {
        String kind = f.fitting().kind().id();
        boolean own = f.fitting().clear() != null;
        double limit = wanted(limits, f);
        boolean same = f.face().samePart(h.face());
        List<Convex> solids = same ? List.of() : f.solids(kiln);
        double left = room(kiln, h, f, solids, limit);
        boolean stopped = Geo.under(left, limit / 2);
        if (!stopped && same && otherWayRound(h, f) < limit / 2) {
            out.lacks(this, "kiln.fittings[" + kiln.design().kiln().fittings().indexOf(f.fitting()) + "].turn");
        }
        if (stopped || Geo.under(left, limit)) {
            Mark[] marks =
                    same ? new Mark[] {new Mark(h.face(), h.centre(), f.shape().nearest(h.centre()))} : new Mark[0];
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, kind)
                    .ownClear(own)
                    .parts(h.name(), f.name())
                    .mm(left, stopped ? limit / 2 : limit)
                    .mark(marks)
                    .say(
                            left < 0
                                    ? h.name() + " cuts into " + f.name() + "; " + Geo.mm(limit)
                                            + " between them wanted."
                                    : Geo.mm(left, limit / 2, limit) + " between " + h.name() + " and " + f.name()
                                            + "; " + Geo.asked(stopped, limit / 2, limit) + ".",
                            Move.sentence(kiln, limits, h, limit, x -> room(kiln, x, f, solids, limit))));
        }
    }
}
