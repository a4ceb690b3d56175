package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.review.Review;

/** Parts deeper than an ordinary hole saw cuts. */
public final class SawDepth implements Rule {
    @Override
    public String id() {
        return "saw-depth";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        double limit = limits.value(id(), "limit");
        for (On on : On.values()) {
            List<Hole> holes = kiln.holes(on);
            double t = kiln.thickness(on);
            if (!holes.isEmpty() && Geo.over(t, limit)) {
                out.add(
                        Geo.finding(this, Severity.NOTE, limits, "limit")
                                .parts(holes.stream().map(Hole::name).toArray(String[]::new))
                                .mm(t, limit)
                                .say(
                                        "The " + on.id() + " is " + Geo.mm(t, limit)
                                                + " thick, an ordinary hole saw cuts about " + Geo.mm(limit) + ".",
                                        t <= 2 * limit
                                                ? "Drill a pilot hole right through, then saw from the hot face half way and from the cold face the rest."
                                                : "Drill a pilot hole right through. Sawn from both faces "
                                                        + Geo.mm(t - 2 * limit)
                                                        + " stay uncut in the middle: break the core out with a chisel and saw on, or take a core bit that long."));
            }
        }
    }
}
