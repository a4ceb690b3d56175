package portwright.review;

import portwright.calc.combustion.AtmosphereLevel;
import portwright.units.BothSystems;
import portwright.units.Celsius;

/**
 * One state that the firing asks for: a step's level at one of its temperatures, with the damper at the level's middle.
 *
 * @param step index from 0
 * @param level asked for; null when the step names none and the design's damper setting stands
 * @param kelvin chamber
 * @param open open share, 0 to 1
 */
public record FireSetting(int step, AtmosphereLevel level, double kelvin, double open) {
    /** Words for messages. */
    public String words() {
        return (level == null ? "the stated damper" : level.id()) + " in step " + (step + 1) + " at "
                + BothSystems.told(kelvin - Celsius.ZERO_C, 0, "°C");
    }
}
