package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/**
 * Which column is what, from the heading line; -1 where a column is missing.
 *
 * @param date a column of its own for the day
 * @param timeUnitS seconds of one unit of a bare number in the time column; NaN when the heading names none
 * @param elapsed the heading says elapsed time
 * @param minutesSeconds the heading says mm:ss
 * @param scale 'C', 'F' or ' ' when the heading does not say
 * @param damperUnit "%", "mm" or ""
 * @param pressurePa pascal of one unit of the pressure column; NaN when the heading names none
 */
record Heading(int time, int date, int temperature, int damper, int pressure, int cone, int note, double timeUnitS,
        boolean elapsed, boolean minutesSeconds, char scale, String damperUnit, double pressurePa) {
    private static final Pattern BRACKET = Pattern.compile("[\\[(]([^\\])]*)[\\])]");
    private static final Pattern SECONDS = Pattern.compile("(^|[^a-z])(s|sec|secs|seconds?)([^a-z]|$)");
    private static final Pattern MINUTES = Pattern.compile("(^|[^a-z])(m|min|mins|minutes?)([^a-z]|$)");
    private static final Pattern HOURS = Pattern.compile("(^|[^a-z])(h|hr|hrs|hours?)([^a-z]|$)");
    private static final Pattern FAHRENHEIT = Pattern.compile("°\\s*f|º\\s*f|fahrenheit|deg\\s*f|(^|[^a-z])f([^a-z]|$)");
    private static final Pattern CELSIUS = Pattern.compile("°\\s*c|º\\s*c|celsius|deg\\s*c|(^|[^a-z])c([^a-z]|$)");

    /** True if the line names columns: it has a word for time or temperature. */
    static boolean looksLike(List<String> cells) {
        return cells.stream().map(c -> c.toLowerCase(Locale.ROOT))
                .anyMatch(c -> isTime(c) || isTemperature(c)) && cells.stream().noneMatch(c -> Numbers.of(c) != null);
    }

    private static boolean isTime(String c) {
        return c.contains("time") || c.contains("elapsed") || c.contains("clock") || c.contains("hour") || c.startsWith("min")
                || c.startsWith("sec") || c.equals("h") || c.equals("t") || c.equals("s");
    }

    private static boolean isTemperature(String c) {
        return c.startsWith("temp") || c.contains("temperature") || c.contains("meter") || c.contains("chamber")
                || c.contains("reading") || c.contains("pyrometer") || c.matches("[°º]?\\s*[cf]");
    }

    static Heading of(List<String> cells) {
        int[] at = {-1, -1, -1, -1, -1, -1, -1};
        for (int i = 0; i < cells.size(); i++) {
            String c = cells.get(i).toLowerCase(Locale.ROOT);
            int k = c.contains("damper") || c.contains("plate") ? 3
                    : c.contains("pressure") || c.startsWith("gas") ? 4
                    : c.contains("cone") ? 5
                    : c.contains("note") || c.contains("comment") || c.contains("remark") ? 6
                    : isTemperature(c) && !c.contains("set") ? 2
                    : c.startsWith("date") && !c.contains("time") ? 1
                    : isTime(c) ? 0
                    : -1;
            if (k >= 0 && at[k] < 0) {
                at[k] = i;
            }
        }
        if (at[0] < 0 && at[1] >= 0) {
            at[0] = at[1];
            at[1] = -1;
        }
        if (at[0] < 0 || at[2] < 0) {
            throw new LogException("the heading must name a time column and a temperature column: "
                    + "write for example time, temperature °C; found " + String.join(", ", cells));
        }
        String time = cells.get(at[0]).toLowerCase(Locale.ROOT);
        String temperature = cells.get(at[2]).toLowerCase(Locale.ROOT);
        String damper = at[3] < 0 ? "" : cells.get(at[3]).toLowerCase(Locale.ROOT);
        return new Heading(at[0], at[1], at[2], at[3], at[4], at[5], at[6], timeUnit(time),
                time.contains("elapsed") || time.contains("since"), time.contains("mm:ss") && !time.contains("h"),
                scale(temperature), damper.contains("%") ? "%" : damper.contains("mm") ? "mm" : "",
                at[4] < 0 ? Double.NaN : pressure(cells.get(at[4])));
    }

    /** Without a heading: time first, temperature second. */
    static Heading none() {
        return new Heading(0, -1, 1, -1, -1, -1, -1, Double.NaN, false, false, ' ', "", Double.NaN);
    }

    static char scale(String words) {
        String w = words.toLowerCase(Locale.ROOT).replace('_', ' ').replaceFirst("^temperature|^temp", " ");
        return FAHRENHEIT.matcher(w).find() ? 'F' : CELSIUS.matcher(w).find() ? 'C' : ' ';
    }

    private static double timeUnit(String words) {
        String w = words.replace('_', ' ');
        if (w.contains(":")) {
            return Double.NaN;
        }
        return SECONDS.matcher(w).find() ? 1 : MINUTES.matcher(w).find() ? 60 : HOURS.matcher(w).find() ? 3600 : Double.NaN;
    }

    private static double pressure(String words) {
        List<String> units = new ArrayList<>();
        Matcher m = BRACKET.matcher(words);
        while (m.find()) {
            units.add(m.group(1));
        }
        for (String part : words.split("\\s+")) {
            units.add(part);
        }
        for (String u : units) {
            double pa = pascal(1, u);
            if (!Double.isNaN(pa)) {
                return pa;
            }
        }
        return Double.NaN;
    }

    /** Pressure in Pa of a value and unit as typed; NaN when the unit is none of a pressure. */
    static double pascal(double value, String unit) {
        if (unit.isBlank() || unit.equalsIgnoreCase("gas") || unit.equalsIgnoreCase("pressure")) {
            return Double.NaN;
        }
        try {
            return value * Quantity.parse("1 " + unit.strip(), Kind.PRESSURE).si();
        } catch (QuantityException e) {
            return Double.NaN;
        }
    }
}
