package portwright.calc.flow;

import portwright.data.Constants;

/** Density, viscosity and pressure of gases. */
public final class GasState {

    private static final double SUTHERLAND_VISCOSITY = 1.716e-5;
    private static final double SUTHERLAND_CONSTANT = 110.4;
    private static final double ISA_LAPSE_SHARE = 2.25577e-5;
    private static final double ISA_EXPONENT = 5.25588;

    private GasState() {}

    /**
     * Density of an ideal gas, kg/m³: p M/(R T).
     *
     * @param pressure absolute, Pa
     * @param molarMass kg/mol
     * @param temperature K
     */
    public static double density(double pressure, double molarMass, double temperature) {
        if (!(pressure > 0 && molarMass > 0 && temperature > 0)
                || Double.isInfinite(pressure * molarMass / temperature)) {
            throw new IllegalArgumentException("density needs pressure, molar mass and temperature above 0, not "
                    + pressure + " Pa, " + molarMass + " kg/mol, " + temperature + " K");
        }
        return pressure * molarMass / (Constants.R * temperature);
    }

    /**
     * Dynamic viscosity of air, Pa s: 1.716e-5 (T/273.15)^1.5 · 383.55/(T + 110.4). Used for combustion products too.
     * Range 200 to 1700 K. Worked example: 1200 °C gives 5.2e-5. From memory: Sutherland's formula.
     *
     * @param temperature K
     */
    public static double viscosity(double temperature) {
        if (!(temperature > 0 && temperature < 5000)) {
            throw new IllegalArgumentException("viscosity at " + temperature + " K: write kelvin, 200 to 1700");
        }
        double x = temperature / Constants.ZERO_CELSIUS;
        return SUTHERLAND_VISCOSITY
                * x
                * Math.sqrt(x)
                * (Constants.ZERO_CELSIUS + SUTHERLAND_CONSTANT)
                / (temperature + SUTHERLAND_CONSTANT);
    }

    /**
     * Air pressure at an altitude in the standard atmosphere, Pa: 101325 (1 - 2.25577e-5 h)^5.25588. Range -500 to 11000 m.
     * From memory: ISO 2533.
     *
     * @param altitude above sea level, m
     */
    public static double pressureAtAltitude(double altitude) {
        if (!(altitude >= -500 && altitude <= 11000)) {
            throw new IllegalArgumentException(
                    "altitude " + altitude + " m: write metres above the sea, -500 to 11000");
        }
        return Constants.ATMOSPHERE * Math.pow(1 - ISA_LAPSE_SHARE * altitude, ISA_EXPONENT);
    }
}
