package portwright.calc.combustion;

import portwright.data.Constants;
import portwright.source.Source;

/**
 * Dry air as oxygen and the rest; the rest (nitrogen with argon) reacts and stores heat like nitrogen.
 *
 * @param oxygen mole fraction of oxygen
 * @param molarMass kg/mol
 * @param source where the two come from
 */
public record Air(double oxygen, double molarMass, Source source) {

    /** Room air: 20.95 % oxygen, 28.9651 g/mol. The air of every figure of the product. */
    public static final Air ROOM = new Air(
            0.2095,
            0.0289651,
            Source.published(
                    "NASA Glenn thermodynamic data, record Air", "TP-2002-211556 family", "thermo.inp at a09e328"));

    /** Handbook air, 21 % oxygen and 79 % nitrogen, used by many published tables. */
    public static final Air HANDBOOK =
            new Air(0.21, 0.21 * 0.0319988 + 0.79 * 0.0280134, Source.practice("handbook air 21/79"));

    private static final Species O2 = Species.of("O2");
    private static final Species N2 = Species.of("N2");

    public Air {
        if (!(oxygen > 0.05 && oxygen < 1)) {
            throw new IllegalArgumentException(
                    "oxygen share of air " + oxygen + ": write a fraction from 0.05 to 1, room air is 0.2095");
        }
        if (!(molarMass > 0.02 && molarMass < 0.04)) {
            throw new IllegalArgumentException(
                    "molar mass of air " + molarMass + ": write kg/mol, room air is 0.0289651");
        }
    }

    /** Mole fraction of everything but oxygen. */
    public double nitrogen() {
        return 1 - oxygen;
    }

    /** Enthalpy, J per mol of air (elements at 298.15 K are zero); t in K. */
    public double enthalpy(double t) {
        return oxygen * O2.enthalpy(t) + nitrogen() * N2.enthalpy(t);
    }

    /** Density of the ideal gas, kg/m³; p in Pa, t in K. */
    public double density(double p, double t) {
        return p * molarMass / (Constants.R * t);
    }
}
