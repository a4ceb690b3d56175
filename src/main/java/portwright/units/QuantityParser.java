package portwright.units;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads quantities. */
final class QuantityParser {
    private QuantityParser() {}

    private static final Map<String, Double> LENGTH = Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "in", 25.4, "\"", 25.4, "ft", 304.8, "'", 304.8);
    private static final Map<String, Double> OTHER = Map.ofEntries(
            Map.entry("AREA cm2", 1e-4), Map.entry("AREA m2", 1.0), Map.entry("AREA mm2", 1e-6), Map.entry("AREA in2", 645.16e-6), Map.entry("AREA ft2", 0.09290304),
            Map.entry("VOLUME m3", 1.0), Map.entry("VOLUME L", 1e-3), Map.entry("VOLUME ft3", 0.028316846592),
            Map.entry("MASS kg", 1.0), Map.entry("MASS g", 1e-3), Map.entry("MASS lb", 0.45359237),
            Map.entry("TEMPERATURE_RATE °C/h", 1 / 3600.0), Map.entry("TEMPERATURE_RATE °F/h", 5 / 9.0 / 3600.0),
            Map.entry("PRESSURE Pa", 1.0), Map.entry("PRESSURE kPa", 1e3), Map.entry("PRESSURE mbar", 100.0), Map.entry("PRESSURE bar", 1e5), Map.entry("PRESSURE psi", 6894.757293168361), Map.entry("PRESSURE inH2O", 249.08891),
            Map.entry("POWER kW", 1e3), Map.entry("POWER W", 1.0), Map.entry("POWER Btu/h", 0.2930710701722222),
            Map.entry("ANGLE deg", Math.PI / 180), Map.entry("SHARE %", 0.01),
            Map.entry("DURATION h", 3600.0), Map.entry("DURATION min", 60.0), Map.entry("DURATION s", 1.0),
            Map.entry("TEMPERATURE_DIFFERENCE K", 1.0), Map.entry("TEMPERATURE_DIFFERENCE °C", 1.0), Map.entry("TEMPERATURE_DIFFERENCE °F", 5 / 9.0),
            Map.entry("FLOW m3/h", 1 / 3600.0), Map.entry("SPEED m/s", 1.0));
    private static final Pattern ONE = Pattern.compile("\\s*([-+]?)\\s*(?:(\\d+)[ -]+)?(\\d+(?:\\.\\d+)?)(?:/(\\d+))?\\s*([^\\d\\s].*?)\\s*");

    static Quantity parse(String text, Kind kind) {
        Matcher m = ONE.matcher(text);
        if (!m.matches()) {
            throw new QuantityException("\"" + text + "\" is not a " + kind.word() + ". Write " + kind.example() + ".");
        }
        double v = Double.parseDouble(m.group(3));
        if (m.group(4) != null) {
            v /= Double.parseDouble(m.group(4));
        }
        if (m.group(2) != null) {
            v += Double.parseDouble(m.group(2));
        }
        if ("-".equals(m.group(1))) {
            v = -v;
        }
        String unit = m.group(5);
        if (kind == Kind.TEMPERATURE) {
            if (unit.equals("°C")) return new Quantity(text, kind, v + 273.15);
            if (unit.equals("°F")) return new Quantity(text, kind, (v + 459.67) * 5 / 9);
        }
        Double f = kind == Kind.LENGTH ? LENGTH.get(unit) : OTHER.get(kind + " " + unit);
        if (f == null) {
            throw new QuantityException("\"" + text + "\" is not a " + kind.word() + ". Write " + kind.example() + ".");
        }
        return new Quantity(text, kind, v * f);
    }
}
