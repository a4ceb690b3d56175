package portwright.calc.combustion;

import portwright.data.Constants;
import portwright.source.Source;

/**
 * Zirconia oxygen probe with room air as reference: E = R T/(4 F) ln(0.2095 atm/pO2), positive in reducing gas. T is the
 * probe's own temperature. Worked example: propane at lambda 0.90, 1200 °C, 1 atm, 667.5 mV.
 */
public final class OxygenProbe {

    /** The published form: slope R ln 10/(4 F) = 0.0496 mV/K. */
    public static final Source SOURCE =
            Source.published("Zirconia probe equation E = 0.0496 T log10(pO2/0.209)", "", "probe maker's page");

    /** Oxygen share of the reference air. */
    public static final double REFERENCE_OXYGEN = 0.2095;

    /** Between these lambdas one figure means nothing: show the range. */
    public static final double LAMBDA_ILL_LOW = 0.98;

    /** Upper end of the ill-conditioned span. */
    public static final double LAMBDA_ILL_HIGH = 1.02;

    private OxygenProbe() {}

    /**
     * Electromotive force, mV.
     *
     * @param oxygenPressure partial pressure of oxygen, Pa (not bar, not atm), above 0
     * @param temperature of the probe, K
     * @throws IllegalArgumentException for zero or negative input
     */
    public static double emfMv(double oxygenPressure, double temperature) {
        if (!(oxygenPressure > 0 && oxygenPressure < 1e8)) {
            throw new IllegalArgumentException(
                    "oxygen pressure " + oxygenPressure + " Pa: the probe needs a value above 0");
        }
        checkTemperature(temperature);
        return 1e3
                * Constants.R
                * temperature
                / (4 * Constants.FARADAY)
                * Math.log(REFERENCE_OXYGEN * Constants.ATMOSPHERE / oxygenPressure);
    }

    /** Partial pressure of oxygen, Pa, that gives an electromotive force, mV, at a probe temperature, K. */
    public static double oxygenPressure(double emfMv, double temperature) {
        checkTemperature(temperature);
        if (!(emfMv > -1e3 && emfMv < 3e3)) {
            throw new IllegalArgumentException("probe reading " + emfMv + " mV: write millivolts, -100 to 1300");
        }
        return REFERENCE_OXYGEN
                * Constants.ATMOSPHERE
                * Math.exp(-emfMv * 1e-3 * 4 * Constants.FARADAY / (Constants.R * temperature));
    }

    /** True where the reading swings by hundreds of millivolts within the uncertainty of lambda. */
    public static boolean illConditioned(double lambda) {
        return lambda >= LAMBDA_ILL_LOW && lambda <= LAMBDA_ILL_HIGH;
    }

    private static void checkTemperature(double t) {
        if (!(t >= Equilibrium.T_LOWEST && t <= Equilibrium.T_HIGHEST)) {
            throw new IllegalArgumentException("probe temperature " + t + " K: write kelvin from 200 to 3500");
        }
    }
}
