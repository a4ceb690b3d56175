package portwright.calc.firing.log;

import java.util.Locale;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/**
 * A damper as noted in a log: an open share, or a travel of the plate. At most one of the two is there.
 *
 * @param share open share of the flues, 0 to 1
 * @param travelM travel from all shut, m
 */
record DamperCell(Double share, Double travelM) {
    /** Nothing noted. */
    static final DamperCell NONE = new DamperCell(null, null);

    private static final double LONGEST_M = 0.5;

    /** Reads a cell; null when it cannot be understood. A bare number takes the unit of the header, else it is a share in percent. */
    static DamperCell read(String text, Header h) {
        String low = text.toLowerCase(Locale.ROOT);
        if (low.isEmpty() || low.equals("-")) {
            return NONE;
        }
        if (low.matches("open|full|fully open")) {
            return new DamperCell(1.0, null);
        }
        if (low.matches("shut|closed")) {
            return new DamperCell(0.0, null);
        }
        double v = Cells.number(text, Cells.Comma.DECIMAL);
        String unit = Cells.unit(text);
        if (unit.equals("%") || unit.isEmpty() && !h.damperTravel()) {
            boolean fraction = unit.isEmpty() && v <= 1 && text.matches("[01]?[.,]\\d+");
            return v >= 0 && v <= 100 ? new DamperCell(fraction ? v : v / 100, null) : null;
        }
        double m = unit.isEmpty() ? v * h.damperM() : length(text);
        return m >= 0 && m <= LONGEST_M ? new DamperCell(null, m) : null;
    }

    private static double length(String text) {
        try {
            return Quantity.parse(text.replace(',', '.'), Kind.LENGTH).metres();
        } catch (QuantityException e) {
            return Double.NaN;
        }
    }
}
