package portwright.units;

/** Lengths as a tape in inches shows them. */
public final class Inches {
    private static final int SIXTEENTHS = 16;
    private static final int THIRTY_SECONDS = 32;
    private static final double EXACT_MM = 1e-6;

    private Inches() {}

    /** Nearest sixteenth: {@code 5 7/8 in}. */
    public static String nearest(double mm) {
        return nearest(mm, SIXTEENTHS);
    }

    /** Nearest {@code 1/parts} in; {@code parts} 2, 4, 8, 16, 32 or 64. A negative length has a minus sign. */
    public static String nearest(double mm, int parts) {
        String words = InchFraction.words(Math.abs(mm), parts);
        return mm < 0 && !words.equals("0 in") ? "-" + words : words;
    }

    /** Nearest thirty-second. */
    public static String fine(double mm) {
        return nearest(mm, THIRTY_SECONDS);
    }

    /** Whether the length is a whole number of {@code 1/parts} in, to a millionth of a millimetre. */
    public static boolean exact(double mm, int parts) {
        return Math.abs(InchFraction.error(Math.abs(mm), parts)) <= EXACT_MM;
    }
}
