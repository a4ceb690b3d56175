package portwright.data;

import java.util.List;
import java.util.OptionalInt;
import portwright.source.Source;

/**
 * One point a household CO alarm is tested at.
 *
 * @param standard the standard
 * @param ppm level it is held at
 * @param notBeforeMinutes it stays silent until then
 * @param mustByMinutes it sounds by then; empty if it never has to
 * @param source origin
 */
public record CoAlarmPoint(
        String standard, double ppm, int notBeforeMinutes, OptionalInt mustByMinutes, Source source) {

    /** All points in table order. */
    public static List<CoAlarmPoint> all() {
        return Table.load("co_alarm_points.csv").rows().stream()
                .map(r -> new CoAlarmPoint(
                        r.text("standard"),
                        r.positive("ppm"),
                        r.integer("not_before_min"),
                        r.isEmpty("must_by_min") ? OptionalInt.empty() : OptionalInt.of(r.integer("must_by_min")),
                        r.source()))
                .toList();
    }
}
