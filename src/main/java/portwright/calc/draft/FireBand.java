package portwright.calc.draft;

/**
 * 5 to 95 % ranges of one state of the kiln. Unmixed gas (CO and O2 side by side) and uneven temperature are left out.
 *
 * @param lambda spilled draws count as the richest
 * @param coDry mole fraction, dry; draws too rich for a figure count as the highest, so the high end may be absent
 * @param probeMv oxygen probe, mV
 * @param floorPressure Pa
 * @param lidPressure Pa
 * @param inletDrive smallest drive over the inlets, Pa
 * @param neutralLevel m above the floor
 * @param spillShare share of draws in which an inlet spills
 * @param cleanShare share of draws with lambda 1 or more
 */
public record FireBand(
        Range lambda,
        Range coDry,
        Range probeMv,
        Range floorPressure,
        Range lidPressure,
        Range inletDrive,
        Range neutralLevel,
        double spillShare,
        double cleanShare) {}
