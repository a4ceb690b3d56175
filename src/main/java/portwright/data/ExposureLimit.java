package portwright.data;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import portwright.source.Source;

/**
 * One exposure limit or warning level.
 *
 * @param id short name, unique
 * @param substance {@code CO}, {@code CO2}, {@code NO2}, {@code O2}, {@code silica}, {@code ceramic fibre}, a fuel
 * @param family {@code us}, {@code eu}, {@code uk}, or {@code all} for one that counts everywhere
 * @param body who set it
 * @param kind {@code twa8h}, {@code stel15m}, {@code ceiling}, {@code idlh}, {@code public}, {@code leave}, {@code lel},
 *     {@code uel}, {@code low}, {@code high}
 * @param value the number
 * @param unit its unit
 * @param averagingMinutes time it is averaged over, 0 for at any time
 * @param note remark, may be empty
 * @param source origin
 */
public record ExposureLimit(
        String id,
        String substance,
        String family,
        String body,
        String kind,
        double value,
        String unit,
        int averagingMinutes,
        String note,
        Source source) {

    private static final List<ExposureLimit> ALL = load();

    /** All limits in table order. */
    public static List<ExposureLimit> all() {
        return ALL;
    }

    private static List<ExposureLimit> load() {
        return Table.load("exposure_limits.csv").rows().stream()
                .map(r -> new ExposureLimit(
                        r.text("id"),
                        r.text("substance"),
                        r.text("family"),
                        r.text("body"),
                        r.text("kind"),
                        r.positive("value"),
                        r.text("unit"),
                        r.integer("averaging_min"),
                        r.text("note", ""),
                        r.source()))
                .toList();
    }

    /** The limit with this id. */
    public static ExposureLimit named(String id) {
        return all().stream()
                .filter(l -> l.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("exposure_limits.csv: no limit '" + id + "'"));
    }

    /**
     * The lowest limit of a kind in a rule family.
     *
     * @param substance for example {@code CO}
     * @param kind for example {@code twa8h}
     * @param family the chosen family; {@link LimitFamily#STRICTEST} looks through all
     * @return empty if the family has no such limit
     */
    public static Optional<ExposureLimit> lowest(String substance, String kind, LimitFamily family) {
        return all().stream()
                .filter(l -> l.substance.equals(substance) && l.kind.equals(kind) && family.counts(l.family))
                .min(Comparator.comparingDouble(ExposureLimit::value));
    }
}
