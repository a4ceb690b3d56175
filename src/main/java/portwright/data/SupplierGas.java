package portwright.data;

import java.util.LinkedHashMap;
import java.util.Map;

/** A natural gas by its supplier's figures: methane, ethane and nitrogen in the mole shares that give heating value and density. */
public final class SupplierGas {

    /** A mole of ideal gas at 15 °C and 1 atm, m³. */
    private static final double MOLAR_VOLUME_15C = Constants.R * Constants.T_GAS / Constants.ATMOSPHERE;

    /** Slack for rounded figures of a supplier: a share this far below zero is taken as zero. */
    private static final double ROUNDING_SLACK = 0.02;

    private SupplierGas() {}

    /**
     * Mole shares by component.
     *
     * @param heatPerM3 J/m³ at 15 °C, 1 atm
     * @param density kg/m³ at 15 °C, 1 atm
     * @param net whether the heating value is net
     * @throws IllegalArgumentException if the pair fits no such gas
     */
    public static Map<String, Double> shares(double heatPerM3, double density, boolean net) {
        if (!(heatPerM3 > 1e6 && heatPerM3 < 1e8)) {
            throw new IllegalArgumentException("heating value of natural gas " + heatPerM3 / 1e6
                    + " MJ/m³: write the supplier's figure, usually 31 to 45 MJ/m³");
        }
        if (!(density > 0.1 && density < 2)) {
            throw new IllegalArgumentException("density of natural gas " + density
                    + " kg/m³: write the supplier's figure at 15 °C, usually 0.68 to 0.85 kg/m³");
        }
        Map<String, GasComponent> parts = GasComponent.load();
        GasComponent m = parts.get("methane");
        GasComponent e = parts.get("ethane");
        GasComponent n = parts.get("nitrogen");
        double heat = heatPerM3 * MOLAR_VOLUME_15C;
        double mass = density * MOLAR_VOLUME_15C;
        double hm = net ? m.net15() : m.gross15();
        double he = net ? e.net15() : e.gross15();
        double a1 = m.molarMass() - n.molarMass();
        double a2 = e.molarMass() - n.molarMass();
        double b = mass - n.molarMass();
        double det = a1 * he - a2 * hm;
        double xm = (b * he - a2 * heat) / det;
        double xe = (a1 * heat - b * hm) / det;
        double xn = 1 - xm - xe;
        if (Math.min(xm, Math.min(xe, xn)) < -ROUNDING_SLACK) {
            throw new IllegalArgumentException(
                    "heating value " + heatPerM3 / 1e6 + " MJ/m³ " + (net ? "net" : "gross") + " and density " + density
                            + " kg/m³ fit no natural gas: check net against gross, and m³ at 15 °C");
        }
        Map<String, Double> shares = new LinkedHashMap<>();
        shares.put("methane", Math.max(0, xm));
        shares.put("ethane", Math.max(0, xe));
        shares.put("nitrogen", Math.max(0, xn));
        return shares;
    }
}
