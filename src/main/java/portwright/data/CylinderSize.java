package portwright.data;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import portwright.source.Source;

/**
 * One common upright cylinder.
 *
 * @param capacityLb nominal propane in pounds
 * @param diameterIn outside diameter in inches
 * @param heightIn height in inches
 * @param tareLb empty weight in pounds
 * @param source origin of the row
 */
public record CylinderSize(double capacityLb, double diameterIn, double heightIn, double tareLb, Source source) {

    private static final List<CylinderSize> ALL = load();

    /** All rows, smallest first. */
    public static List<CylinderSize> all() {
        return ALL;
    }

    private static List<CylinderSize> load() {
        return Table.load("cylinders.csv").rows().stream()
                .map(r -> new CylinderSize(
                        r.positive("capacity_lb"),
                        r.positive("diameter_in"),
                        r.positive("height_in"),
                        r.positive("tare_lb"),
                        r.source()))
                .sorted(Comparator.comparingDouble(CylinderSize::capacityLb))
                .toList();
    }

    /** The row whose nominal contents are within 6 % of the given pounds, nearest first. */
    public static Optional<CylinderSize> near(double capacityLb) {
        return all().stream()
                .filter(c -> Math.abs(c.capacityLb / capacityLb - 1) <= 0.06)
                .min(Comparator.comparingDouble(c -> Math.abs(c.capacityLb - capacityLb)));
    }
}
