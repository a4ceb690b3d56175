package portwright.units;

/** Inches as the trade writes them. */
public final class InchFraction {
    private static final double INCH_MM = 25.4;

    private InchFraction() {}

    /**
     * A length as whole inches and a fraction, for example {@code 1 3/8 in}.
     *
     * @param mm length, mm, not negative
     * @param parts the finest fraction: 8, 16, 32 or 64
     */
    public static String words(double mm, int parts) {
        long n = Math.round(mm / INCH_MM * parts);
        long whole = n / parts;
        long top = n % parts;
        long bottom = parts;
        while (top != 0 && top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        if (top == 0) {
            return whole + " in";
        }
        return (whole == 0 ? "" : whole + " ") + top + "/" + bottom + " in";
    }

    /** How far {@link #words} is from the length, mm. */
    public static double error(double mm, int parts) {
        return Math.round(mm / INCH_MM * parts) * INCH_MM / parts - mm;
    }
}
