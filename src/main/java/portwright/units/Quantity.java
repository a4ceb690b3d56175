package portwright.units;

import java.util.Objects;

/**
 * A dimensional value kept exactly as it was typed.
 *
 * @param typed the text as typed, never changed by the program
 * @param kind what it measures
 * @param base the value in {@link Kind#baseUnit()} (length: mm, everything else SI)
 */
public record Quantity(String typed, Kind kind, double base) {
    public Quantity {
        Objects.requireNonNull(typed);
        Objects.requireNonNull(kind);
        if (!Double.isFinite(base)) {
            throw new QuantityException("\"" + typed + "\" is too large. Write " + kind.example() + ".");
        }
    }

    /** Reads a text of the wanted kind; throws {@link QuantityException} that says what to write. */
    public static Quantity parse(String text, Kind kind) {
        return QuantityParser.parse(text, kind);
    }

    /** A length made by the program, in mm, written with up to four decimals. */
    public static Quantity ofMm(double mm) {
        return parse(Format.plain(mm, 4) + " mm", Kind.LENGTH);
    }

    /** Length in mm. */
    public double mm() {
        return need(Kind.LENGTH, base);
    }

    /** Length in m. */
    public double metres() {
        return need(Kind.LENGTH, base) / 1000.0;
    }

    /** Value in SI units (m for lengths). */
    public double si() {
        return kind == Kind.LENGTH ? base / 1000.0 : base;
    }

    /** Absolute temperature in °C. */
    public double celsius() {
        return need(Kind.TEMPERATURE, base) - Celsius.ZERO_C;
    }

    /** Share, 0 to 1. */
    public double share() {
        return need(Kind.SHARE, base);
    }

    private double need(Kind wanted, double value) {
        if (kind != wanted) {
            throw new IllegalStateException("\"" + typed + "\" is a " + kind.word() + ", not a " + wanted.word());
        }
        return value;
    }
}
