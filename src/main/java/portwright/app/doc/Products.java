package portwright.app.doc;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Quantities as people know them, worked out: a room's three measures are its volume, volts and amperes a power. */
final class Products {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final String TIMES = "\\s*(?:x|×|\\*|by)\\s*";
    private static final Pattern ROOM = Pattern.compile(
            "(?i)" + NUMBER + "\\s*(m|ft|')?" + TIMES + NUMBER + "\\s*(m|ft|')?" + TIMES + NUMBER + "\\s*(m|ft|')");
    private static final Pattern VOLTS_KW =
            Pattern.compile("(?i)" + NUMBER + "\\s*V(?:olts?)?[\\s,;/]*" + NUMBER + "\\s*(k?W)");
    private static final Pattern KW_VOLTS =
            Pattern.compile("(?i)" + NUMBER + "\\s*(k?W)[\\s,;/]*(?:at\\s+)?" + NUMBER + "\\s*V(?:olts?)?");
    private static final Pattern VOLTS_AMPERES =
            Pattern.compile("(?i)" + NUMBER + "\\s*V(?:olts?)?[\\s,;x×*/]*" + NUMBER + "\\s*A(?:mps?)?");

    private Products() {}

    /** What the file takes; as typed where it is no such product. */
    static String of(Kind kind, String typed) {
        String t = typed.strip();
        return kind == Kind.VOLUME ? volume(t, typed) : power(t, typed);
    }

    private static String volume(String t, String typed) {
        Matcher m = ROOM.matcher(t);
        if (!m.matches()) {
            return typed;
        }
        String unit = m.group(6).equals("'") ? "ft" : m.group(6).toLowerCase(Locale.ROOT);
        for (int g : new int[] {2, 4}) {
            if (m.group(g) != null
                    && !unit.equals(m.group(g).equals("'") ? "ft" : m.group(g).toLowerCase(Locale.ROOT))) {
                return typed;
            }
        }
        double v = number(m, 1) * number(m, 3) * number(m, 5);
        return Format.plain(v, v < 100 ? 1 : 0) + " " + unit + "3";
    }

    private static String power(String t, String typed) {
        Matcher m = VOLTS_KW.matcher(t);
        if (m.matches()) {
            return watts(m.group(2), m.group(3));
        }
        m = KW_VOLTS.matcher(t);
        if (m.matches()) {
            return watts(m.group(1), m.group(2));
        }
        m = VOLTS_AMPERES.matcher(t);
        return m.matches() ? Format.plain(number(m, 1) * number(m, 2) / 1000, 2) + " kW" : typed;
    }

    private static String watts(String number, String unit) {
        return number + (unit.equalsIgnoreCase("kW") ? " kW" : " W");
    }

    private static double number(Matcher m, int group) {
        return Double.parseDouble(m.group(group));
    }

    /** What is wrong with an angle of more than a whole turn, and with other entries that need more than the reader says; null for nothing. */
    static String wrong(Kind kind, String typed) {
        if (kind == Kind.VOLUME && typed.matches("(?i).*\\d.*[x×*].*\\d.*")) {
            return "\"" + typed.strip()
                    + "\" is no volume. Write the three measures with one unit, such as 4 x 5 x 2.5 m or"
                    + " 13 x 16 x 8 ft, or the volume itself.";
        }
        if (kind == Kind.POWER && typed.matches("(?i).*\\d\\s*(V|A)\\b.*")) {
            return "\"" + typed.strip()
                    + "\" is no power. Write the kW of the kiln's plate, such as 8.9 kW, or volts and"
                    + " amperes, such as 240 V 37 A.";
        }
        try {
            return kind == Kind.ANGLE
                            && Math.abs(Math.toDegrees(
                                            Quantity.parse(typed.strip(), kind).si()))
                                    > 360 + 1e-9
                    ? "\"" + typed.strip() + "\" is more than a whole turn. Write -360 to 360 deg."
                    : null;
        } catch (QuantityException e) {
            return null;
        }
    }
}
