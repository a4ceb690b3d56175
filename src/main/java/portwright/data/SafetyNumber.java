package portwright.data;

import java.util.Map;
import java.util.stream.Collectors;
import portwright.source.Source;

/**
 * A single number of gas, room and people with its unit, meaning and source.
 *
 * @param id short name
 * @param value the number in the unit
 * @param unit its unit as printed
 * @param what what it is
 * @param source origin
 */
public record SafetyNumber(String id, double value, String unit, String what, Source source) {

    private static final Map<String, SafetyNumber> ALL = load();

    /** All numbers by their id. */
    public static Map<String, SafetyNumber> all() {
        return ALL;
    }

    private static Map<String, SafetyNumber> load() {
        return Table.load("safety_numbers.csv").rows().stream()
                .map(r ->
                        new SafetyNumber(r.text("id"), r.positive("value"), r.text("unit"), r.text("what"), r.source()))
                .collect(Collectors.toUnmodifiableMap(SafetyNumber::id, n -> n));
    }

    /** One number. */
    public static SafetyNumber named(String id) {
        SafetyNumber n = ALL.get(id);
        if (n == null) {
            throw new IllegalArgumentException("safety_numbers.csv: no number '" + id + "'");
        }
        return n;
    }

    /** The plain value of one number. */
    public static double value(String id) {
        return named(id).value();
    }
}
