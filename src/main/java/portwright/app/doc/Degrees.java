package portwright.app.doc;

import portwright.model.UnitSystem;

/** Temperatures as the window shows them: °C, or °F beside inches. */
public final class Degrees {
    private Degrees() {}

    /** The number in the scale of the system, from °C. */
    public static double shown(double celsius, UnitSystem units) {
        return units == UnitSystem.INCH ? celsius * 9 / 5 + 32 : celsius;
    }

    /** °C of a number in the scale of the system. */
    public static double celsius(double shown, UnitSystem units) {
        return units == UnitSystem.INCH ? (shown - 32) * 5 / 9 : shown;
    }

    /** The sign of the scale. */
    public static String sign(UnitSystem units) {
        return units == UnitSystem.INCH ? "°F" : "°C";
    }

    /** A whole number with its sign, from °C. */
    public static String words(double celsius, UnitSystem units) {
        return Math.round(shown(celsius, units)) + " " + sign(units);
    }
}
