package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/**
 * Which column holds what. −1: there is none.
 *
 * @param damperTravel the damper column gives the plate's travel, not its open share
 * @param damperM metres of one unit of that travel; NaN: each cell must say it
 * @param celsius scale of the temperature column; null: each cell must say it
 * @param timeUnitS seconds of one unit of a bare number in the time column; NaN: not said
 * @param elapsed the time column says that it counts from the start
 * @param pressurePa pascals of one unit of the pressure column; NaN: each cell must say it
 * @param second a further temperature column, beside which the first is laid
 * @param secondCelsius its scale; the first one's where it says none
 * @param unused columns with a name that are not read
 */
record Header(
        int line,
        char delimiter,
        int columns,
        int time,
        int date,
        int temperature,
        int damper,
        boolean damperTravel,
        double damperM,
        int pressure,
        int cone,
        int note,
        Boolean celsius,
        double timeUnitS,
        boolean elapsed,
        double pressurePa,
        int second,
        Boolean secondCelsius,
        List<Integer> unused) {
    private static final Pattern CELSIUS =
            Pattern.compile("°\\s*c\\b|º\\s*c\\b|℃|celsius|centigrade|\\bdeg\\.?\\s*c\\b|\\bc\\b");
    private static final Pattern FAHRENHEIT =
            Pattern.compile("°\\s*f\\b|º\\s*f\\b|℉|fahrenheit|\\bdeg\\.?\\s*f\\b|\\bf\\b");
    private static final Pattern TEMPERATURE = Pattern.compile(
            "\\b(temp\\w*|pyro\\w*|thermocouple|tc\\d?|chamber|kiln|measured|pv|actual|reading|process)\\b");
    private static final Pattern NOT_TEMPERATURE =
            Pattern.compile("set\\s*-?point|\\bsp\\b|set\\b|target|room|ambient|cold junction|\\bcj\\b|board");
    private static final Pattern TIME = Pattern.compile(
            "\\b(time\\w*|datetime|clock|elapsed|hours?|hrs?|h|minutes?|mins?|seconds?|secs?|t|stunden?|std|heures?|minuten?)\\b|zeit|temps\\b");
    private static final Pattern MINUTES = Pattern.compile("\\b(min|mins|minutes?|minuten)\\b");
    private static final Pattern HOURS = Pattern.compile("\\b(h|hr|hrs|hours?|stunden?|std|heures?)\\b");
    private static final Pattern SECONDS = Pattern.compile("\\b(s|sec|secs|seconds?)\\b");
    private static final Pattern TRAVEL = Pattern.compile("\\b(mm|cm|in|inch|inches|travel)\\b|\"");
    private static final Pattern UNIT = Pattern.compile("(inh2o|in h2o|in\\. ?wc|in wc|\"wc|mbar|bar|psi|kpa|pa)\\b");

    /** Reads a header line; null when it has no time or no temperature column. */
    static Header of(int line, List<String> names, char delimiter) {
        int time = -1;
        int date = -1;
        int temperature = -1;
        int damper = -1;
        int pressure = -1;
        int cone = -1;
        int note = -1;
        int second = -1;
        List<Integer> unused = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String n = plain(names.get(i));
            if (n.isEmpty() || Character.isDigit(n.charAt(0))) {
                continue;
            }
            if (damper < 0 && (n.contains("damper") || n.matches("plate (mm|cm|in|%).*"))) {
                damper = i;
            } else if (pressure < 0 && (n.contains("pressure") || n.matches("gas\\b.*"))) {
                pressure = i;
            } else if (cone < 0 && n.contains("cone")) {
                cone = i;
            } else if (note < 0 && n.matches(".*\\b(notes?|remarks?|comments?|events?)\\b.*")) {
                note = i;
            } else if (date < 0 && n.matches("date|day")) {
                date = i;
            } else if (temperature < 0 && isTemperature(n)) {
                temperature = i;
            } else if (time < 0 && TIME.matcher(n).find()) {
                time = i;
            } else if (second < 0 && isTemperature(n)) {
                second = i;
            } else {
                unused.add(i);
            }
        }
        if (time < 0 && date >= 0) {
            time = date;
            date = -1;
        }
        if (time < 0 || temperature < 0) {
            return null;
        }
        Boolean celsius = celsius(names.get(temperature));
        String clock = plain(names.get(time));
        boolean mixed = clock.matches(".*h+:?m+.*");
        double unit = mixed
                ? Double.NaN
                : MINUTES.matcher(clock).find()
                        ? 60
                        : HOURS.matcher(clock).find()
                                ? 3600
                                : SECONDS.matcher(clock).find() ? 1 : Double.NaN;
        return new Header(
                line,
                delimiter,
                names.size(),
                time,
                date,
                temperature,
                damper,
                damper >= 0 && travel(plain(names.get(damper))),
                damper < 0 ? Double.NaN : metres(plain(names.get(damper))),
                pressure,
                cone,
                note,
                celsius,
                unit,
                clock.contains("elapsed") || clock.contains("duration"),
                pressure < 0 ? Double.NaN : pascals(plain(names.get(pressure))),
                second,
                second >= 0 && celsius(names.get(second)) != null ? celsius(names.get(second)) : celsius,
                List.copyOf(unused));
    }

    /** Scale that the name of a column says: true for Celsius, false for Fahrenheit, null for neither. */
    static Boolean celsius(String name) {
        String t = plain(name);
        return FAHRENHEIT.matcher(t).find() ? Boolean.FALSE : CELSIUS.matcher(t).find() ? Boolean.TRUE : null;
    }

    private static boolean isTemperature(String n) {
        if (NOT_TEMPERATURE.matcher(n).find()) {
            return false;
        }
        return TEMPERATURE.matcher(n).find()
                || n.startsWith("meter ") && celsius(n) != null
                || n.matches("°?\\s*[cf]|deg\\.?\\s*[cf]|℃|℉|celsius|fahrenheit");
    }

    private static boolean travel(String name) {
        return !name.contains("%") && TRAVEL.matcher(name).find();
    }

    private static double metres(String name) {
        Matcher m = TRAVEL.matcher(name);
        double unit = Double.NaN;
        while (m.find()) {
            unit = switch (m.group()) {
                case "mm" -> 1e-3;
                case "cm" -> 1e-2;
                case "travel" -> unit;
                default -> 0.0254;
            };
        }
        return unit;
    }

    private static double pascals(String name) {
        var m = UNIT.matcher(name);
        return m.find() ? unitPa(m.group(1)) : Double.NaN;
    }

    /** Pascals of one unit; NaN for an unknown one. */
    static double unitPa(String unit) {
        String u = unit.toLowerCase(Locale.ROOT).replaceAll("[ .]", "");
        String known = switch (u) {
            case "inh2o", "inwc", "\"wc" -> "inH2O";
            case "kpa" -> "kPa";
            case "pa" -> "Pa";
            default -> u;
        };
        try {
            return known.isEmpty()
                    ? Double.NaN
                    : Quantity.parse("1 " + known, Kind.PRESSURE).si();
        } catch (QuantityException e) {
            return Double.NaN;
        }
    }

    /** A name in small letters without brackets; a scale written onto its end (tempC) stands apart, T/C is one word. */
    private static String plain(String name) {
        return name.replaceFirst("(?<=[a-z])([CF])$", " $1")
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\bt/c(?=\\d?\\b)", "tc")
                .replaceAll("[()\\[\\]_,/]", " ")
                .strip();
    }
}
