package portwright.check.rules.fire;

import java.util.List;
import java.util.Set;
import portwright.calc.combustion.Air;
import portwright.calc.draft.DraftCase;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Room;
import portwright.model.RoomPlace;
import portwright.review.Review;

/** Wind at the stand, ½ ρ v², beside the drive of the weakest inlet. */
final class InletWind {
    private static final Set<RoomPlace> OPEN = Set.of(RoomPlace.OUTDOORS, RoomPlace.OPEN_SHED);

    private InletWind() {}

    static void check(Rule rule, InletDraw.Weakest weakest, Review review, Limits limits, Findings out) {
        Room room = review.design().room();
        double drive = weakest.flow().drive();
        boolean open = room != null && room.place() != null && OPEN.contains(room.place());
        if (room == null || drive <= 0 || room.wind() == null && !open) {
            return;
        }
        DraftCase k = review.fire().kiln().value();
        double density = Air.ROOM.density(k.atmosphericPressure(), k.roomTemperature());
        double most = limits.value(rule.id(), "wind");
        double turns = Math.sqrt(2 * most * drive / density);
        String name = weakest.flow().name();
        String where = " (" + weakest.setting().words() + ")";
        if (room.wind() == null) {
            say(
                    rule,
                    limits,
                    out,
                    name,
                    null,
                    drive,
                    name + " draws with " + Say.n(drive, 2) + " Pa" + where + "; in the open a wind of "
                            + Say.n(turns, 1)
                            + " m/s presses as hard and may turn its flame out. The wind is not stated.");
            return;
        }
        double speed = room.wind().si();
        double wind = density * speed * speed / 2;
        if (Say.over(wind, most * drive)) {
            say(
                    rule,
                    limits,
                    out,
                    name,
                    wind,
                    drive,
                    "A wind of " + Say.n(speed, 1) + " m/s" + (open ? "" : " through open doors and windows")
                            + " presses with " + Say.n(wind, 1) + " Pa; " + name + " draws with " + Say.n(drive, 2)
                            + " Pa" + where + ". From " + Say.n(turns, 1)
                            + " m/s on it may turn the flame out. No figure here counts it.");
        }
    }

    private static void say(
            Rule rule, Limits limits, Findings out, String name, Double wind, double drive, String message) {
        Say.add(
                out,
                rule,
                limits,
                "wind",
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of(name),
                wind == null ? null : new Measure(wind, "Pa"),
                wind == null ? null : new Measure(drive, "Pa"),
                message,
                "Stand screens to windward, an arm's length off, open below so that no gas gathers: they break the wind and leave the air. Wait for a still day; never close the air to keep the wind out.");
    }
}
