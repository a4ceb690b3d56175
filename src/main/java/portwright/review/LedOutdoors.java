package portwright.review;

import portwright.data.SafetyNumber;
import portwright.model.Room;

/** Share of the flue gas that counts as led outdoors. */
public final class LedOutdoors {
    private LedOutdoors() {}

    /**
     * The stated share or what the hood catches, whichever is more. Without a hood a stated share counts up to what the cracks of the lid leave, then
     * listed as assumed: past a pipe they carry the rest into the room; a hood has them under it.
     *
     * @return 0 to 1
     */
    static double counted(Room room, Known<RoomReview.HoodFigures> hood, Assumptions assume) {
        if (room.ledOutdoors() == null) {
            assume.add("room.ledOutdoors", "0 %", "flue gas stays in the room unless something leads it out");
        }
        double stated = room.ledOutdoors() == null ? 0 : room.ledOutdoors().share();
        if (hangs(hood)) {
            return Math.max(stated, hood.value().capturedShare());
        }
        double most = mostWithoutHood();
        if (stated > most) {
            assume.add(
                    "room.ledOutdoors",
                    Math.round(most * 100) + " %",
                    "without a hood the cracks of the lid carry the rest past any pipe");
        }
        return Math.min(stated, most);
    }

    /** The most that counts without a hood, 0 to 1. */
    public static double mostWithoutHood() {
        return 1 - SafetyNumber.value("lid-leak-share");
    }

    /** Whether a hood with a flow is declared. */
    public static boolean hangs(Known<RoomReview.HoodFigures> hood) {
        return hood.known() && hood.value().flowM3PerS() > 0;
    }
}
