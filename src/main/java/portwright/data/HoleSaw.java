package portwright.data;

import java.util.Comparator;
import java.util.List;
import portwright.source.Source;
import portwright.units.Kind;
import portwright.units.Quantity;

/**
 * A hole saw that is sold.
 *
 * @param inch inch series, else metric
 * @param size as the trade writes it, for example {@code 1 3/8 in}
 * @param nominalMm whole millimetres stamped on the saw
 */
public record HoleSaw(boolean inch, Quantity size, double nominalMm, Source source) {
    /** Cutting diameter, mm. */
    public double diameterMm() {
        return size.mm();
    }

    /** The table, read when it is first asked for. */
    private static final class Held {
        static final List<HoleSaw> ALL = read();
    }

    /** Both series, smallest first in each. */
    public static List<HoleSaw> all() {
        return Held.ALL;
    }

    private static List<HoleSaw> read() {
        return Table.load("hole-saws.csv")
                .expect("series", "size", "nominal_mm", "title", "edition", "place", "standing")
                .rows()
                .stream()
                .map(r -> new HoleSaw(
                        r.text("series").equals("inch"),
                        Quantity.parse(r.text("size"), Kind.LENGTH),
                        r.positive("nominal_mm"),
                        r.source()))
                .toList();
    }

    /** The saw nearest to a diameter; of two as near the one of the series asked for. */
    public static HoleSaw nearest(double diameterMm, boolean preferInch) {
        return all().stream()
                .min(Comparator.comparingDouble((HoleSaw s) -> Math.rint(Math.abs(s.diameterMm() - diameterMm) * 1e6))
                        .thenComparing(s -> s.inch() != preferInch))
                .orElseThrow();
    }
}
