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
import portwright.source.Source;

/** The metal round a hole is cut first and wider. */
public final class Jacket implements Rule {
    @Override
    public String id() {
        return "jacket";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source SOURCE =
            Source.practice("hole in pan or jacket half an inch to an inch wider than the brick's, cut first");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        for (On on : List.of(On.FLOOR, On.WALL)) {
            List<Hole> holes = kiln.holes(on);
            boolean none = on == On.FLOOR
                    && Boolean.FALSE.equals(kiln.design().kiln().floor().pan());
            if (!holes.isEmpty() && !none) {
                out.add(Geo.finding(this, Severity.NOTE, limits, null)
                        .source(SOURCE)
                        .parts(holes.stream().map(Hole::name).toArray(String[]::new))
                        .say(
                                on == On.FLOOR
                                        ? (kiln.design().kiln().floor().pan() == null
                                                        ? "If a metal pan lies under the floor: "
                                                        : "A metal pan lies under the floor: ")
                                                + "its holes are 12 to 25 mm wider than those in the brick."
                                        : "The wall's metal jacket: its holes are 12 to 25 mm wider than those in the brick.",
                                "Cut the metal first with its own saw, deburr it, then drill the brick."));
            }
        }
    }
}
