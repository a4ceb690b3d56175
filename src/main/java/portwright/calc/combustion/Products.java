package portwright.calc.combustion;

import portwright.data.Constants;

/**
 * Combustion products in equilibrium, per mol of fuel.
 *
 * @param equilibrium the constants at the temperature
 * @param fuel the fuel
 * @param air the air
 * @param lambda air over stoichiometric air
 * @param pressure absolute, Pa
 * @param co mol per mol of fuel; likewise co2, h2, h2o, o2, n2 (argon of the air counts as nitrogen)
 * @param solidCarbon mol per mol of fuel, only where the oxygen does not reach for CO
 * @param oxygenPressure partial pressure of oxygen, Pa
 */
public record Products(
        Equilibrium equilibrium,
        Fuel fuel,
        Air air,
        double lambda,
        double pressure,
        double co,
        double co2,
        double h2,
        double h2o,
        double o2,
        double n2,
        double solidCarbon,
        double oxygenPressure) {

    /** Lowest lambda at which the composition is more than formal. */
    public static final double LAMBDA_VALID = 0.4;

    /** Lowest temperature at which the composition is more than formal, K (800 °C). */
    public static final double T_VALID = 800 + Constants.ZERO_CELSIUS;

    /** Highest temperature at which six species are enough, K (1400 °C). */
    public static final double T_VALID_HIGH = 1400 + Constants.ZERO_CELSIUS;

    /**
     * The products of one mol of fuel.
     *
     * @param lambda air over stoichiometric air, above 0
     * @param temperature K, 200 to 3500
     * @param pressure absolute, Pa
     * @throws IllegalArgumentException outside these ranges
     */
    public static Products of(Fuel fuel, Air air, double lambda, double temperature, double pressure) {
        return Equilibrium.at(temperature).burn(fuel, air, lambda, pressure);
    }

    /** K. */
    public double temperature() {
        return equilibrium.temperature();
    }

    /**
     * True where the figures are only formal and no digits may be shown: lambda below 0.4 (methane, soot), below 800 °C
     * (the gas does not reach equilibrium) or above 1400 °C (radicals and NO are left out).
     */
    public boolean formal() {
        return lambda < LAMBDA_VALID || temperature() < T_VALID || temperature() > T_VALID_HIGH;
    }

    /** Moles of gas with water vapour. */
    public double wetMoles() {
        return co + co2 + h2 + h2o + o2 + n2;
    }

    /** Moles of gas without water vapour. */
    public double dryMoles() {
        return co + co2 + h2 + o2 + n2;
    }

    /** Mole fraction of CO in the dry gas. */
    public double dryCo() {
        return co / dryMoles();
    }

    /** Mole fraction of CO2 in the dry gas. */
    public double dryCo2() {
        return co2 / dryMoles();
    }

    /** Mole fraction of H2 in the dry gas. */
    public double dryH2() {
        return h2 / dryMoles();
    }

    /** Mole fraction of O2 in the dry gas. */
    public double dryO2() {
        return o2 / dryMoles();
    }

    /** Air taken in, mol per mol of fuel. */
    public double airMoles() {
        return lambda * fuel.stoichAir(air);
    }

    /** Mass of fuel and air, kg per mol of fuel: the mass of the products with any solid carbon. */
    public double mass() {
        return fuel.molarMass() + airMoles() * air.molarMass();
    }

    /**
     * Molar mass of the products, kg/mol: mass of fuel and air over moles of gas, so that mass is kept exactly; solid
     * carbon rides along.
     */
    public double molarMass() {
        return mass() / wetMoles();
    }

    /** Enthalpy with formation (elements at 298.15 K are zero), J per mol of fuel. */
    public double enthalpy() {
        double t = temperature();
        return co * Equilibrium.CO.enthalpy(t)
                + co2 * Equilibrium.CO2.enthalpy(t)
                + h2 * Equilibrium.H2.enthalpy(t)
                + h2o * Equilibrium.H2O.enthalpy(t)
                + o2 * Equilibrium.O2.enthalpy(t)
                + n2 * Equilibrium.N2.enthalpy(t)
                + solidCarbon * Equilibrium.GRAPHITE.enthalpy(t);
    }

    /** Heat capacity at fixed composition, J/K per mol of fuel. */
    public double heatCapacity() {
        double t = temperature();
        return co * Equilibrium.CO.heatCapacity(t)
                + co2 * Equilibrium.CO2.heatCapacity(t)
                + h2 * Equilibrium.H2.heatCapacity(t)
                + h2o * Equilibrium.H2O.heatCapacity(t)
                + o2 * Equilibrium.O2.heatCapacity(t)
                + n2 * Equilibrium.N2.heatCapacity(t)
                + solidCarbon * Equilibrium.GRAPHITE.heatCapacity(t);
    }

    /** Enthalpy of the fuel and air that came in at a temperature (K, near room), J per mol of fuel. */
    public double enthalpyIn(double inletTemperature) {
        return fuel.enthalpy(inletTemperature) + airMoles() * air.enthalpy(inletTemperature);
    }

    /**
     * Heat left in the chamber, J per mol of fuel: enthalpy of fuel and air in, less enthalpy of the products out at their
     * temperature. Negative when the air takes more heat than the fuel gives.
     */
    public double availableHeat(double inletTemperature) {
        return enthalpyIn(inletTemperature) - enthalpy();
    }

    /**
     * Activity of solid carbon against graphite, B pCO²/pCO2. At or above 1 soot is stable. Where solid carbon is in the
     * products it is 1.
     */
    public double carbonActivity() {
        if (solidCarbon > 0 || co2 == 0) {
            return 1;
        }
        double pBar = pressure / Constants.BAR / wetMoles();
        return Math.exp(equilibrium.lnB()) * co * co * pBar / co2;
    }

    /** True where solid carbon is stable in equilibrium. False is no promise: an unmixed flame soots far earlier. */
    public boolean sootStable() {
        return carbonActivity() >= 1;
    }

    /** Electromotive force of a zirconia probe in this gas at this temperature, mV; see {@link OxygenProbe}. */
    public double probeMv() {
        return OxygenProbe.emfMv(oxygenPressure, temperature());
    }
}
