package portwright.calc.firing.record;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with an optional unit behind it, decimal point or decimal comma. */
record Numbers(double value, String unit) {
    private static final Pattern FORM =
            Pattern.compile("([+-]?(?:\\d{1,9}(?:[.,]\\d{0,9})?|[.,]\\d{1,9}))\\s*([^\\d].*)?");

    /** Null when the cell holds no number. */
    static Numbers of(String cell) {
        Matcher m = FORM.matcher(cell);
        if (!m.matches()) {
            return null;
        }
        double v = Double.parseDouble(m.group(1).replace(',', '.'));
        return new Numbers(v, m.group(2) == null ? "" : m.group(2).strip());
    }
}
