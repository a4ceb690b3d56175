package portwright.app.board;

import portwright.app.doc.Degrees;
import portwright.app.doc.Extras;
import portwright.model.UnitSystem;
import portwright.units.Celsius;

/**
 * What the section shows of the fire, from the last full review.
 *
 * @param head first line in the chamber
 * @param lambda second line, bold
 * @param neutralMm height of the neutral level above the floor; null when there is none
 * @param floorPa pressure at the floor, chamber minus room
 * @param lidPa pressure at the lid
 * @param damper words at the plate
 * @param known whether there are figures
 */
public record SectionWords(
        String head, String lambda, Double neutralMm, double floorPa, double lidPa, String damper, boolean known) {
    public static final SectionWords NONE = new SectionWords("", "", null, 0, 0, "", false);

    /** Reads the state at the top temperature with the damper as the design says. */
    public static SectionWords of(Extras extras, UnitSystem units) {
        var gas = extras.gas();
        if (gas == null) {
            return NONE;
        }
        var d = gas.balance();
        var band = gas.band().lambda();
        String lambda = d.lambda().isPresent()
                ? String.format(java.util.Locale.ROOT, "lambda %.2f", d.lambda().getAsDouble())
                        + (band.low() == null
                                ? ""
                                : String.format(java.util.Locale.ROOT, " (%.2f–%.2f)", band.low(), band.high()))
                : "an inlet spills";
        return new SectionWords(
                "chamber at " + Degrees.words(gas.topK() - Celsius.ZERO_C, units),
                lambda,
                d.neutralLevel().isPresent() ? d.neutralLevel().getAsDouble() * 1000 : null,
                d.floorPressure(),
                d.lidPressure(),
                Math.round(gas.open() * 100) + " % open",
                true);
    }
}
