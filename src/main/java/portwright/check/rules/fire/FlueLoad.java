package portwright.check.rules.fire;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Role;
import portwright.review.Review;

/** Net heat on each square inch of flue. */
public final class FlueLoad implements Rule {
    /** W of one Btu/h (international table). */
    private static final double BTU_PER_H = 0.29307107;

    private static final double SQUARE_INCH = 645.16;

    @Override
    public String id() {
        return "flue-load";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.supply().burners().known()) {
            out.lacks(this, review.supply().burners().lacking());
            return;
        }
        double flue = Say.area(review, Role.FLUE);
        if (flue == 0) {
            return;
        }
        double load = review.supply().netW() / BTU_PER_H / (flue / SQUARE_INCH);
        double most = limits.value(id(), "caution");
        if (Say.over(load, most)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution",
                    Severity.CAUTION,
                    Forbids.NOTHING,
                    Say.ports(review, Role.FLUE),
                    new Measure(load, "Btu/h per in²"),
                    new Measure(most, "Btu/h per in²"),
                    "The flues carry " + Say.n(load, 0) + " Btu/h net on each square inch.",
                    Say.enlargeFlues(review, load / most) + " or " + Say.lessGas(review, most / load) + ".");
        }
    }
}
