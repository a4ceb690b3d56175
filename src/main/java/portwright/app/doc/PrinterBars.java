package portwright.app.doc;

import portwright.sheet.SheetOptions;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/**
 * What a steel rule read on the two bars of a printed sheet, as typed. Kept in the user's folder: a printer is off by the same from one day to the next.
 */
public record PrinterBars(String across, String down) {
    /** True length of the bars on every sheet, mm. */
    public static final double BAR_MM = 100;

    /** What nobody has measured yet. */
    public static final PrinterBars TRUE = new PrinterBars("100 mm", "100 mm");

    private static final String ACROSS = "printer.across";
    private static final String DOWN = "printer.down";

    /** What was typed last; what is wrong counts as not measured. */
    public static PrinterBars of(HomeFolder home) {
        var p = home.settings();
        return new PrinterBars(
                good(p.getProperty(ACROSS, TRUE.across), TRUE.across), good(p.getProperty(DOWN, TRUE.down), TRUE.down));
    }

    private static String good(String text, String usual) {
        return wrong(text) == null ? text : usual;
    }

    /** Keeps it for the next start. */
    void keep(HomeFolder home) {
        if (!equals(of(home))) {
            home.set(ACROSS, across);
            home.set(DOWN, down);
        }
    }

    String text(boolean acrossBar) {
        return acrossBar ? across : down;
    }

    PrinterBars with(boolean acrossBar, String text) {
        return acrossBar ? new PrinterBars(text, down) : new PrinterBars(across, text);
    }

    /** What the bar measured, mm. */
    double mm(boolean acrossBar) {
        return Quantity.parse(text(acrossBar), Kind.LENGTH).mm();
    }

    /** What is wrong with a reading; null when it can be corrected. */
    static String wrong(String text) {
        double mm;
        try {
            mm = Quantity.parse(text, Kind.LENGTH).mm();
        } catch (QuantityException e) {
            return e.getMessage();
        }
        double off = mm > 0 ? BAR_MM / mm - 1 : 1;
        return Math.abs(off) > SheetOptions.LARGEST_CORRECTION
                ? "Your bar is off by " + Format.plain(Math.abs(mm - BAR_MM), 1)
                        + " %. More than 1.5 % is not corrected: mend the printer's scaling first."
                : null;
    }
}
