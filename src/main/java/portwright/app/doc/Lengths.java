package portwright.app.doc;

import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;
import portwright.units.Inches;

/** Lengths as the window writes and shows them. */
public final class Lengths {
    private static final double INCH = 25.4;
    private static final int FINEST = 64;

    private Lengths() {}

    /** A length for the file, exact to 0.1 µm: a fraction where it is one, else a decimal, in the user's unit. */
    public static String typed(double mm, UnitSystem units) {
        if (units != UnitSystem.INCH) {
            return Format.plain(mm, 4) + " mm";
        }
        double parts = mm / INCH * FINEST;
        if (Math.abs(parts - Math.rint(parts)) < 1e-6) {
            String w = InchFraction.words(Math.abs(Math.rint(parts) * INCH / FINEST), FINEST);
            return mm < 0 && Math.rint(parts) != 0 ? "-" + w : w;
        }
        return Format.plain(mm / INCH, 5) + " in";
    }

    /** A length to look at: 1/32 in or 0.1 mm. */
    public static String shown(double mm, UnitSystem units) {
        String plain =
                units == UnitSystem.INCH ? InchFraction.words(Math.abs(mm), 32) : Format.plain(Math.abs(mm), 1) + " mm";
        return mm < 0 && !plain.startsWith("0 ") ? "−" + plain : plain;
    }

    /** Travel of a damper plate, as a hand can set it and without its unit: whole mm, or 1/16 in. */
    public static String travel(double mm, UnitSystem units) {
        return units == UnitSystem.INCH ? Inches.nearest(mm).replace(" in", "") : Format.plain(Math.rint(mm), 0);
    }

    /** The unit of a small length. */
    public static String sign(UnitSystem units) {
        return units == UnitSystem.INCH ? "in" : "mm";
    }

    /** The other system, small beside. */
    public static String other(double mm, UnitSystem units) {
        return shown(mm, units == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH);
    }

    /** Rounds to the grain at which a hand places things: 1/16 in or 1 mm; fine 1/64 in or 0.1 mm. */
    public static double grain(double mm, UnitSystem units, boolean fine) {
        boolean inch = units == UnitSystem.INCH;
        double g = fine ? inch ? INCH / FINEST : 0.1 : inch ? INCH / 16 : 1;
        return Math.rint(mm / g) * g;
    }
}
