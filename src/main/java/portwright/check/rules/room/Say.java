package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.source.Source;
import portwright.units.BothSystems;
import portwright.units.Celsius;
import portwright.units.Format;

/** Builds the findings of this section: all of them concern lighting. */
final class Say {

    static final Set<Forbids> LIGHTING = Set.of(Forbids.LIGHTING);
    /** Relative tolerance of every comparison: at the limit a rule passes. */
    static final double TOLERANCE = Limits.TOLERANCE;

    private Say() {}

    static Finding stop(
            Rule rule, Measure measured, Measure limit, String message, String remedy, Source source, String... parts) {
        return finding(rule, Severity.STOP, measured, limit, message, remedy, source, false, parts);
    }

    static Finding caution(
            Rule rule, Measure measured, Measure limit, String message, String remedy, Source source, String... parts) {
        return finding(rule, Severity.CAUTION, measured, limit, message, remedy, source, false, parts);
    }

    static Finding note(Rule rule, String message, String remedy, Source source, String... parts) {
        return new Finding(
                rule.id(),
                Severity.NOTE,
                Forbids.NOTHING,
                List.of(parts),
                null,
                null,
                message,
                remedy,
                source,
                false,
                List.of());
    }

    static Finding finding(
            Rule rule,
            Severity severity,
            Measure measured,
            Measure limit,
            String message,
            String remedy,
            Source source,
            boolean byUser,
            String... parts) {
        return new Finding(
                rule.id(),
                severity,
                Forbids.LIGHTING,
                List.of(parts),
                measured,
                limit,
                message,
                remedy,
                source,
                byUser,
                List.of());
    }

    /** Over a limit by more than the tolerance. */
    static boolean over(double value, double limit) {
        return value > limit + Math.abs(limit) * TOLERANCE;
    }

    /** Under a limit by more than the tolerance. */
    static boolean under(double value, double limit) {
        return value < limit - Math.abs(limit) * TOLERANCE;
    }

    /** A number for people: three figures, thousands apart from five digits on, a minus sign as in print. */
    static String n(double v) {
        return Format.figures(v);
    }

    /** The number with a metric unit, and its inch-pound twin from the number itself: {@code 2.37 kW (8080 Btu/h)}. */
    static String told(double v, String unit) {
        return BothSystems.told(v, n(v), unit);
    }

    /** A figure under its limit in words: where only its last digits keep it under, it is not told as the limit. */
    static String justUnder(String told, String limit) {
        return told.equals(limit) ? "just under " + told : told;
    }

    /** The same of a figure over its limit. */
    static String justOver(String told, String limit) {
        return told.equals(limit) ? "just over " + told : told;
    }

    /** A flow in m³/h from m³/s. */
    static String flow(double m3PerS) {
        return n(m3PerS * 3600) + " m³/h";
    }

    /** A time from seconds: seconds, minutes or hours. */
    static String time(double s) {
        return s < 120
                ? n((double) Math.round(s)) + " s"
                : s < 7200 ? n((double) Math.round(s / 60)) + " min" : n(s / 3600) + " h";
    }

    /** Kelvin as °C without the dust of the subtraction. */
    static double toC(double k) {
        return Math.round((k - Celsius.ZERO_C) * 1e9) / 1e9;
    }

    /** A temperature in °C from kelvin. */
    static String celsius(double k) {
        return BothSystems.told(k - Celsius.ZERO_C, 0, "°C");
    }
}
