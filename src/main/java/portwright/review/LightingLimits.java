package portwright.review;

import java.util.Map;
import java.util.Optional;
import portwright.calc.firing.OpenSpell;
import portwright.data.SafetyNumber;
import portwright.model.Design;
import portwright.model.UserLimit;
import portwright.units.BothSystems;
import portwright.units.Celsius;

/**
 * What gas is lit by, shut at and lit again by: one set of figures for rules, forecast, template and card. A limit of the design's own counts where it is
 * the safer one.
 *
 * @param floorC coldest place of the chamber at which gas may burn, °C
 * @param meterC reading that shows it, °C: with the margin for the probe's error and drift
 * @param airMinutes how long ports stand open and plate off before gas is lit, first or again, whole minutes
 */
public record LightingLimits(double floorC, double meterC, long airMinutes) {
    /** A temperature typed in another scale is at the limit, °C. */
    private static final double LEAST_UNDER = 1e-6;

    private static final String ON = "gas-on-temperature";
    private static final String OFF = "gas-off-temperature";

    /** Of a design; {@code figures} null where none were computed. */
    public static LightingLimits of(Design design, Figures figures) {
        return new LightingLimits(
                floor(design),
                meter(design),
                figures == null ? Math.round(OpenSpell.seconds() / 60) : figures.openMinutes());
    }

    /** The floor of a design, °C. */
    public static double floor(Design design) {
        double book = SafetyNumber.value("gas-on-floor");
        return Math.max(book, Math.max(own(design, ON, "stop"), own(design, OFF, "stop")));
    }

    /** The reading of a design, °C: a floor of its own keeps the margin. */
    public static double meter(Design design) {
        double margin = SafetyNumber.value("gas-on-working") - SafetyNumber.value("gas-on-floor");
        return Math.max(floor(design) + margin, own(design, ON, "caution"));
    }

    /** The floor in both scales. */
    public String floorWords() {
        return BothSystems.told(floorC, 0, "°C");
    }

    /** The reading in both scales. */
    public String meterWords() {
        return BothSystems.told(meterC, 0, "°C");
    }

    /** What forbids gas in a chamber of so many °C, as the rule {@value #ON} and in words; empty where gas may burn. */
    public static Optional<String> tooCold(Design design, double chamberC) {
        double meter = meter(design);
        return chamberC < meter - LEAST_UNDER
                ? Optional.of("Gas must not burn at " + BothSystems.told(chamberC, 0, "°C") + ", under "
                        + BothSystems.told(meter, 0, "°C") + " on the meter.")
                : Optional.empty();
    }

    /** How long gas burns clean with the plate off after lighting, whole minutes. */
    public static int cleanMinutes() {
        return (int) SafetyNumber.value("clean-fire");
    }

    /** What is done before the plate is set for the first time, in the order of the card. */
    public String beforePlate(LiveElements elements) {
        return "Lighting, over " + meterWords() + " on the meter: " + elements.opening() + "; plate off, " + airMinutes
                + " min of air, light, " + cleanMinutes() + " min of clean fire; then:";
    }

    private static double own(Design design, String rule, String name) {
        if (design.limits() == null) {
            return Double.NEGATIVE_INFINITY;
        }
        UserLimit l = design.limits().getOrDefault(rule, Map.of()).get(name);
        return l == null ? Double.NEGATIVE_INFINITY : l.value() - Celsius.ZERO_C;
    }
}
