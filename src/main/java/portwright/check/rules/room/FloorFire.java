package portwright.check.rules.room;

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
        if (room == null || room.floor() == null || room.floor().isBlank()) {
            out.lacks(this, "room.floor");
            return;
        }
        switch (FloorWords.of(room.floor())) {
            case BURNS ->
                out.add(Say.stop(
                        this,
                        null,
                        null,
                        "The floor under the burners is " + room.floor() + ": it chars and lights.",
                        "Stand the kiln on concrete, or on steel over masonry; nothing that burns may pass "
                                + Say.told(SafetyNumber.value("combustible-surface"), "°C") + ".",
                        SafetyNumber.named("combustible-surface").source()));
            case UNKNOWN -> {
                out.lacks(this, "room.floor");
                out.add(Say.caution(
                        this,
                        null,
                        null,
                        "Whether the floor under the burners, " + room.floor() + ", burns is not known.",
                        "Say in room.floor what stands under the kiln, in words like concrete, brick, stone, tile, steel, gravel, sand or earth, each layer down to the ground, and nothing else.",
                        SafetyNumber.named("combustible-surface").source()));
            }
            case SOUND -> {}
        }
    }
}
