package portwright.check.rules.room;

import java.util.Optional;
import java.util.Set;
import portwright.calc.supply.SupplyRun;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;

/** There is more gas than the firing burns. */
public final class CylinderLasts implements Rule {

    @Override
    public String id() {
        return "cylinder-lasts";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.supply().run().known()) {
            out.lacks(this, review.supply().run().lacking());
            return;
        }
        Optional<SupplyRun> run = review.supply().run().value();
        double least = limits.value(id(), "caution");
        if (run.isPresent()
                && Say.under(run.get().availableKg(), least * run.get().neededKg())) {
            double has = run.get().availableKg();
            double needs = run.get().neededKg();
            double stop = limits.value(id(), "stop");
            boolean empty = Say.under(has, stop * needs);
            String name = empty ? "stop" : "caution";
            out.add(Say.finding(
                    this,
                    empty ? Severity.STOP : Severity.CAUTION,
                    new Measure(has / needs, "1"),
                    new Measure(empty ? stop : least, "1"),
                    "The cylinders hold " + Say.n(has) + " kg; the steps burn " + Say.n(needs) + " kg."
                            + (empty ? " The flame dies in the middle of the firing, with the valves open." : ""),
                    "Start with at least " + Say.n(least * needs) + " kg (" + Say.n(least * needs - has) + " kg more).",
                    limits.source(id(), name),
                    limits.setByUser(id(), name)));
        }
    }
}
