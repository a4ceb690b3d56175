package portwright.calc.firing.log;

import java.util.List;
import java.util.Optional;

/** Whether the header may name the wrong temperature scale. */
final class ScaleDoubt {
    /** Colder is no room that a kiln is loaded in. */
    private static final double COLD_K = 278.15;
    /** No °C log of a kiln has a larger number, no °F log of a firing to cones a smaller one at its top. */
    private static final double TOP_K = (1500 - 32) / 1.8 + 273.15;

    private static final int ROWS = 3;

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
        double least = java.util.Arrays.stream(k).min().orElseThrow();
        double top = java.util.Arrays.stream(k).max().orElseThrow();
        long hot = java.util.Arrays.stream(k).filter(Double::isInfinite).count();
        if (celsius && hot >= ROWS) {
            return Optional.of(
                    "CHECK THE SCALE: " + hot
                            + " readings are above 1500 °C. If the column holds Fahrenheit, name it temp °F; what follows is wrong then");
        }
        if (!celsius && least < COLD_K && top < TOP_K) {
            return Optional.of(
                    "CHECK THE SCALE: read as Fahrenheit the coldest reading is " + Math.round(least - 273.15)
                            + " °C and the hottest " + Math.round(top - 273.15)
                            + " °C. If the column holds Celsius, name it temp °C; what follows is wrong then");
        }
        return Optional.empty();
    }
}
