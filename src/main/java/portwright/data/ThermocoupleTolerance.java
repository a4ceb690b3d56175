package portwright.data;

import java.util.List;
import java.util.Optional;
import portwright.source.Source;

/**
 * Tolerance of new thermocouple wire in one temperature range.
 *
 * @param type letter of the type
 * @param className class as the standard names it
 * @param word word of the design file: {@code standard}, {@code special}, {@code 1}, {@code 2}
 * @param fromC start of the range
 * @param toC end of the range
 * @param absoluteC fixed part in kelvin
 * @param sharePct share of the reading in percent; the greater of both counts
 * @param slopePerC where above zero the tolerance is {@code absoluteC + slope (T - fromC)}
 * @param source origin
 */
public record ThermocoupleTolerance(
        String type,
        String className,
        String word,
        double fromC,
        double toC,
        double absoluteC,
        double sharePct,
        double slopePerC,
        Source source) {

    private static final List<ThermocoupleTolerance> ALL = load();

    /** All rows. */
    public static List<ThermocoupleTolerance> all() {
        return ALL;
    }

    private static List<ThermocoupleTolerance> load() {
        return Table.load("thermocouple_tolerances.csv").rows().stream()
                .map(r -> new ThermocoupleTolerance(
                        r.text("type"),
                        r.text("class"),
                        r.text("name"),
                        r.number("from_C"),
                        r.number("to_C"),
                        r.positive("abs_C"),
                        r.number("share_pct"),
                        r.number("slope_per_C", 0),
                        r.source()))
                .toList();
    }

    /**
     * The row for a type, class word and temperature. Above the last range of the class the last row is returned: the
     * caller sees from {@link #toC()} that it is extrapolated.
     */
    public static Optional<ThermocoupleTolerance> find(String type, String word, double tempC) {
        List<ThermocoupleTolerance> rows = all().stream()
                .filter(t -> t.type.equals(type) && t.word.equals(word))
                .toList();
        return rows.stream()
                .filter(t -> tempC >= t.fromC && tempC <= t.toC)
                .findFirst()
                .or(() -> rows.stream().reduce((a, b) -> b.toC > a.toC ? b : a).filter(t -> tempC > t.toC));
    }

    /** Tolerance in kelvin at a temperature in degrees Celsius. */
    public double atC(double tempC) {
        return slopePerC > 0
                ? absoluteC + slopePerC * (tempC - fromC)
                : Math.max(absoluteC, sharePct / 100 * Math.abs(tempC));
    }
}
