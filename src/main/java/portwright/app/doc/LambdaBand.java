package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.Range;
import portwright.geometry.Pt;

/**
 * The band of lambda over the damper as a chart shows it, whole where it stands. A case in which an inlet spills has no lambda and counts as the
 * richest: where that is so for over 5 % of the cases the lower edge runs at 0, where for over 95 % there is no band.
 *
 * @param low lower edge: open share of the flues in %, lambda
 * @param high upper edge, at the same shares
 * @param spillsTo largest open share, %, at which an inlet spills in over 5 % of the cases; 0 where it never does
 */
public record LambdaBand(List<Pt> low, List<Pt> high, double spillsTo) {
    private static final double PERCENT = 100;

    public LambdaBand {
        low = List.copyOf(low);
        high = List.copyOf(high);
    }

    /** The band of a curve; without points for a curve that was made without. */
    public static LambdaBand of(DamperCurve curve) {
        List<Pt> low = new ArrayList<>();
        List<Pt> high = new ArrayList<>();
        double spills = 0;
        for (DamperCurve.Point q : curve.points()) {
            if (q.band() == null) {
                continue;
            }
            double x = q.open() * PERCENT;
            Range r = q.band().lambda();
            // without gas lambda has no end at all, and that is no spill
            if (r.low() == null && q.band().spillShare() > 0) {
                spills = Math.max(spills, x);
            }
            if (r.high() != null) {
                low.add(new Pt(x, r.low() == null ? 0 : r.low()));
                high.add(new Pt(x, r.high()));
            }
        }
        return new LambdaBand(low, high, spills);
    }

    /** Why the lower edge drops, for the words under a chart; empty where it does not. */
    public String why() {
        return spillsTo == 0
                ? ""
                : "Up to " + Math.round(spillsTo)
                        + " % open an inlet may spill (over 5 % of the cases): the band ends at" + " the bottom there.";
    }
}
