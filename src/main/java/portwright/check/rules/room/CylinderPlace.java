package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.model.SupplyPlace;
import portwright.review.Review;
import portwright.source.Source;

/** The cylinder stands outdoors. */
public final class CylinderPlace implements Rule {

    private static final Source SOURCE = Source.published(
            "NFPA 58 and the International Fire Code 2015", "", "6.2.1 quoted in a studio-safety text; IFC 6103.2.1");

    @Override
    public String id() {
        return "cylinder-place";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Boolean bottled = review.supply().bottled();
        if (Boolean.FALSE.equals(bottled)) {
            return;
        }
        SupplyPlace place = review.design().supply() == null
                ? null
                : review.design().supply().place();
        if (place == null) {
            out.lacks(this, bottled == null ? new String[] {"supply.place", "burners"} : new String[] {"supply.place"});
        } else if (place != SupplyPlace.OUTDOORS) {
            out.add(Say.stop(
                    this,
                    null,
                    null,
                    "The cylinder stands " + (place == SupplyPlace.INDOORS ? "indoors" : "in a " + place.id())
                            + ": a leak or its relief valve fills the place with gas that sinks and stays.",
                    "Put it outdoors, upright and chained, at least 1 m from doors, windows and drains, and bring the gas in through fixed pipe.",
                    SOURCE));
        }
    }
}
