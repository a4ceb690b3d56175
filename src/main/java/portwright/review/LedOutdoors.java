package portwright.review;

import portwright.data.SafetyNumber;
import portwright.model.LeadsTo;
import portwright.model.LedBy;
import portwright.model.Room;

/** Share of the flue gas that counts as led outdoors. */
public final class LedOutdoors {
    private LedOutdoors() {}

    /**
     * The stated share or what the hood catches, whichever is more. By a pipe a stated share counts up to what the cracks of the lid leave, then listed
     * as assumed: past a pipe they carry the rest into the room; a hood takes them as far as its flow and width reach. By a hood it counts only where the
     * hood is as strong and wide as it must be. Where neither is stated a hood that hangs there is meant, else a pipe, and {@link #unsaid}.
     *
     * @return 0 to 1
     */
    static double counted(Room room, Known<RoomReview.HoodFigures> hood, Assumptions assume) {
        if (room.ledOutdoors() == null) {
            assume.add("room.ledOutdoors", "0 %", "flue gas stays in the room unless something leads it out");
        }
        double stated = room.ledOutdoors() == null ? 0 : room.ledOutdoors().share();
        boolean sealed = sealed(room);
        double most = sealed ? 0 : most(room, hood);
        if (sealed && stated > 0) {
            assume.add(
                    "room.ledOutdoors", "0 %", "no opening to outdoors lets in the air that a pipe or hood would draw");
        } else if (stated > most) {
            assume.add(
                    "room.ledOutdoors",
                    Math.round(most * 100) + " %",
                    byPipe(room, hood)
                            ? "the cracks of the lid carry the rest past any pipe, and no hood reaches it"
                            : "a hood counts for what its flow and width catch");
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

    /** The most of a stated share that counts, 0 to 1: by a pipe all but what the cracks lose and no hood reaches; by a hood all or what it catches. */
    private static double most(Room room, Known<RoomReview.HoodFigures> hood) {
        double reach = hood.known() ? hood.value().reach() : 0;
        if (byPipe(room, hood)) {
            return 1 - SafetyNumber.value("lid-leak-share") * (1 - reach);
        }
        return hood.known() && reach < 1 ? hood.value().capturedShare() : reach;
    }

    private static boolean byPipe(Room room, Known<RoomReview.HoodFigures> hood) {
        return room.ledBy() == LedBy.PIPE || room.ledBy() == null && !hood.known();
    }

    /** The field without which nothing shows what leads the stated share outdoors; null where it is shown or no share is stated. */
    public static String unsaid(Room room, Known<RoomReview.HoodFigures> hood) {
        boolean stated = room.ledOutdoors() != null && room.ledOutdoors().share() > 0;
        if (!stated || hood.known() || room.ledBy() == LedBy.PIPE) {
            return null;
        }
        return room.ledBy() == null ? "room.ledBy" : "room.hood";
    }
}
