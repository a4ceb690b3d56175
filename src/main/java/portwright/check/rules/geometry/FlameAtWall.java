package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfPlate;
import portwright.model.On;
import portwright.review.Review;
import portwright.source.Source;

/** Under a shelf the flame turns out and climbs the gap past every coil. */
public final class FlameAtWall implements Rule {
    @Override
    public String id() {
        return "flame-at-wall";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source SOURCE =
            Source.judgement("a flame under a shelf has no other way up than the gap at the wall");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        for (Hole h : kiln.holes(On.FLOOR)) {
            ShelfPlate shelf = h.inlet() ? Flame.of(kiln, h, Flame.HALF_ANGLE).shelf() : null;
            if (shelf != null) {
                out.add(
                        Geo.finding(this, Severity.NOTE, limits, null)
                                .source(SOURCE)
                                .parts(h.name(), shelf.name())
                                .say(
                                        "Under " + shelf.name() + " the flame of " + h.name()
                                                + " turns out and climbs the gap at the wall, past every coil.",
                                        "Keep the shelf's gap even all round, and look at the lowest coils after each firing."));
            }
        }
    }
}
