package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.review.Review;
import portwright.source.Source;

/** An electric kiln's own vent is shut and its fan off while gas burns. */
public final class VentFan implements Rule {

    private static final Source SOURCE =
            Source.practice("a vent fan upsets the draught and carries CO where its duct leaks");

    @Override
    public String id() {
        return "vent-fan";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        List<Fitting> listed = review.design().kiln().fittings();
        boolean none = listed == null || listed.stream().noneMatch(f -> f.kind() == FittingKind.VENT);
        if (none && review.design().kiln().fittingsOpen()) {
            out.lacks(this, listed == null ? "kiln.fittings" : "kiln.fittingsComplete");
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    "Whether the kiln has a vent is not stated.",
                    "If it has one: fan off and vent hole plugged before gas.",
                    SOURCE));
            return;
        }
        for (Fitting f : listed) {
            if (f.kind() == FittingKind.VENT) {
                out.add(Say.caution(
                        this,
                        null,
                        null,
                        f.name() + ": the vent draws on the chamber and upsets the draught.",
                        "Fan off and vent hole plugged before gas, until gas is off.",
                        SOURCE,
                        f.name()));
            }
        }
    }
}
