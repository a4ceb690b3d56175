package portwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences with metric figures, for readers whose tape and burner are in inch-pound units: each figure gets its twin in brackets. */
public final class BothSystems {
    private static final MathContext FIGURES = new MathContext(3);
    private static final Map<String, Kind> KINDS = Map.of(
            "mm", Kind.LENGTH,
            "m", Kind.LENGTH,
            "mm²", Kind.AREA,
            "cm²", Kind.AREA,
            "L", Kind.VOLUME,
            "kg", Kind.MASS,
            "°C", Kind.TEMPERATURE,
            "kW", Kind.POWER);
    private static final Map<Kind, String> TWINS = Map.of(
            Kind.LENGTH, "ft",
            Kind.AREA, "in²",
            Kind.VOLUME, "ft³",
            Kind.MASS, "lb",
            Kind.POWER, "Btu/h");
    private static final String NUMBER = "\\d+(?:\\.\\d+)?";
    private static final String GROUPED = "\\d+(?: \\d{3})*(?:\\.\\d+)?";
    private static final Pattern FIGURE = Pattern.compile(
            "(?<![\\w.#/−-])(?<!\\d )(?<!(?:in|ft|in²|ft³|lb|°F|Btu/h) \\()(?<minus>−)?(?:(?:(?<from>" + NUMBER
                    + ") to |between (?<low>" + NUMBER + ") and ))?(?<last>" + NUMBER
                    + ") (?<unit>mm²|cm²|mm|m|L|kg|°C|kW)(?<hour>/h)?(?![\\w²³/·^-])(?! \\()");

    private static final Pattern FLOW = Pattern.compile("(?<![\\w.,])(" + GROUPED + ") m³/h(?! \\()");

    private static final Pattern PAIR = Pattern.compile(
            "(?<![\\w.#/−-])(?<!\\d )(?<lead>between )?(?<metric>−?(?:" + NUMBER
                    + " (?:to|and) )?" + GROUPED
                    + " (?:mm²|cm²|mm|m|L|kg|°C|kW)(?:/h)?) \\((?<twin>[−-]?[\\d./ toand]* ?(?:in²|in|ft³|ft|lb|°F|Btu/h)(?:/h)?)\\)");

    /** A length that differs from its limit by less is at it, mm. */
    private static final double LEAST_OFF_MM = 1e-4;

    private BothSystems() {}

    /** The sentence with inch-pound figures in brackets after every metric length, area, volume, mass, temperature and power that has none yet. */
    public static String words(String metric) {
        Matcher m = FIGURE.matcher(metric);
        return m.replaceAll(f -> Matcher.quoteReplacement(f.group() + twin(m)));
    }

    /** The sentence with cubic feet a minute in brackets behind every flow of air in m³/h. */
    public static String flows(String metric) {
        return FLOW.matcher(metric).replaceAll(f -> {
            double m3PerH = Double.parseDouble(f.group(1).replace(" ", ""));
            double base = m3PerH * UnitTable.find(Kind.FLOW, "m3/h").factor();
            return Matcher.quoteReplacement(f.group() + " ("
                    + Format.figures(base / UnitTable.find(Kind.FLOW, "cfm").factor()) + " cfm)");
        });
    }

    /**
     * A metric figure rounded for people, with its inch-pound twin made from the value itself: {@code told(2.3668, 2, "kW")} is
     * {@code 2.37 kW (8080 Btu/h)}. {@link #words} leaves such a figure as it is.
     *
     * @param unit mm, m, mm², cm², L, kg, kg/h, °C or kW, and words after it; one of another kind has no twin
     */
    public static String told(double value, int decimals, String unit) {
        return told(value, Format.plain(value, decimals), unit);
    }

    /** The same with a figure that was rounded in another way. */
    public static String told(double value, String rounded, String unit) {
        String own = unit.split(" ", 2)[0];
        String figure = rounded.replace('-', '−');
        return KINDS.containsKey(own.replace("/h", "")) && !(own.endsWith("/h") && !own.equals("kg/h"))
                ? figure + " " + own + " (" + twinOf(value, own) + ")" + unit.substring(own.length())
                : figure + " " + unit;
    }

    /** A length beside its limits, rounded for people: its twin is in thousandths of an inch where it would read like that of a limit that it is off. */
    public static String toldBeside(double mm, String rounded, double... limitsMm) {
        String twin = Inches.told(mm);
        for (double limit : limitsMm) {
            twin = Inches.told(mm).equals(Inches.told(limit)) && off(mm, limit) ? Inches.told(mm, limit) : twin;
        }
        return rounded + " mm (" + twin + ")";
    }

    /** Whether a length is off a limit, by more than a measure is true to. */
    public static boolean off(double mm, double limitMm) {
        return Math.abs(mm - limitMm) > LEAST_OFF_MM;
    }

    /** Two whole figures of one unit: {@code 12 to 30 mm (1/2 to 1 3/16 in)}. */
    public static String toldRange(double from, double to, String unit) {
        return Format.plain(from, 0) + " to " + Format.plain(to, 0) + " " + unit + " ("
                + start(from, twin(to, unit), unit) + " to " + twin(to, unit) + ")";
    }

    /** How much hotter: {@code 25 °C (45 °F) hotter}. */
    public static String toldHotter(double kelvins) {
        return Format.plain(kelvins, 0) + " °C (" + Format.plain(kelvins * 1.8, 0) + " °F) hotter";
    }

    /** The same sentence with every inch-pound twin before its metric figure: {@code 1 in (25.4 mm)}. */
    public static String inchFirst(String both) {
        return PAIR.matcher(both).replaceAll("${lead}${twin} (${metric})");
    }

    /** The same sentence without its inch-pound twins. */
    public static String metricOnly(String both) {
        return PAIR.matcher(both).replaceAll("${lead}${metric}");
    }

    private static String twin(Matcher m) {
        String unit = m.group("unit");
        boolean hourly = m.group("hour") != null;
        if (hourly && !unit.equals("kg")) {
            return "";
        }
        String low = m.group("low");
        String first = m.group("from") != null ? m.group("from") : low;
        double value = Double.parseDouble(m.group("last"));
        String last = twinOf(m.group("minus") != null && first == null ? -value : value, unit + (hourly ? "/h" : ""));
        String start =
                first == null ? "" : start(Double.parseDouble(first), last, unit) + (low == null ? " to " : " and ");
        return " (" + start + last + ")";
    }

    /** The lower figure of a range without the unit that the upper one has too. */
    private static String start(double value, String last, String unit) {
        return twin(value, unit).replace(last.substring(last.lastIndexOf(' ')), "");
    }

    /** The twin of any figure, also of one under nought or by the hour. */
    private static String twinOf(double value, String unit) {
        if (unit.endsWith("/h")) {
            return twinOf(value, unit.substring(0, unit.length() - 2)) + "/h";
        }
        if (KINDS.get(unit) == Kind.TEMPERATURE) {
            return twin(value, unit).replace('-', '−');
        }
        return value < 0 ? "−" + twin(-value, unit) : twin(value, unit);
    }

    private static String twin(double value, String unit) {
        Kind kind = KINDS.get(unit);
        if (kind == Kind.TEMPERATURE) {
            return Format.plain(value * 1.8 + 32, 0) + " °F";
        }
        double base = value * UnitTable.find(kind, unit).factor();
        if (unit.equals("mm")) {
            return Inches.told(base);
        }
        String twin = TWINS.get(kind);
        BigDecimal n = BigDecimal.valueOf(base / UnitTable.find(kind, twin).factor())
                .round(FIGURES)
                .stripTrailingZeros();
        return (n.signum() == 0 ? "0" : n.toPlainString()) + " " + twin;
    }
}
