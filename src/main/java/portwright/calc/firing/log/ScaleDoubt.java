package portwright.calc.firing.log;

import java.util.List;
import java.util.Optional;
import portwright.units.Celsius;

/** Whether the header may name the wrong temperature scale. */
final class ScaleDoubt {
    /** Colder is no room that a kiln is loaded in. */
    private static final double COLD_K = 278.15;
    /** No °C log of a kiln has a larger number, no °F log of a firing to cones a smaller one at its top. */
    private static final double TOP_K = (1500 - 32) / 1.8 + Celsius.ZERO_C;

    /** Rooms in °F begin here when read as °C; a log in °C that begins colder and gets so hot is one of a kiln that ran away. */
    private static final double WARM_K = 313.15;

    private static final int ROWS = 3;
    private static final int LONG = 20;

    private ScaleDoubt() {}

    /** A sentence for the reader, where there is a doubt; rows as read, in any order. */
    static Optional<String> of(List<LogRow> rows, Boolean celsius) {
        double[] k = rows.stream()
                .filter(r -> r.kelvin() != null && !r.kelvin().isNaN())
                .mapToDouble(LogRow::kelvin)
                .toArray();
        if (celsius == null || k.length < ROWS) {
            return Optional.empty();
        }
        double[] cold = java.util.Arrays.stream(k).sorted().toArray();
        // In a long log the third coldest: single wild readings count for nothing.
        double least = cold[Math.min(ROWS - 1, cold.length / LONG)];
        double top = java.util.Arrays.stream(k).max().orElseThrow();
        long hot = java.util.Arrays.stream(k).filter(Double::isInfinite).count();
        if (celsius && hot >= ROWS && cold[0] >= WARM_K) {
            return Optional.of(
                    "CHECK THE SCALE: " + hot
                            + " readings are above 1500 °C. If the column holds Fahrenheit, name it temp °F; what follows is wrong then");
        }
        if (!celsius && least < COLD_K && top < TOP_K) {
            return Optional.of(
                    "CHECK THE SCALE: read as Fahrenheit the coldest reading is " + Math.round(least - Celsius.ZERO_C)
                            + " °C and the hottest " + Math.round(top - Celsius.ZERO_C)
                            + " °C. If the column holds Celsius, name it temp °C; what follows is wrong then");
        }
        return Optional.empty();
    }
}
