package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.data.CoAlarmPoint;
import portwright.model.Room;
import portwright.model.RoomPlace;
import portwright.review.Review;
import portwright.source.Source;

/** A CO alarm where the kiln stands, and low down a gas alarm in a closed room. */
public final class AlarmRule implements Rule {

    private static final Source CO = Source.judgement("carbon monoxide has no smell; an alarm is the only sense of it");
    private static final Source GAS = Source.practice("low-level alarm for gas heavier than air");

    private final boolean carbonMonoxide;

    private AlarmRule(boolean carbonMonoxide) {
        this.carbonMonoxide = carbonMonoxide;
    }

    /** The rule {@code co-alarm}. */
    public static AlarmRule co() {
        return new AlarmRule(true);
    }

    /** The rule {@code gas-alarm}. */
    public static AlarmRule gas() {
        return new AlarmRule(false);
    }

    @Override
    public String id() {
        return carbonMonoxide ? "co-alarm" : "gas-alarm";
    }

    @Override
    public Set<Forbids> canForbid() {
        return carbonMonoxide ? Say.LIGHTING : Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (carbonMonoxide && review.design().allElectric()) {
            return;
        }
        Room room = review.design().room();
        if (carbonMonoxide && review.room().place() == RoomPlace.OUTDOORS) {
            outdoors(room, out);
            return;
        }
        if (!carbonMonoxide && Boolean.FALSE.equals(review.room().indoors())) {
            return;
        }
        if (carbonMonoxide) {
            if (room == null || room.coAlarm() == null) {
                out.lacks(this, "room.coAlarm");
            } else if (!room.coAlarm()) {
                out.add(Say.stop(
                        this,
                        null,
                        null,
                        "No CO alarm where the kiln stands.",
                        "Fit a CO alarm and hold a meter with a number: " + CoAlarmPoint.quiet() + ".",
                        CO));
            }
            return;
        }
        if (!review.design().gasSinks()) {
            return;
        }
        boolean unknown = room == null || room.gasAlarm() == null;
        if (unknown) {
            out.lacks(this, "room.gasAlarm");
        }
        if (unknown || !room.gasAlarm()) {
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    unknown
                            ? "Gas alarm not stated, counted as none: the gas sinks and spreads along the floor."
                            : "No gas alarm: the gas sinks and spreads along the floor.",
                    "Fit a gas alarm 150 mm above the floor between kiln and cylinder line.",
                    GAS));
        }
    }

    /** Under the open sky a meter is carried; not stated counts as none, so that leaving it out says no less. */
    private void outdoors(Room room, Findings out) {
        if (!Boolean.TRUE.equals(room.coAlarm())) {
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    (room.coAlarm() == null ? "CO alarm not stated, counted as none" : "No CO alarm")
                            + ": outdoors too flue gas drifts to whoever stands in the lee, and into open windows.",
                    "Carry a portable CO meter with a number, switched on, through the whole reduction; leave at 100 ppm.",
                    CO));
        }
    }
}
