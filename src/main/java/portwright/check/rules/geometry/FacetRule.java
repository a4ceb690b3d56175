package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.review.Review;

/** Across-flats against one whole brick a facet. */
public final class FacetRule implements Rule {
    @Override
    public String id() {
        return "facet-rule";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (review.design().kiln().plan() instanceof PlanShape.PolygonPlan p && p.sides() >= 6) {
            double byBrick = 9 * 25.4 / Math.tan(Math.PI / p.sides())
                    - 2 * review.geometry().thickness(On.WALL);
            double off = Math.abs(p.acrossFlats().mm() - byBrick);
            double limit = limits.value(id(), "limit");
            if (Geo.over(off, limit)) {
                out.add(Geo.finding(this, Severity.NOTE, limits, "limit")
                        .parts("kiln")
                        .mm(off, limit)
                        .say(
                                "One 9 in brick a side would make " + Geo.mm(byBrick) + " across the flats; "
                                        + Geo.mm(p.acrossFlats().mm()) + " is typed.",
                                "It may be right. Measure again from hot face to hot face."));
            }
        }
    }
}
