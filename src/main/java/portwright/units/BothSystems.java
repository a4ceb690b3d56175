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
    private static final Pattern FIGURE = Pattern.compile("(?<![\\w.#/−-])(?<!\\d )(?<minus>−)?(?:(?:(?<from>" + NUMBER
            + ") to |between (?<low>" + NUMBER + ") and ))?(?<last>" + NUMBER
            + ") (?<unit>mm²|cm²|mm|m|L|kg|°C|kW)(?<hour>/h)?(?![\\w²³/·^-])(?! \\()");

    private static final Pattern PAIR = Pattern.compile(
            "(?<![\\w.#/−-])(?<lead>between )?(?<metric>−?(?:" + NUMBER
                    + " (?:to|and) )?" + NUMBER
                    + " (?:mm²|cm²|mm|m|L|kg|°C|kW)(?:/h)?) \\((?<twin>[−-]?[\\d./ toand]* ?(?:in²|in|ft³|ft|lb|°F|Btu/h)(?:/h)?)\\)");

    private BothSystems() {}

    /** The sentence with inch-pound figures in brackets after every metric length, area, volume, mass, temperature and power that has none yet. */
    public static String words(String metric) {
        Matcher m = FIGURE.matcher(metric);
        return m.replaceAll(f -> Matcher.quoteReplacement(f.group() + twin(m)));
    }

    /** The same sentence with every inch-pound twin before its metric figure: {@code 1 in (25.4 mm)}. */
    public static String inchFirst(String both) {
        return PAIR.matcher(both).replaceAll("${lead}${twin} (${metric})");
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
        if (m.group("minus") != null && first == null) {
            return " (" + below(value, unit) + (hourly ? "/h" : "") + ")";
        }
        String last = twin(value, unit);
        String sign = last.substring(last.lastIndexOf(' '));
        String start = first == null
                ? ""
                : twin(Double.parseDouble(first), unit).replace(sign, "") + (low == null ? " to " : " and ");
        return " (" + start + last + (hourly ? "/h" : "") + ")";
    }

    /** The twin of a figure under nought. */
    private static String below(double size, String unit) {
        return KINDS.get(unit) == Kind.TEMPERATURE ? twin(-size, unit).replace('-', '−') : "−" + twin(size, unit);
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
