package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.Bricks;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.review.Review;
import portwright.source.Source;

/** Parts of ceramic fibre or of unknown brick, for which the drilling limits do not hold. */
public final class BrickKind implements Rule {
    @Override
    public String id() {
        return "brick-kind";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source SOURCE = Source.judgement(
            "the drilling limits were made for insulating firebrick; old board and gaskets may hold asbestos");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        Bricks table = Bricks.load();
        for (On on : On.values()) {
            if (kiln.holes(on).isEmpty()) {
                continue;
            }
            String brick = on == On.WALL
                    ? kiln.design().kiln().wall().brick()
                    : kiln.slabOf(on).brick();
            if (brick == null) {
                out.lacks(this, "kiln." + on.id() + ".brick");
            } else if (brick.startsWith("fibre") || table.find(brick).isEmpty()) {
                out.add(
                        Geo.finding(this, Severity.CAUTION, limits, null)
                                .source(SOURCE)
                                .parts(on.id())
                                .say(
                                        "The " + on.id() + " is of "
                                                + (brick.startsWith("fibre")
                                                        ? "ceramic fibre"
                                                        : "\"" + brick + "\", which the brick table does not hold")
                                                + ": strength and drilling limits here do not hold for it.",
                                        "Ask the maker of the material. Old board or gasket may hold asbestos: have it tested before drilling."));
            }
        }
    }
}
