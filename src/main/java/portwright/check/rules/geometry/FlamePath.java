package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.review.Review;
import portwright.units.BothSystems;

/** Free area between a shelf and the wall against the inlets, and the least gap. */
public final class FlamePath implements Rule {
    @Override
    public String id() {
        return "flame-path";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        double inlets = kiln.holes().stream()
                .filter(Hole::inlet)
                .mapToDouble(Hole::area)
                .sum();
        if (!kiln.shelfLacks().isEmpty()) {
            out.lacks(this, kiln.shelfLacks().toArray(String[]::new));
        }
        if (inlets == 0) {
            return;
        }
        double stop = limits.value(id(), "stop");
        double caution = limits.value(id(), "caution");
        double least = limits.value(id(), "gap");
        for (ShelfLevel level : ShelfLevel.of(kiln)) {
            double ratio = level.freeArea() / inlets;
            boolean stopped = Geo.under(ratio, stop);
            if (stopped || Geo.under(ratio, caution)) {
                double limit = stopped ? stop : caution;
                out.add(Geo.finding(
                                this, stopped ? Severity.STOP : Severity.CAUTION, limits, stopped ? "stop" : "caution")
                        .parts(level.names())
                        .share(ratio, limit)
                        .say(
                                "The way past " + level.words() + " has " + Geo.factor(ratio, limit)
                                        + " times the inlets' area; " + Geo.factor(limit) + " times wanted.",
                                "Use a smaller shelf: "
                                        + BothSystems.told((caution * inlets - level.freeArea()) / 100, 0, "cm²")
                                        + " less."));
            }
            if (Geo.under(level.gap(), least)) {
                out.add(Geo.finding(this, Severity.CAUTION, limits, "gap")
                        .parts(level.names())
                        .mm(level.gap(), least)
                        .say(
                                "Only " + Geo.mm(level.gap(), least) + " between " + level.words() + " and the wall; "
                                        + Geo.mm(least) + " wanted.",
                                "Move or shorten the shelf by " + Geo.both(least - level.gap()) + "."));
            }
        }
    }
}
