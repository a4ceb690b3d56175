package portwright.data;

import java.util.ArrayList;
import java.util.List;
import portwright.source.Source;

/**
 * A number-drill size.
 *
 * @param number 1 to 80
 * @param diameterMm mm
 * @param interpolated true when the source lists only its neighbours
 * @param source where the size comes from
 */
public record NumberDrill(int number, double diameterMm, boolean interpolated, Source source) {

    /** The table, read when it is first asked for. */
    private static final class Held {
        static final List<NumberDrill> ALL = read(Table.load("number_drills.csv"));
    }

    /** Sizes 1 to 80, largest first. Checked: complete, falling, inch and millimetre columns agree. */
    public static List<NumberDrill> load() {
        return Held.ALL;
    }

    /** Reads and checks a table of the same columns. */
    public static List<NumberDrill> read(Table t) {
        List<NumberDrill> out = new ArrayList<>();
        for (Table.Row r : t.rows()) {
            NumberDrill d =
                    new NumberDrill(r.integer("number"), r.positive("diameterMm"), r.yes("interpolated"), r.source());
            if (d.number != out.size() + 1) {
                throw r.error("number", "sizes must run from 1 without a gap");
            }
            if (Math.abs(d.diameterMm - r.number("diameterIn") * 25.4) > 6e-5) {
                throw r.error("diameterMm", "differs from the inch column");
            }
            if (!out.isEmpty() && d.diameterMm >= out.get(out.size() - 1).diameterMm) {
                throw r.error("diameterMm", "must be below the size before");
            }
            out.add(d);
        }
        return List.copyOf(out);
    }

    /**
     * The size of one number.
     *
     * @throws IllegalArgumentException outside 1 to 80
     */
    public static NumberDrill of(int number) {
        if (number < 1 || number > 80) {
            throw new IllegalArgumentException(
                    "number drill #" + number + " is not in the table: write #1 to #80, or a diameter");
        }
        return load().get(number - 1);
    }

    /** The size nearest to a diameter in mm. */
    public static NumberDrill nearest(double diameterMm) {
        NumberDrill best = null;
        for (NumberDrill d : load()) {
            if (best == null || Math.abs(d.diameterMm - diameterMm) < Math.abs(best.diameterMm - diameterMm)) {
                best = d;
            }
        }
        return best;
    }
}
