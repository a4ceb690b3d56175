package portwright.app.doc;

import portwright.model.UnitSystem;

/** Figures of the foot in the user's own system. */
final class Measures {
    /** Of the chamber, given in litres. */
    static final Measure VOLUME = new Measure("L", 1, 0, "ft³", 1 / 28.316846592, 2);

    /** Of walls, given in m². */
    static final Measure WALLS = new Measure("m²", 1, 2, "ft²", 1 / 0.09290304, 1);

    /** Of holes, given in mm². */
    static final Measure HOLES = new Measure("cm²", 0.01, 1, "in²", 1 / 645.16, 2);

    /** Gas burnt, given in kg/h. */
    static final Measure GAS_RATE = new Measure("kg/h", 1, 2, "lb/h", 1 / 0.45359237, 2);

    /** Gas burnt, given in kg. */
    static final Measure GAS = new Measure("kg", 1, 2, "lb", 1 / 0.45359237, 1);

    /** Air, given in m³/h. */
    static final Measure AIR = new Measure("m³/h", 1, 0, "cfm", 1 / (0.028316846592 * 60), 0);

    /** Heat of the gas, given in kW. */
    static final Measure HEAT = new Measure("kW", 1, 1, "Btu/h", 1 / 0.00029307107, 0);

    /** Heat of the gas by the chamber's volume, given in W/L. */
    static final Measure LOAD = new Measure("W/L", 1, 0, "Btu/h per ft³", 28.316846592 / 0.29307107, 0);

    private final boolean inch;

    Measures(UnitSystem units) {
        inch = units == UnitSystem.INCH;
    }

    /** How one kind of figure is written: unit, factor from what is given, decimals; metric, then inch-pound. */
    record Measure(String metric, double toMetric, int decimals, String inch, double toInch, int inchDecimals) {}

    /** A figure; a dash where the value is not known. */
    Figure figure(String label, Double given, Measure m) {
        String value = given == null || !Double.isFinite(given)
                ? FootFigures.NONE
                : FootFigures.plain(given * (inch ? m.toInch() : m.toMetric()), inch ? m.inchDecimals() : m.decimals());
        return new Figure(label, value, inch ? m.inch() : m.metric());
    }
}
