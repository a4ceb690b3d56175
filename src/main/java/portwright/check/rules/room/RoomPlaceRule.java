package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.data.SafetyNumber;
import portwright.model.Opening;
import portwright.model.RoomBuilding;
import portwright.model.RoomPlace;
import portwright.review.Review;
import portwright.source.Source;

/** The kiln does not burn gas in a house, a basement or a room joined to one. */
public final class RoomPlaceRule implements Rule {

    private static final Source BASEMENT =
            Source.published("International Fire Code", "2015", "6103.2.1 (no LP gas in a basement or pit)");
    private static final Source OPEN_SIDES = Source.judgement("open sides are not a room with known flow");
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
            case BASEMENT -> {
                boolean rises = !review.design().gasSinks();
                out.add(Say.stop(
                        this,
                        null,
                        null,
                        "The kiln stands in a basement: "
                                + (rises
                                        ? "flue gas and leaking gas stay there and rise into the house."
                                        : "the gas is heavier than air and collects there."),
                        "Fire outdoors or in a detached, vented building above ground.",
                        rises ? HOUSE : BASEMENT));
            }
            case HOUSE ->
                out.add(Say.stop(
                        this,
                        null,
                        null,
                        "The kiln stands in a house: carbon monoxide reaches every room.",
                        "Fire outdoors or in a detached, vented building.",
                        HOUSE));
            case GARAGE, STUDIO -> dwelling(review, place, out);
            case OPEN_SHED -> shed(review, out);
            case OUTDOORS -> {
                if (!review.design().allElectric()) {
                    out.add(Say.note(
                            this,
                            "Outdoors the flue gas drifts with the wind.",
                            "Stay upwind; keep people and windows out of the lee.",
                            Source.practice("outdoor firing")));
                }
            }
        }
    }

    private void shed(Review review, Findings out) {
        List<Opening> openings = review.design().room().openings();
        out.add(Say.caution(
                this,
                null,
                null,
                "The kiln stands under a roof with open sides: nothing is computed of the air there; without wind it can stay."
                        + (openings == null ? "" : " The stated openings count for nothing."),
                "Keep at least two whole sides open, stand upwind, carry a CO meter, leave at 100 ppm."
                        + (openings == null ? "" : " With walls all round write room.place studio instead."),
                OPEN_SIDES));
    }

    /** A room of a building that is joined to a dwelling stops unless the exhaust leads outdoors. */
    private void dwelling(Review review, RoomPlace place, Findings out) {
        RoomBuilding building = review.design().room().building();
        if (building == null) {
            out.lacks(this, "room.building");
            return;
        }
        if (building == RoomBuilding.DETACHED) {
            return;
        }
        boolean led = review.room().co().known()
                && !Say.under(review.room().co().value().ledShare(), SafetyNumber.value("hood-capture"));
        String where = "The kiln stands in a " + place.id() + " joined to a dwelling";
        if (led) {
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    where + ": what the exhaust does not lead outdoors goes through doors, floors and shafts.",
                    "Seal doors and gaps to the dwelling, keep a CO alarm in each joined room, nobody asleep there while gas burns.",
                    HOUSE));
        } else {
            out.add(Say.stop(
                    this,
                    null,
                    null,
                    where + " and less than " + Say.n(SafetyNumber.value("hood-capture") * 100)
                            + " % of the flue gas is led outdoors: carbon monoxide goes through.",
                    "Fire outdoors or in a detached, vented building, or hang a hood that leads the flue gas outdoors.",
                    HOUSE));
        }
    }
}
