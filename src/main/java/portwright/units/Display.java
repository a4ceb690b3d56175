package portwright.units;

import java.util.Map;

/** Quantities for people in either system: metric or inch, with the figures that a hand can use. */
public final class Display {
    private static final int FINEST = 16;
    private static final double INCH = 25.4;
    private static final Map<Kind, String[]> SHOWN = Map.ofEntries(
            Map.entry(Kind.AREA, new String[] {"cm2", "in2"}),
            Map.entry(Kind.VOLUME, new String[] {"L", "ft3"}),
            Map.entry(Kind.MASS, new String[] {"kg", "lb"}),
            Map.entry(Kind.TEMPERATURE, new String[] {"°C", "°F"}),
            Map.entry(Kind.TEMPERATURE_DIFFERENCE, new String[] {"K", "°F"}),
            Map.entry(Kind.TEMPERATURE_RATE, new String[] {"°C/h", "°F/h"}),
            Map.entry(Kind.PRESSURE, new String[] {"mbar", "inH2O"}),
            Map.entry(Kind.POWER, new String[] {"kW", "Btu/h"}),
            Map.entry(Kind.ANGLE, new String[] {"deg", "deg"}),
            Map.entry(Kind.SHARE, new String[] {"%", "%"}),
            Map.entry(Kind.FLOW, new String[] {"m3/h", "cfm"}),
            Map.entry(Kind.SPEED, new String[] {"m/s", "mph"}),
            Map.entry(Kind.HEATING_VALUE, new String[] {"MJ/m3", "Btu/ft3"}),
            Map.entry(Kind.DENSITY, new String[] {"kg/m3", "lb/ft3"}),
            Map.entry(Kind.RESISTANCE, new String[] {"ohm", "ohm"}));

    private Display() {}

    /** Whether the quantity was typed in inch-pound units. */
    public static boolean inch(Quantity q) {
        String s = LookAlikes.plain(q.typed());
        return UnitTable.spellings(q.kind()).stream()
                .anyMatch(spelling -> UnitTable.find(q.kind(), spelling).inch() && s.endsWith(spelling));
    }

    /** The quantity in the system in which it was not typed. */
    public static String other(Quantity q) {
        return inch(q) ? metric(q) : imperial(q);
    }

    /** In metric units: lengths in mm to a tenth, other kinds to four figures. */
    public static String metric(Quantity q) {
        return metric(q.kind(), q.base());
    }

    /** In inch-pound units: lengths in inches to the nearest 1/16, other kinds to four figures. */
    public static String imperial(Quantity q) {
        return imperial(q.kind(), q.base());
    }

    /** A value in the base unit of its kind, in metric units. */
    public static String metric(Kind kind, double base) {
        return switch (kind) {
            case LENGTH -> Format.plain(base, 1) + " mm";
            case DURATION -> duration(base);
            default -> in(kind, base, SHOWN.get(kind)[0]);
        };
    }

    /** A value in the base unit of its kind, in inch-pound units. */
    public static String imperial(Kind kind, double base) {
        return switch (kind) {
            case LENGTH -> base < 0 ? "-" + InchFraction.words(-base, FINEST) : InchFraction.words(base, FINEST);
            case DURATION -> duration(base);
            default -> in(kind, base, SHOWN.get(kind)[1]);
        };
    }

    /** A value in the base unit of its kind, in the unit of that symbol, four figures. */
    public static String in(Kind kind, double base, String symbol) {
        UnitTable.Unit unit = UnitTable.find(kind, symbol);
        double value = switch (kind == Kind.TEMPERATURE ? unit.symbol() : "") {
            case "°C" -> base - Celsius.ZERO_C;
            case "°F" -> base / unit.factor() - 459.67;
            default -> base / unit.factor();
        };
        return figures(value) + " " + unit.symbol();
    }

    /** A length in inches as a decimal, for tapes with tenths. */
    public static String decimalInch(double mm, int decimals) {
        return Format.plain(mm / INCH, decimals) + " in";
    }

    private static String figures(double value) {
        double a = Math.abs(value);
        return Format.plain(value, a >= 1000 ? 0 : a >= 100 ? 1 : a >= 10 ? 2 : 3);
    }

    private static String duration(double seconds) {
        long s = Math.round(seconds);
        long h = s / 3600;
        long min = s % 3600 / 60;
        long rest = s % 60;
        StringBuilder b = new StringBuilder();
        if (h != 0) {
            b.append(h).append(" h ");
        }
        if (min != 0) {
            b.append(min).append(" min ");
        }
        if (rest != 0 || b.isEmpty()) {
            b.append(rest).append(" s ");
        }
        return b.toString().strip();
    }
}
