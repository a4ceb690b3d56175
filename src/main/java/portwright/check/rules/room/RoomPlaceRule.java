package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.model.RoomPlace;
import portwright.review.Review;
import portwright.source.Source;

/** The kiln does not burn gas in a house, a basement or a room joined to one. */
public final class RoomPlaceRule implements Rule {

    private static final Source BASEMENT =
            Source.published("International Fire Code", "2015", "6103.2.1 (no LP gas in a basement or pit)");
    private static final Source HOUSE =
            Source.judgement("carbon monoxide goes through doors, floors and shafts of a house");

    @Override
    public String id() {
        return "room-place";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        RoomPlace place = review.room().place();
        if (place == null) {
            out.lacks(this, "room.place");
            return;
        }
        switch (place) {
            case BASEMENT ->
                out.add(Say.stop(
                        this,
                        null,
                        null,
                        "The kiln stands in a basement: LP gas is heavier than air and collects there.",
                        "Fire outdoors or in a detached, vented building above ground.",
                        BASEMENT));
            case HOUSE ->
                out.add(Say.stop(
                        this,
                        null,
                        null,
                        "The kiln stands in a house: carbon monoxide reaches every room.",
                        "Fire outdoors or in a detached, vented building.",
                        HOUSE));
            case GARAGE ->
                out.add(Say.caution(
                        this,
                        null,
                        null,
                        "The kiln stands in a garage: if it is joined to a house, carbon monoxide goes through.",
                        "Fire outdoors, or lead the flue gas outdoors and keep a CO meter in each joined room.",
                        HOUSE));
            case OPEN_SHED ->
                out.add(Say.caution(
                        this,
                        null,
                        null,
                        "The kiln stands under a roof with open sides: nothing is computed of the air there; without wind it can stay.",
                        "Keep at least two whole sides open, stand upwind, carry a CO meter, leave at 100 ppm.",
                        Source.judgement("open sides are not a room with known flow")));
            case OUTDOORS ->
                out.add(Say.note(
                        this,
                        "Outdoors the flue gas drifts with the wind.",
                        "Stay upwind; keep people and windows out of the lee.",
                        Source.practice("outdoor firing")));
            default -> {}
        }
    }
}
