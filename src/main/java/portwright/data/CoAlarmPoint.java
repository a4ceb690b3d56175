package portwright.data;

import java.util.List;
import java.util.OptionalInt;
import portwright.source.Source;
import portwright.units.Format;

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
    private static final String SLOWEST = "UL 2034";

    /** How little a quiet house alarm proves, in words: at its lowest level it need never sound, at the next it takes hours. */
    public static String quiet() {
        List<CoAlarmPoint> points =
                all().stream().filter(p -> p.standard.equals(SLOWEST)).toList();
        CoAlarmPoint never = points.stream()
                .filter(p -> p.mustByMinutes.isEmpty())
                .findFirst()
                .orElseThrow();
        CoAlarmPoint late = points.stream()
                .filter(p -> p.mustByMinutes.isPresent())
                .findFirst()
                .orElseThrow();
        return "a house alarm stays silent at " + Format.plain(never.ppm, 0) + " ppm and may take "
                + Format.plain(late.mustByMinutes.getAsInt() / 60.0, 1) + " h at " + Format.plain(late.ppm, 0) + " ppm";
    }

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
