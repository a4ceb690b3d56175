package portwright.calc.room;

/**
 * Air a canopy hood over a hot lid must draw. Two models side by side; each formula in the units of its source, SI outside.
 * Lengths m, temperatures K, flows m³/s.
 */
public final class Hood {

    private static final double FT_M = 0.3048;
    private static final double CFM = 0.00047194745;
    private static final double K_F = 1.8;

    private Hood() {}

    /**
     * Low canopy, within about 0.9 m of a round source: {@code Q = 4.7 D^2.33 dt^0.42} cfm, D = source + 1 ft, dt in °F.
     * Example: lid 0.71 m, 250 °C in a 30 °C room: 1623 m³/h. From memory of ACGIH Industrial Ventilation; the three-foot
     * limit published.
     */
    public static double lowCanopy(double sourceM, double riseK) {
        double d = Check.aboveZero(sourceM, "the source") / FT_M + 1;
        return 4.7 * Math.pow(d, 2.33) * Math.pow(Check.atLeastZero(riseK, "the temperature rise") * K_F, 0.42) * CFM;
    }

    /**
     * What a high canopy needs.
     *
     * @param flowM3PerS air to draw
     * @param plumeM plume width at the hood
     * @param hoodM hood width
     */
    public record HighCanopy(double flowM3PerS, double plumeM, double hoodM) {}

    /**
     * High canopy: {@code z = (2 Ds)^1.138; Xc = y + z; Dc = 0.5 Xc^0.88; Vf = 8 As^0.33 dt^0.42/Xc^0.25; Df = Dc + 0.8 y;
     * Q = Vf Ac + 100 (Af - Ac)} in ft, fpm, °F. Example: 4 ft source, 800 °F over the room, 10 ft up: about 19 900 cfm.
     * From memory of ACGIH Industrial Ventilation.
     */
    public static HighCanopy highCanopy(double sourceM, double riseK, double aboveM) {
        double ds = Check.aboveZero(sourceM, "the source") / FT_M;
        double y = Check.aboveZero(aboveM, "the height") / FT_M;
        double dt = Check.atLeastZero(riseK, "the temperature rise") * K_F;
        double xc = y + Math.pow(2 * ds, 1.138);
        double dc = 0.5 * Math.pow(xc, 0.88);
        double vf = 8 * Math.pow(area(ds), 0.33) * Math.pow(dt, 0.42) / Math.pow(xc, 0.25);
        double df = dc + 0.8 * y;
        double q = vf * area(dc) + 100 * (area(df) - area(dc));
        return new HighCanopy(q * CFM, dc * FT_M, df * FT_M);
    }

    /**
     * A hood's air at altitude: a plume of the same heat moves {@code Q ~ (heat/density)^(1/3)}. The lid gives off less heat in thin air, which would lessen
     * it: left out, the safe side. Derived. Example: 4000 m, swell 1.64: 1.18 times.
     *
     * @param flowM3PerS at sea level
     * @param swell density of air at sea level over that here
     */
    public static double thinAir(double flowM3PerS, double swell) {
        return Check.atLeastZero(flowM3PerS, "the flow") * Math.cbrt(Check.aboveZero(swell, "the swelling"));
    }

    private static double area(double d) {
        return Math.PI * d * d / 4;
    }
}
