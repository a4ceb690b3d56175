package portwright.check.rules.room;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.data.SafetyNumber;
import portwright.model.Room;
import portwright.review.Review;

/** Nothing under the burners can burn. */
public final class FloorFire implements Rule {

    private static final List<String> BURNS = List.of(
            "wood",
            "timber",
            "plywood",
            "board",
            "laminate",
            "vinyl",
            "lino",
            "carpet",
            "cork",
            "asphalt",
            "rubber",
            "plastic",
            "grass",
            "straw",
            "deck");
    private static final List<String> NEVER = List.of(
            "concrete",
            "brick",
            "stone",
            "tile",
            "ceramic",
            "steel",
            "earth",
            "gravel",
            "sand",
            "slab",
            "cement",
            "soil",
            "paving");

    @Override
    public String id() {
        return "floor-fire";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Room room = review.design().room();
        String floor = room == null || room.floor() == null ? "" : room.floor().toLowerCase(Locale.ROOT);
        if (BURNS.stream().anyMatch(floor::contains)) {
            out.add(Say.stop(
                    this,
                    null,
                    null,
                    "The floor under the burners is " + room.floor() + ": it chars and lights.",
                    "Stand the kiln on concrete, or on steel over masonry; nothing that burns may pass "
                            + Say.n(SafetyNumber.value("combustible-surface")) + " °C.",
                    SafetyNumber.named("combustible-surface").source()));
        } else if (NEVER.stream().noneMatch(floor::contains)) {
            out.lacks(this, "room.floor");
        }
    }
}
