package portwright.calc.flow;

import portwright.data.Constants;
import portwright.source.Source;

/**
 * A gas jet: gas from a supply at gauge pressure through a drilled bore into the open air.
 *
 * <p>Up to 50 mbar gauge: m = Cd A √(2 ρ Δp), ρ at atmospheric pressure (not at supply pressure) and gas temperature;
 * over-predicts the ideal-gas flow by at most 0.8 %. From 60 mbar: isentropic nozzle flow, choked when
 * p_atm/p0 ≤ (2/(k+1))^(k/(k-1)). Between the two the figure passes smoothly from one to the other.
 *
 * <p>Worked example: propane at 1 bar gauge, 15 °C, Cd 1: 548.3 kg/(s m²), choked. The gas is taken as ideal: real
 * propane at 15 °C is 1.8 % denser, 0.9 % more flow.
 *
 * @param molarMass of the gas, kg/mol
 * @param isentropicExponent of the gas, cp/cv: propane 1.131, methane 1.308, n-butane 1.095
 * @param temperature of the gas, K
 * @param atmosphericPressure Pa
 */
public record Jet(double molarMass, double isentropicExponent, double temperature, double atmosphericPressure) {

    /** Where the formulas come from. */
    public static final Source SOURCE = Source.published(
            "Orifice flow formulas for gas burners; compressible nozzle flow of an ideal gas",
            "",
            "industrial formula sheet; standard gas dynamics");

    /** Up to this gauge pressure the incompressible form holds, Pa (50 mbar). */
    public static final double INCOMPRESSIBLE_BELOW = 5000;

    /** From this gauge pressure the compressible form holds alone, Pa (60 mbar). Own judgement: no jump between the two. */
    public static final double COMPRESSIBLE_ABOVE = 6000;

    /** Share of the ideal speed that the jet keeps, from memory: velocity coefficient of a short bore. */
    public static final double VELOCITY_SHARE = 0.9;

    private static final double HIGHEST_GAUGE = 1e7;

    public Jet {
        if (!(molarMass > 0.001 && molarMass < 0.3)) {
            throw new IllegalArgumentException("molar mass of the gas " + molarMass + ": write kg/mol, propane 0.0441");
        }
        if (!(isentropicExponent > 1 && isentropicExponent < 2)) {
            throw new IllegalArgumentException(
                    "heat capacity ratio of the gas " + isentropicExponent + ": write 1.05 to 1.67");
        }
        if (!(temperature > 150 && temperature < 1000)) {
            throw new IllegalArgumentException("gas temperature " + temperature + " K: write kelvin");
        }
        if (!(atmosphericPressure > 1e4 && atmosphericPressure < 2e5)) {
            throw new IllegalArgumentException(
                    "atmospheric pressure " + atmosphericPressure + ": write pascal, 101325 at sea level");
        }
    }

    /** Density of the gas at atmospheric pressure, kg/m³: the density the incompressible formula asks for. */
    public double density() {
        return GasState.density(atmosphericPressure, molarMass, temperature);
    }

    /**
     * Mass flow, kg/s.
     *
     * @param cd discharge coefficient, 0 to 1 (see the jet classes)
     * @param area of all bores together, m²
     * @param gaugePressure at the jet, Pa above atmosphere, 0 to 100 bar
     * @throws IllegalArgumentException outside these ranges
     */
    public double massFlow(double cd, double area, double gaugePressure) {
        if (!(cd > 0 && cd <= 1)) {
            throw new IllegalArgumentException("discharge coefficient " + cd + ": write a number above 0, up to 1");
        }
        if (!(area >= 0 && area < 1)) {
            throw new IllegalArgumentException("jet area " + area + " m²: write zero or more, in square metres");
        }
        return cd * area * massFlux(gaugePressure);
    }

    /**
     * Mass flow of several equal jets, kg/s.
     *
     * @param cd discharge coefficient, 0 to 1
     * @param diameterMm bore, mm
     * @param jets how many
     * @param gaugePressure at the jet, Pa above atmosphere
     */
    public double massFlow(double cd, double diameterMm, int jets, double gaugePressure) {
        if (jets < 1) {
            throw new IllegalArgumentException("number of jets " + jets + ": write 1 or more");
        }
        return massFlow(cd, jets * area(diameterMm), gaugePressure);
    }

    /** Area of one bore, m²; diameter in mm. */
    public static double area(double diameterMm) {
        if (!(diameterMm > 0 && diameterMm < 100)) {
            throw new IllegalArgumentException("jet diameter " + diameterMm + " mm: write a diameter above 0");
        }
        return Math.PI / 4 * diameterMm * diameterMm * 1e-6;
    }

    /** Ideal mass flow through a unit of area at Cd 1, kg/(s m²). */
    public double massFlux(double gaugePressure) {
        double w = compressibleShare(gaugePressure);
        double low = Math.sqrt(2 * density() * gaugePressure);
        return w == 0 ? low : (1 - w) * low + w * compressibleFlux(gaugePressure);
    }

    /** Speed of the fully expanded jet, m/s: 0.9 √(2 Δp/ρ), above 50 mbar 0.9 times the isentropic expansion. */
    public double speed(double gaugePressure) {
        double w = compressibleShare(gaugePressure);
        double low = Math.sqrt(2 * gaugePressure / density());
        double v = w == 0 ? low : (1 - w) * low + w * expansionSpeed(gaugePressure);
        return VELOCITY_SHARE * v;
    }

    /** Momentum flow of the jet, N: mass flow, kg/s, times its speed at a gauge pressure, Pa. */
    public double momentum(double massFlow, double gaugePressure) {
        return massFlow * speed(gaugePressure);
    }

    /** Pressure ratio p_atm/p0 at and below which the jet is choked. */
    public double criticalRatio() {
        double k = isentropicExponent;
        return Math.pow(2 / (k + 1), k / (k - 1));
    }

    private static double compressibleShare(double gaugePressure) {
        if (!(gaugePressure >= 0 && gaugePressure <= HIGHEST_GAUGE)) {
            throw new IllegalArgumentException(
                    "gas pressure " + gaugePressure + " Pa: write the pressure above atmosphere, 0 to 100 bar");
        }
        double x = (gaugePressure - INCOMPRESSIBLE_BELOW) / (COMPRESSIBLE_ABOVE - INCOMPRESSIBLE_BELOW);
        return Math.max(0, Math.min(1, x));
    }

    private double compressibleFlux(double gaugePressure) {
        double k = isentropicExponent;
        double p0 = atmosphericPressure + gaugePressure;
        double r = atmosphericPressure / p0;
        double perRoot = Math.sqrt(molarMass / (Constants.R * temperature));
        if (r <= criticalRatio()) {
            return p0 * Math.sqrt(k) * perRoot * Math.pow(2 / (k + 1), (k + 1) / (2 * (k - 1)));
        }
        return p0 * perRoot * Math.sqrt(2 * k / (k - 1) * (Math.pow(r, 2 / k) - Math.pow(r, (k + 1) / k)));
    }

    private double expansionSpeed(double gaugePressure) {
        double k = isentropicExponent;
        double r = atmosphericPressure / (atmosphericPressure + gaugePressure);
        return Math.sqrt(2 * k / (k - 1) * Constants.R * temperature / molarMass * (1 - Math.pow(r, (k - 1) / k)));
    }
}
