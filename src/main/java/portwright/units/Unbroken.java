package portwright.units;

import java.util.regex.Pattern;

/** Words in which no line ends within a quantity: number, fraction and unit are held together by no-break spaces. */
public final class Unbroken {
    private static final String HELD = "\u00a0";
    private static final Pattern FRACTION = Pattern.compile("(?<=\\d) (?=\\d+/\\d)");
    private static final Pattern UNIT = Pattern.compile(
            "(?<=\\d) (?=(?:mm|cm|m|in|ft|yd|in2|ft2|ft3|cm2|m2|m3|L|kg|g|lb|oz|kW|W|Btu|mbar|Pa|psi|inH2O|kWh|deg|min|h|s|ppm|K|%|°|°C|°F)(?![A-Za-z0-9]))");

    private Unbroken() {}

    /** The same words; null stays null. */
    public static String words(String text) {
        return text == null
                ? null
                : UNIT.matcher(FRACTION.matcher(text).replaceAll(HELD)).replaceAll(HELD);
    }
}
