package portwright.calc.supply;

import portwright.data.SafetyNumber;

/** How fast gas boils off a cylinder for as long as one likes: heat from the air through the wetted wall. */
public final class BoilOff {

    private static final double ATMOSPHERE_PA = 101_325;

    private BoilOff() {}

    /**
     * Continuous boil-off in kg/s: {@code m = U A (Ta - TL) / h}.
     *
     * <p>Zero when the air is no warmer than the liquid may be. U = 10.3 W/m²K and the bottom weight 1.5 are fitted to a
     * published 50-cell table of a 100 lb cylinder (0 to 70 °F, 10 to 100 lb, liquid down to its boiling point): rms 1.8 %,
     * worst -8.5 %. Other sizes are extrapolated: ±25 %. A frosted wall passes about 0.65 of it. Example: 20 lb left in a
     * 20 lb cylinder, air 10 °C, liquid at -42 °C: 0.431 g/s, 21.6 kW gross.
     *
     * @param cylinder the cylinder
     * @param liquid what is in it
     * @param liquidKg how much is left
     * @param ambientK air temperature
     * @param liquidK lowest temperature the liquid may reach
     */
    public static double continuousKgPerS(
            Drum cylinder, Liquid liquid, double liquidKg, double ambientK, double liquidK) {
        double area = cylinder.wettedAreaM2(liquidKg, liquid.densityKgPerM3());
        double drive = Math.max(0, ambientK - liquidK);
        return SafetyNumber.value("boil-off-u") * area * drive / liquid.boilingLatentJPerKg();
    }

    /**
     * Lowest liquid temperature in K at which a regulator still works: the saturation temperature at its outlet pressure
     * plus 1 bar of headroom plus the atmosphere. Headroom: common practice, no source. Example: propane, outlet 10 psig
     * with no headroom -29.6 °C.
     *
     * @param outletGaugePa pressure the regulator gives, gauge
     * @param headroomPa what it needs above that
     * @throws IllegalArgumentException if the liquid never has that pressure up to 60 °C
     */
    public static double coldestUsefulK(Liquid liquid, double outletGaugePa, double headroomPa) {
        if (!(outletGaugePa >= 0 && headroomPa >= 0)) {
            throw new IllegalArgumentException(
                    "pressures must be at least 0, got " + outletGaugePa + " and " + headroomPa + " Pa");
        }
        double p = Math.max(outletGaugePa + headroomPa + ATMOSPHERE_PA, liquid.vapourPressurePa(liquid.minK()));
        return liquid.saturationK(p);
    }
}
