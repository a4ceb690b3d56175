package portwright.review;

import portwright.calc.flow.GasState;
import portwright.data.Constants;
import portwright.model.Design;

/** What the air pressure at the design's altitude does to room and gas; sea level where none is given. */
final class ThinAir {
    private ThinAir() {}

    /** Air pressure in Pa, standard atmosphere. */
    static double pressurePa(Design design) {
        double altitude = design.room() == null || design.room().altitude() == null
                ? 0
                : design.room().altitude().metres();
        return GasState.pressureAtAltitude(altitude);
    }

    /**
     * How far a mole swells against sea level, {@code p0/p}: 1.64 at 4000 m. The formulas of the room are those of sea level. A mole released counts as so
     * many more, for it takes up so much more of the room's air; a heat counts so many times over, for rise and plume go with heat over density; a volume
     * holds so much less gas. Openings and fans move volumes: stack and wind flow turn on ratios of density alone.
     */
    static double swell(Design design) {
        return Constants.ATMOSPHERE / pressurePa(design);
    }
}
