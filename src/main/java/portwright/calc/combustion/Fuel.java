package portwright.calc.combustion;

import portwright.data.Constants;
import portwright.source.Source;

/**
 * A fuel gas. Heats of combustion hold for 15 °C (the product's gas reference); the enthalpy of formation holds for
 * 25 °C and is derived from the net heat at 25 °C, so that heat flows and heating value agree.
 *
 * @param name as in the design file: propane, butane, methane, natural-gas
 * @param carbon atoms per mol of fuel; likewise hydrogen, oxygen, nitrogen
 * @param molarMass kg/mol
 * @param grossHeat J/mol at 15 °C
 * @param netHeat J/mol at 15 °C
 * @param formationEnthalpy J/mol at 298.15 K
 * @param heatCapacity J/(mol K) near room temperature (288 K)
 * @param source where the molar constants come from
 */
public record Fuel(
        String name,
        double carbon,
        double hydrogen,
        double oxygen,
        double nitrogen,
        double molarMass,
        double grossHeat,
        double netHeat,
        double formationEnthalpy,
        double heatCapacity,
        Source source) {

    public Fuel {
        if (!(carbon >= 0 && hydrogen >= 0 && oxygen >= 0 && nitrogen >= 0 && carbon + hydrogen / 4 - oxygen / 2 > 0)) {
            throw new IllegalArgumentException("fuel '" + name + "' needs no oxygen: give a gas that burns");
        }
        if (!(molarMass > 0 && netHeat > 0 && grossHeat >= netHeat && heatCapacity > Constants.R)) {
            throw new IllegalArgumentException(
                    "fuel '" + name + "': molar mass, net heat and heat capacity must be above zero, "
                            + "gross heat not below net heat");
        }
    }

    /** Oxygen for complete combustion, mol per mol of fuel: c + h/4 - o/2. */
    public double stoichOxygen() {
        return carbon + hydrogen / 4 - oxygen / 2;
    }

    /** Air for complete combustion, mol per mol of fuel (equal to m³ per m³ of ideal gas). */
    public double stoichAir(Air air) {
        return stoichOxygen() / air.oxygen();
    }

    /** Air for complete combustion, kg per kg of fuel. */
    public double stoichAirByMass(Air air) {
        return stoichAir(air) * air.molarMass() / molarMass;
    }

    /** Net heat, J/kg. */
    public double netHeatByMass() {
        return netHeat / molarMass;
    }

    /** Gross heat, J/kg. */
    public double grossHeatByMass() {
        return grossHeat / molarMass;
    }

    /** Heat capacity ratio of the ideal gas near room temperature, cp/(cp - R). */
    public double isentropicExponent() {
        return heatCapacity / (heatCapacity - Constants.R);
    }

    /** Enthalpy with formation, J/mol; t in K, near room temperature (250 to 350 K). */
    public double enthalpy(double t) {
        return formationEnthalpy + heatCapacity * (t - Constants.T_FORMATION);
    }
}
