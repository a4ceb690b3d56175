package portwright.check.rules.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Role;
import portwright.review.Review;
import portwright.units.BothSystems;

/** Flue area against inlet area, typed diameters, damper off. */
public final class FlueInletRatio implements Rule {
    @Override
    public String id() {
        return "flue-inlet-ratio";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of(Forbids.DRILLING);
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (review.design().ports().isEmpty() && review.design().allElectric()) {
            return;
        }
        double inlet = Say.area(review, Role.INLET);
        double flue = Say.area(review, Role.FLUE);
        if (inlet == 0) {
            out.lacks(this, "ports (role inlet)");
            return;
        }
        double ratio = flue / inlet;
        List<String> parts = new ArrayList<>(Say.ports(review, Role.FLUE));
        parts.addAll(Say.ports(review, Role.INLET));
        double stop = limits.value(id(), "stop");
        double least = limits.value(id(), "caution");
        double most = limits.value(id(), "caution-high");
        String words = "Flues have " + Say.n(ratio, 2) + " times the inlets' area (" + BothSystems.told(flue, 0, "mm²")
                + " to " + BothSystems.told(inlet, 0, "mm²") + ")";
        String larger = flue == 0
                ? "Add flues of " + BothSystems.told(inlet * least, 0, "mm²") + " in all."
                : Say.enlargeFlues(review, least / ratio) + " or make the inlets smaller.";
        if (Say.under(ratio, stop)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "stop",
                    Severity.STOP,
                    Forbids.DRILLING,
                    parts,
                    new Measure(ratio, "1"),
                    new Measure(stop, "1"),
                    words + ": fume backs up and comes out below.",
                    larger);
        } else if (Say.under(ratio, least)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution",
                    Severity.CAUTION,
                    Forbids.DRILLING,
                    parts,
                    new Measure(ratio, "1"),
                    new Measure(least, "1"),
                    words + ": less than equal areas.",
                    larger);
        } else if (Say.over(ratio, most)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution-high",
                    Severity.CAUTION,
                    Forbids.DRILLING,
                    parts,
                    new Measure(ratio, "1"),
                    new Measure(most, "1"),
                    words + ": the damper then works almost shut.",
                    "Make the flues smaller or the inlets larger, to a ratio of 1.0 to 1.3.");
        }
    }
}
