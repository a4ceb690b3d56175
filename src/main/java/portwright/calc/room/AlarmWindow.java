package portwright.calc.room;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import portwright.data.CoAlarmPoint;
import portwright.data.LimitFamily;

/**
 * When a household alarm that just meets its standard answers a level in the room.
 *
 * @param point of the standard
 * @param earliestS it may sound from here, seconds from the start of the firing
 * @param latestS it must sound by then; empty where it never has to, or the level does not last that long
 * @param untilS when the level falls below the point again
 */
public record AlarmWindow(CoAlarmPoint point, double earliestS, OptionalDouble latestS, double untilS) {
    private static final double MINUTE_S = 60;

    /** The standard that alarms of a rule family are made to: EN 50291-1 in Europe, UL 2034 else. */
    public static String standard(LimitFamily family) {
        return family == LimitFamily.EU || family == LimitFamily.UK ? "EN 50291-1" : "UL 2034";
    }

    /** The windows of every level of a standard that the room stays over long enough. */
    public static List<AlarmWindow> all(RoomCo co, String standard) {
        return CoAlarmPoint.all().stream()
                .filter(p -> p.standard().equals(standard))
                .map(p -> of(co, p))
                .filter(Objects::nonNull)
                .toList();
    }

    /** The first time that the level stays over the point long enough for the alarm; null where it never does. */
    public static AlarmWindow of(RoomCo co, CoAlarmPoint point) {
        List<RoomCo.Sample> s = co.series();
        int i = 0;
        while (i < s.size()) {
            if (s.get(i).ppm() < point.ppm()) {
                i++;
                continue;
            }
            int end = i;
            while (end + 1 < s.size() && s.get(end + 1).ppm() >= point.ppm()) {
                end++;
            }
            double from = s.get(i).timeS();
            double until = s.get(end).timeS();
            if (until - from >= point.notBeforeMinutes() * MINUTE_S) {
                double by = from + point.mustByMinutes().orElse(Integer.MAX_VALUE) * MINUTE_S;
                return new AlarmWindow(
                        point,
                        from + point.notBeforeMinutes() * MINUTE_S,
                        by <= until ? OptionalDouble.of(by) : OptionalDouble.empty(),
                        until);
            }
            i = end + 1;
        }
        return null;
    }
}
