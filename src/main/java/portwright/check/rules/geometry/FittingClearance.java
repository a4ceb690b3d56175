package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.review.Review;

/** Room between a hole and each fitting; what stands outside the wall counts for floor and lid holes too. */
public final class FittingClearance implements Rule {
    @Override
    public String id() {
        return "fitting-clearance";
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
        for (Hole h : kiln.holes()) {
            for (FittingShape f : kiln.fittings()) {
                if (f.face().samePart(h.face())) {
                    double left = f.shape().distance(h.centre()) - h.drilledRadius();
                    judge(kiln, limits, out, h, f, left, f.shape().nearest(h.centre()));
                } else if (f.face().on() == On.WALL && h.face().on() != On.WALL && f.outside()) {
                    judge(kiln, limits, out, h, f, Outside.distance(kiln, h, f), null);
                }
            }
        }
    }

    private void judge(KilnGeometry kiln, Limits limits, Findings out, Hole h, FittingShape f, double left, Pt at) {
        String kind = f.fitting().kind().id();
        boolean own = f.fitting().clear() != null;
        double limit = own ? f.fitting().clear().mm() : limits.value(id(), kind);
        boolean stopped = Geo.under(left, limit / 2);
        if (stopped || Geo.under(left, limit)) {
            double wanted = stopped ? limit / 2 : limit;
            Mark[] marks = at == null ? new Mark[0] : new Mark[] {new Mark(h.face(), h.centre(), at)};
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, kind)
                    .ownClear(own)
                    .parts(h.name(), f.name())
                    .mm(left, wanted)
                    .mark(marks)
                    .say(
                            left < 0
                                    ? h.name() + " cuts into " + f.name() + "."
                                    : Geo.mm(left) + " between " + h.name() + " and " + f.name() + "; " + Geo.mm(wanted)
                                            + " wanted.",
                            at == null
                                    ? "Move " + h.name() + " " + Geo.both(limit - left) + " toward the centre."
                                    : Move.away(kiln, h, at, f.shape().distance(h.centre()) < 0, limit - left)));
        }
    }
}
