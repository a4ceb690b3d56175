package portwright.review;

import portwright.data.SafetyNumber;
import portwright.model.LeadsTo;
import portwright.model.Room;

/** Share of the flue gas that counts as led outdoors. */
public final class LedOutdoors {
    private LedOutdoors() {}

    /**
     * The stated share or what the hood catches, whichever is more. A stated share counts up to what the cracks of the lid leave, then listed as
     * assumed: past a pipe they carry the rest into the room; a hood takes them as far as its flow and width reach.
     *
     * @return 0 to 1
     */
    static double counted(Room room, Known<RoomReview.HoodFigures> hood, Assumptions assume) {
        if (room.ledOutdoors() == null) {
            assume.add("room.ledOutdoors", "0 %", "flue gas stays in the room unless something leads it out");
        }
        double stated = room.ledOutdoors() == null ? 0 : room.ledOutdoors().share();
        boolean sealed = sealed(room);
        double most = sealed ? 0 : most(hood);
        if (sealed && stated > 0) {
            assume.add(
                    "room.ledOutdoors", "0 %", "no opening to outdoors lets in the air that a pipe or hood would draw");
        } else if (stated > most) {
            assume.add(
                    "room.ledOutdoors",
                    Math.round(most * 100) + " %",
                    "the cracks of the lid carry the rest past any pipe, and no hood reaches it");
        }
        double captured = hood.known() ? hood.value().capturedShare() : 0;
        return Math.max(Math.min(stated, most), captured);
    }

    /** Whether the room is stated to have no opening to outdoors: nothing leaves it that does not come in. */
    public static boolean sealed(Room room) {
        return room.place() != null
                && RoomReview.indoors(room.place())
                && room.openings() != null
                && room.openings().stream().noneMatch(o -> o.to() == LeadsTo.OUTDOORS);
    }

    /** The most that counts without a hood, 0 to 1. */
    public static double mostWithoutHood() {
        return 1 - SafetyNumber.value("lid-leak-share");
    }

    /** The most that counts: of the cracks' part, what the hood does not reach stays in the room. 0 to 1. */
    static double most(Known<RoomReview.HoodFigures> hood) {
        double reach = hood.known() ? hood.value().reach() : 0;
        return 1 - SafetyNumber.value("lid-leak-share") * (1 - reach);
    }
}
