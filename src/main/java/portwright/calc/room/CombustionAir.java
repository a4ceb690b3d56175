package portwright.calc.room;

import portwright.data.Table;

/**
 * Room volume and openings that the fuel-gas code family asks for VENTED listed appliances (NFPA 54 9.3.2 and kin,
 * published). A kiln in reduction is neither: meeting these sizes is a floor, not proof that the air can be breathed.
 * Heat is the appliance input in W, GROSS. Range: the table's air changes 0.10 to 0.60.
 */
public final class CombustionAir {

    private static final Table TABLE = Table.load("combustion_air.csv");
    private static final double BTU_PER_H_W = 0.29307107017222;
    private static final double FT3_M3 = 0.028316846592;
    private static final double IN2_M2 = 0.00064516;

    private CombustionAir() {}

    /** Where openings lead. */
    public enum Method {
        /** Two openings to outdoors, direct or by vertical duct; the area is each one's. */
        TWO_DIRECT("two-direct"),
        /** Two openings to outdoors by horizontal ducts; the area is each one's. */
        TWO_HORIZONTAL("two-horizontal"),
        /** One opening to outdoors. */
        ONE_OUTDOOR("one-outdoor"),
        /** Two openings to another room; the area is each one's. */
        TWO_ROOM("two-room");

        private final String id;

        Method(String id) {
            this.id = id;
        }
    }

    /** Standard method: 50 ft³ per 1000 Btu/h = 4.83 m³/kW. Example: 150 000 Btu/h needs 7500 ft³. Result m³. */
    public static double standardVolumeM3(double grossW) {
        return row("standard-volume") * FT3_M3 * thousandBtu(grossW);
    }

    /**
     * Known-infiltration method: {@code V = (21 ft³/ACH)(I/1000 Btu/h)}, 15 with a fan in the appliance. Example: 30 000
     * Btu/h at 0.40: 1575 ft³.
     *
     * @param airChangesPerH known air changes, above 0; above 0.60 counts as 0.60
     * @return m³
     */
    public static double infiltrationVolumeM3(double grossW, double airChangesPerH, boolean fanAssisted) {
        double ach = Math.min(Check.aboveZero(airChangesPerH, "the air changes"), row("ach-most"));
        return row(fanAssisted ? "known-infiltration-fan" : "known-infiltration") / ach * FT3_M3 * thousandBtu(grossW);
    }

    /** Air changes an hour under which the infiltration, where it is known, must be counted. */
    public static double achLeast() {
        return row("ach-least");
    }

    /** Free area in m² of the opening, or of each of the two. Example: 50 000 Btu/h direct 12.5 in² each. */
    public static double openingM2(Method method, double grossW) {
        Table.Row r = TABLE.only("id", method.id);
        double in2 = Check.atLeastZero(grossW, "the heat") / BTU_PER_H_W / r.positive("value");
        return Math.max(in2, r.number("extra", 0)) * IN2_M2;
    }

    /**
     * Share of the openings left to make when part of the air is the room's own: {@code 1 - V/Vneeded}, not below 0; 1 where no volume is enough.
     */
    public static double shareLeft(double volumeM3, double volumeNeededM3) {
        if (volumeNeededM3 == 0) {
            return 0;
        }
        return Double.isInfinite(volumeNeededM3)
                ? 1
                : Math.max(
                        0,
                        1
                                - Check.atLeastZero(volumeM3, "the volume")
                                        / Check.aboveZero(volumeNeededM3, "the volume needed"));
    }

    private static double thousandBtu(double grossW) {
        return Check.atLeastZero(grossW, "the heat") / BTU_PER_H_W / 1000;
    }

    private static double row(String id) {
        return TABLE.only("id", id).positive("value");
    }
}
