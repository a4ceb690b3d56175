package portwright.review;

import java.util.Locale;
import portwright.model.Design;
import portwright.model.UnitSystem;

/** The scale in which whoever wrote a design reads the kiln's meter. */
public final class MeterScale {
    private MeterScale() {}

    /** Whether it is °F: the scale of the first step that names a temperature; where none does, °F unless the design is metric. */
    public static boolean fahrenheit(Design design) {
        boolean usual = design.units() != UnitSystem.METRIC;
        return design.firing() == null || design.firing().steps() == null
                ? usual
                : design.firing().steps().stream()
                        .filter(s -> s.to() != null)
                        .findFirst()
                        .map(s -> s.to().typed().toUpperCase(Locale.ROOT).endsWith("F"))
                        .orElse(usual);
    }
}
