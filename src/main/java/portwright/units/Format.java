package portwright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers for people: plain decimals, no exponent, no trailing zeros, no negative zero. */
public final class Format {
    private Format() {}

    /** The value with at most {@code decimals} decimals. */
    public static String plain(double value, int decimals) {
        BigDecimal d = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return d.signum() == 0 ? "0" : d.toPlainString();
    }

    /** One decimal, always shown. */
    public static String tenths(double value) {
        String s = plain(value, 1);
        return s.contains(".") ? s : s + ".0";
    }
}
