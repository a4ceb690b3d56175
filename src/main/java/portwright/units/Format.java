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

    /** A number for people: three figures, thousands apart from five digits on, a minus sign as in print. */
    public static String figures(double v) {
        if (v < 0) {
            return "−" + figures(-v);
        }
        if (v == 0) {
            return "0";
        }
        double size = Math.pow(10, Math.floor(Math.log10(v)) - 2);
        double rounded = v >= 1000 ? Math.round(v / size) * size : v;
        String plain = plain(rounded, (int) Math.max(0, Math.min(6, -Math.floor(Math.log10(v)) + 2)));
        int dot = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder b = new StringBuilder(plain);
        for (int i = dot - 3; i > 0 && dot > 4; i -= 3) {
            b.insert(i, ' ');
        }
        return b.toString();
    }

    /** One decimal, always shown. */
    public static String tenths(double value) {
        String s = plain(value, 1);
        return s.contains(".") ? s : s + ".0";
    }
}
