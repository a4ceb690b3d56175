package portwright.calc.firing.log;

import java.util.Locale;
import java.util.regex.Pattern;
import portwright.units.Celsius;

/**
 * The temperature cell of a row.
 *
 * @param kelvin null: the row has none, being written for something else or not understood; NaN: the thermocouple tells nothing;
 *     infinite: more than any kiln of cones bears
 * @param why what is wrong with the cell; null for nothing
 */
record Reading(Double kelvin, String why) {
    private static final double COLDEST_K = -50 + Celsius.ZERO_C;
    private static final double HOTTEST_K = 1500 + Celsius.ZERO_C;
    private static final Pattern DEGREES = Pattern.compile("[°º .]|deg");

    /** Reads the cell of a row whose other cells are known; {@code celsius} null where each cell must say its scale. */
    static Reading of(String text, Boolean celsius, Cells.Comma comma, LogRow row) {
        if (text.isEmpty()) {
            return row.cone() != null || !row.note().isEmpty()
                    ? new Reading(null, null)
                    : new Reading(Double.NaN, row.tells() ? null : "no temperature");
        }
        if (DeadProbe.says(text)) {
            return new Reading(Double.NaN, "\"" + text + "\" is no reading: thermocouple open or not connected");
        }
        Double kelvin = kelvin(text, celsius, comma);
        if (kelvin == null) {
            return new Reading(null, "\"" + text + "\" is no temperature" + Cells.instead(text, "900 or 900 °C"));
        }
        if (kelvin > HOTTEST_K) {
            return new Reading(
                    Double.POSITIVE_INFINITY,
                    "\"" + text + "\" is above 1500 °C: no thermocouple reading, or a kiln far too hot");
        }
        return kelvin < COLDEST_K
                ? new Reading(Double.NaN, "\"" + text + "\" is below -50 °C")
                : new Reading(kelvin, null);
    }

    /** A temperature as written, K; null when it is none or says no scale. */
    static Double kelvin(String text, Boolean celsius, Cells.Comma comma) {
        double v = Cells.number(text, comma);
        String unit = Cells.unit(text);
        Boolean scale = unit.isEmpty() ? celsius : scale(unit);
        if (Double.isNaN(v) || scale == null) {
            return null;
        }
        return scale ? v + Celsius.ZERO_C : (v - 32) / 1.8 + Celsius.ZERO_C;
    }

    /** True for Celsius, false for Fahrenheit, null for no temperature scale. */
    static Boolean scale(String unit) {
        return switch (DEGREES.matcher(unit.toLowerCase(Locale.ROOT)).replaceAll("")) {
            case "c", "℃" -> Boolean.TRUE;
            case "f", "℉" -> Boolean.FALSE;
            default -> null;
        };
    }
}
