package portwright.units;

/** Lengths as a tape in inches shows them. */
public final class Inches {
    private static final int SIXTEENTHS = 16;
    private static final int THIRTY_SECONDS = 32;
    /** From here on sixteenths are near enough; below, thirty-seconds, mm. */
    private static final double SIXTEENTHS_FROM_MM = 10;
    /** Below this a fraction tells too little, mm. */
    private static final double FRACTIONS_FROM_MM = 3;

    private static final int THOUSANDTHS = 3;

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

    /**
     * A measured length as findings, gauges and drawings say it: to the nearest sixteenth, under 10 mm to the nearest thirty-second, under 3 mm in
     * thousandths. A negative length has a minus sign.
     */
    public static String told(double mm) {
        double size = Math.abs(mm);
        String words = size < FRACTIONS_FROM_MM
                ? thousandths(size)
                : InchFraction.words(size, size < SIXTEENTHS_FROM_MM ? THIRTY_SECONDS : SIXTEENTHS);
        return mm < 0 && !words.equals("0 in") ? "−" + words : words;
    }

    /** The same beside another one: in thousandths where two lengths that differ would read alike. */
    public static String told(double mm, double otherMm) {
        return mm != otherMm && told(mm).equals(told(otherMm))
                ? (mm < 0 ? "−" : "") + thousandths(Math.abs(mm))
                : told(mm);
    }

    private static String thousandths(double mm) {
        return Display.decimalInch(mm, THOUSANDTHS);
    }

    /** Nearest thirty-second. */
    public static String fine(double mm) {
        return nearest(mm, THIRTY_SECONDS);
    }
}
