package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.review.Review;

/** Diameters that are usual for such holes. */
public final class PortSize implements Rule {
    @Override
    public String id() {
        return "port-size";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        double least = limits.value(id(), "least");
        double most = limits.value(id(), "most");
        for (Hole h : review.geometry().holes()) {
            boolean small = Geo.under(h.diameter(), least);
            if (small || Geo.over(h.diameter(), most)) {
                double limit = small ? least : most;
                out.add(
                        Geo.finding(this, Severity.CAUTION, limits, small ? "least" : "most")
                                .parts(h.name())
                                .mm(h.diameter(), limit)
                                .say(
                                        h.name() + " is " + Geo.mm(h.diameter(), limit) + " wide; "
                                                + (small ? "under " : "over ") + Geo.mm(limit) + " is unusual.",
                                        small
                                                ? "Check the size; a burner needs air round its tip."
                                                : "Cut it with a jig or keyhole saw between drilled holes, or use two smaller ones."));
            }
        }
    }
}
