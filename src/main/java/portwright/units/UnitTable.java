package portwright.units;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Every unit the program reads, with its exact factor to the base unit of its kind and all spellings.
 *
 * <p>Factors: the international inch (25.4 mm), pound (0.453 592 37 kg) and standard gravity (9.806 65 m/s²) are exact by definition; the Btu is
 * that of the International Table (1 055.055 852 62 J); the inch of water is the conventional one (1 g/cm³ at standard gravity, 249.088 91 Pa).
 * Source: NIST Special Publication 811 (2008), appendix B; published.
 */
final class UnitTable {
    private static final double INCH = 25.4;
    private static final double FOOT = 304.8;
    private static final double POUND = 0.45359237;
    private static final double BTU = 1055.05585262;
    private static final double GRAVITY = 9.80665;
    private static final double HOUR = 3600;
    private static final double MINUTE = 60;
    private static final double FAHRENHEIT = 5.0 / 9.0;
    private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
    private static final double CUBIC_INCH = 0.0254 * 0.0254 * 0.0254;
    private static final double MM_WATER = GRAVITY;

    /** A spelling of a unit. */
    record Unit(Kind kind, String symbol, double factor, boolean inch) {}

    private static final Map<Kind, Map<String, Unit>> BY_KIND = table();

    private UnitTable() {}

    /** The whole table made anew: kind, spelling, unit. */
    static Map<Kind, Map<String, Unit>> table() {
        Table t = new Table();
        t.of(Kind.LENGTH)
                .metric("mm", 1, "millimetre|millimetres|millimeter|millimeters")
                .metric("cm", 10, "centimetre|centimetres|centimeter|centimeters")
                .metric("m", 1000, "metre|metres|meter|meters")
                .inch("in", INCH, "in.|inch|inches|\"|″|”|''|′′")
                .inch("ft", FOOT, "ft.|foot|feet|'|′|’")
                .inch("yd", 3 * FOOT, "yard|yards");
        t.of(Kind.AREA)
                .metric("mm2", 1e-6, "mm²|mm^2|sq mm")
                .metric("cm2", 1e-4, "cm²|cm^2|sq cm")
                .metric("m2", 1, "m²|m^2|sq m")
                .inch("in2", INCH * INCH * 1e-6, "in²|in^2|sq in|sq. in.|square inch|square inches")
                .inch("ft2", FOOT * FOOT * 1e-6, "ft²|ft^2|sq ft|sq. ft.|square feet");
        t.of(Kind.VOLUME)
                .metric("m3", 1, "m³|m^3|cubic metre|cubic metres|cubic meters")
                .metric("L", 1e-3, "l|litre|litres|liter|liters|dm3|dm³")
                .metric("mL", 1e-6, "ml|cm3|cm³|cc")
                .inch("ft3", CUBIC_FOOT, "ft³|ft^3|cu ft|cu. ft.|cuft|cubic feet|cubic foot")
                .inch("in3", CUBIC_INCH, "in³|in^3|cu in|cubic inches");
        t.of(Kind.MASS)
                .metric("kg", 1, "kilogram|kilograms")
                .metric("g", 1e-3, "gram|grams")
                .metric("t", 1000, "tonne|tonnes")
                .inch("lb", POUND, "lbs|lb.|lbs.|pound|pounds")
                .inch("oz", POUND / 16, "oz.|ounce|ounces");
        t.of(Kind.TEMPERATURE)
                .metric("°C", 1, "C|degC|deg C|℃|° C")
                .metric("K", 1, "kelvin")
                .inch("°F", FAHRENHEIT, "F|degF|deg F|℉|° F");
        t.of(Kind.TEMPERATURE_DIFFERENCE)
                .metric("K", 1, "kelvin")
                .metric("°C", 1, "C|degC|deg C|℃|° C")
                .inch("°F", FAHRENHEIT, "F|degF|deg F|℉|° F");
        t.of(Kind.TEMPERATURE_RATE).per("°C|C|degC|deg C|℃|K", 1, false).per("°F|F|degF|deg F|℉", FAHRENHEIT, true);
        t.of(Kind.PRESSURE)
                .metric("Pa", 1, "pascal")
                .metric("hPa", 100, "")
                .metric("kPa", 1000, "")
                .metric("MPa", 1e6, "")
                .metric("mbar", 100, "mb|millibar")
                .metric("bar", 1e5, "")
                .metric("mmH2O", MM_WATER, "mm H2O|mmWC|mm WC|mm w.c.|mm wc|mmWG|mm WG|mmH₂O")
                .inch(
                        "inH2O",
                        INCH * MM_WATER,
                        "in H2O|in. H2O|inches H2O|inH₂O|in H₂O|\"H2O|\" H2O|inWC|in WC|in wc|in w.c.|in. w.c.|in W.C.|inwc|\" w.c.|\" wc|\" WC|\"WC"
                                + "|inches w.c.|inches wc|inches of water|inWG|in WG|in wg|in w.g.|inches w.g.|in. W.C.|\"w.c.")
                .inch("psi", POUND * GRAVITY / (0.0254 * 0.0254), "psig|PSI|lb/in2|lbf/in2|lb/in²")
                .inch("ozf/in2", POUND / 16 * GRAVITY / (0.0254 * 0.0254), "osi|oz/in2|oz/in²");
        t.of(Kind.POWER)
                .metric("W", 1, "watt|watts")
                .metric("kW", 1000, "kilowatt|kilowatts")
                .metric("MW", 1e6, "")
                .inch(
                        "Btu/h",
                        BTU / HOUR,
                        "Btu/hr|BTU/h|BTU/hr|btu/h|btu/hr|Btuh|BTUH|BTU/hour|Btu per hour|BTU per hour")
                .inch("kBtu/h", 1000 * BTU / HOUR, "kBtu/hr|kBTU/h|MBH");
        t.of(Kind.ANGLE).metric("deg", Math.PI / 180, "°|degree|degrees").metric("rad", 1, "radian|radians");
        t.of(Kind.SHARE).metric("%", 0.01, "percent|per cent");
        t.of(Kind.DURATION)
                .metric("h", HOUR, "hr|hrs|hour|hours")
                .metric("min", MINUTE, "mins|minute|minutes")
                .metric("s", 1, "sec|secs|second|seconds")
                .metric("d", 24 * HOUR, "day|days");
        t.of(Kind.FLOW)
                .metric("m3/h", 1 / HOUR, "m³/h|m3/hr|m³/hr|m^3/h|cmh")
                .metric("m3/min", 1 / MINUTE, "m³/min")
                .metric("m3/s", 1, "m³/s")
                .metric("L/s", 1e-3, "l/s")
                .metric("L/min", 1e-3 / MINUTE, "l/min")
                .metric("L/h", 1e-3 / HOUR, "l/h|L/hr")
                .inch("cfm", CUBIC_FOOT / MINUTE, "CFM|ft3/min|ft³/min|cu ft/min")
                .inch("ft3/h", CUBIC_FOOT / HOUR, "ft³/h|ft3/hr|cfh|CFH|cu ft/h|cu ft/hr");
        t.of(Kind.SPEED)
                .metric("m/s", 1, "")
                .metric("km/h", 1000 / HOUR, "kmh|kph")
                .metric("cm/s", 0.01, "")
                .inch("mph", 1609.344 / HOUR, "mi/h")
                .inch("ft/s", 0.3048, "fps")
                .inch("ft/min", 0.3048 / MINUTE, "fpm")
                .metric("kn", 1852 / HOUR, "knot|knots");
        t.of(Kind.HEATING_VALUE)
                .metric("MJ/m3", 1e6, "MJ/m³")
                .metric("kJ/m3", 1e3, "kJ/m³")
                .metric("kWh/m3", 3.6e6, "kWh/m³")
                .inch("Btu/ft3", BTU / CUBIC_FOOT, "BTU/ft3|Btu/ft³|BTU/ft³|Btu/cu ft|BTU/cu ft|Btu/cf|BTU/cf");
        t.of(Kind.DENSITY)
                .metric("kg/m3", 1, "kg/m³")
                .metric("g/L", 1, "g/l")
                .metric("g/cm3", 1000, "g/cm³")
                .inch("lb/ft3", POUND / CUBIC_FOOT, "lb/ft³|lb/cu ft");
        t.of(Kind.RESISTANCE).metric("ohm", 1, "\u03A9|\u2126|ohms");
        return t.units;
    }

    /** The unit of a spelling within a kind; null when it is none. */
    static Unit find(Kind kind, String spelling) {
        return BY_KIND.getOrDefault(kind, Map.of()).get(spelling);
    }

    /** All units of that spelling, of whatever kind. */
    static List<Unit> anywhere(String spelling) {
        List<Unit> found = new ArrayList<>();
        for (Map<String, Unit> units : BY_KIND.values()) {
            if (units.containsKey(spelling)) {
                found.add(units.get(spelling));
            }
        }
        return found;
    }

    /** The unit meant by a spelling in the wrong letter case or with stray blanks; null when there is none or several. */
    static Unit loosely(Kind kind, String spelling) {
        String key = spelling.toLowerCase(Locale.ROOT).replaceAll("[\\s.]", "");
        Unit only = null;
        for (Map.Entry<String, Unit> e : BY_KIND.getOrDefault(kind, Map.of()).entrySet()) {
            if (e.getKey().toLowerCase(Locale.ROOT).replaceAll("[\\s.]", "").equals(key)) {
                if (only != null && !only.equals(e.getValue())) {
                    return null;
                }
                only = e.getValue();
            }
        }
        return only;
    }

    /** Units of a kind by their symbol, in table order. */
    static List<Unit> units(Kind kind) {
        return BY_KIND.getOrDefault(kind, Map.of()).values().stream().distinct().toList();
    }

    /** Spellings of a kind. */
    static List<String> spellings(Kind kind) {
        return List.copyOf(BY_KIND.getOrDefault(kind, Map.of()).keySet());
    }

    /** Fills the table, kind by kind. */
    private static final class Table {
        private final Map<Kind, Map<String, Unit>> units = new EnumMap<>(Kind.class);
        private Kind kind;

        Table of(Kind k) {
            kind = k;
            units.put(k, new LinkedHashMap<>());
            return this;
        }

        Table metric(String symbol, double factor, String others) {
            return add(new Unit(kind, symbol, factor, false), others);
        }

        Table inch(String symbol, double factor, String others) {
            return add(new Unit(kind, symbol, factor, true), others);
        }

        Table per(String degrees, double factor, boolean inch) {
            for (String time : List.of("h|hr|hour", "min|minute", "s")) {
                double seconds = time.startsWith("h") ? HOUR : time.startsWith("m") ? MINUTE : 1;
                Unit unit = new Unit(
                        kind,
                        degrees.substring(0, degrees.indexOf('|')) + "/" + time.split("\\|", -1)[0],
                        factor / seconds,
                        inch);
                for (String d : degrees.split("\\|", -1)) {
                    for (String tm : time.split("\\|", -1)) {
                        put(d + "/" + tm, unit);
                        put(d + " / " + tm, unit);
                        put(d + " per " + tm, unit);
                    }
                }
            }
            return this;
        }

        private Table add(Unit unit, String others) {
            put(unit.symbol(), unit);
            for (String o : others.split("\\|", -1)) {
                if (!o.isEmpty()) {
                    put(o, unit);
                }
            }
            return this;
        }

        private void put(String spelling, Unit unit) {
            if (units.get(kind).put(spelling, unit) != null) {
                throw new IllegalStateException("spelling given twice: " + spelling);
            }
        }
    }
}
