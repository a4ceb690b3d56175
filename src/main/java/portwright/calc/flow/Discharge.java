package portwright.calc.flow;

import portwright.source.Source;

/**
 * What a round hole through brick passes of the ideal flow, and what a damper over its mouth takes of that.
 *
 * <p>1/Cd = 1/Cd∞ + (20/Re)(1 + 2.25 L/d) - 0.005 (L/d)/(1 + 7.5 log10(0.00015 Re)²) with the ideal Reynolds number
 * Re = d √(2 Δp ρ)/μ. The two Reynolds terms hold at every L/d. Below them the flow is laminar and falls with Δp itself, so
 * the flow is smooth through zero.
 *
 * <p>Source: Lichtarowicz, Duggins and Markland 1965, from memory (the end of high Reynolds numbers read, 0.82).
 */
public final class Discharge {
    /** Source of the discharge coefficient. */
    public static final Source SOURCE = Source.memory(
            "Lichtarowicz, Duggins and Markland, discharge coefficients for incompressible "
                    + "non-cavitating flow through long orifices",
            "1965",
            "");

    /** Longest hole, in diameters, that the source covers. */
    public static final double LONGEST = 10;

    private static final double CD_THIN = 0.61;
    private static final double CD_SHORT_TUBE = 0.81;
    private static final double THIN_TO = 0.3;
    private static final double REATTACHED_FROM = 1.5;
    private static final double TUBE_FROM = 2;

    private static final double LAMINAR = 20;
    private static final double LAMINAR_LENGTH = 2.25;
    private static final double DIP = 0.005;
    private static final double DIP_WIDTH = 7.5;
    private static final double DIP_SCALE = 0.00015;
    private static final double LN10 = Math.log(10);

    private Discharge() {}

    /**
     * Discharge coefficient of a hole.
     *
     * @param slenderness length over diameter, L/d
     * @param reynolds ideal Reynolds number
     * @throws IllegalArgumentException for a Reynolds number not above 0
     */
    public static double cd(double slenderness, double reynolds) {
        if (!(reynolds > 0)) {
            throw new IllegalArgumentException("Reynolds number " + reynolds + ": write a number above 0");
        }
        return 1
                / (1 / cdInfinite(slenderness)
                        + laminar(slenderness) / reynolds
                        - dip(slenderness) * dipShare(dipAt(reynolds)));
    }

    /** Ideal Reynolds number d √(2 Δp ρ)/μ: bore in m, pressure drop in Pa, at least 0, density in kg/m³, viscosity in Pa s. */
    public static double reynolds(double bore, double pressureDrop, double density, double viscosity) {
        return bore * Math.sqrt(2 * pressureDrop * density) / viscosity;
    }

    /** The laminar term of 1/Cd times the Reynolds number, 20 (1 + 2.25 L/d). */
    public static double laminar(double slenderness) {
        return LAMINAR * (1 + LAMINAR_LENGTH * slenderness);
    }

    /** The most that 1/Cd dips, 0.005 L/d. */
    public static double dip(double slenderness) {
        return DIP * slenderness;
    }

    /** Where a Reynolds number above 0 lies about the dip: log10(0.00015 Re), 0 in its middle. */
    public static double dipAt(double reynolds) {
        return Math.log(DIP_SCALE * reynolds) / LN10;
    }

    /** Share of the dip, 0 to 1, at {@link #dipAt}. */
    public static double dipShare(double at) {
        return 1 / (1 + DIP_WIDTH * at * at);
    }

    /** Slope of the share of the dip with ln Re, at {@link #dipAt} where the share is {@code share}. */
    public static double dipSlope(double at, double share) {
        return -share * share * 2 * DIP_WIDTH * at / LN10;
    }

    /**
     * Discharge coefficient at high Reynolds number: 0.61 up to L/d 0.3, rising in a straight line to 0.81 at 1.5, 0.81 to
     * 2, then 0.827 - 0.0085 L/d. Beyond L/d 10 the formula has no source; the value there is held.
     *
     * @param slenderness length over diameter, L/d
     */
    public static double cdInfinite(double slenderness) {
        if (slenderness <= THIN_TO) {
            return CD_THIN;
        }
        if (slenderness < REATTACHED_FROM) {
            return CD_THIN + (CD_SHORT_TUBE - CD_THIN) * (slenderness - THIN_TO) / (REATTACHED_FROM - THIN_TO);
        }
        // 0.827 - 0.0085 L/d is 0.81 at L/d 2
        return slenderness <= TUBE_FROM ? CD_SHORT_TUBE : 0.827 - 0.0085 * Math.min(slenderness, LONGEST);
    }

    /**
     * Exit loss of a damper laid over the mouth, referred to the whole bore, in velocity heads: K_o/φ², K_o = 0.0696 (1 - b⁵) L² + L²,
     * L = 1 + 0.622 (1 - 0.215 b² - 0.785 b⁵), b = √φ. K_o: 1.000, 1.707, 2.281, 2.642 at φ 1, 0.75, 0.5, 0.25.
     * Source: Rennels and Hudson form, read.
     *
     * @param openShare φ, above 0, up to 1
     * @throws IllegalArgumentException for a share outside that range; a shut damper passes nothing, its loss is no number
     */
    public static double exitLoss(double openShare) {
        if (openShare == 0) {
            throw new IllegalArgumentException("open share 0: a shut damper passes nothing, its loss is no number");
        }
        return openAreaLoss(openShare) / (openShare * openShare);
    }

    /**
     * The loss K_o referred to the open area, in velocity heads.
     *
     * @param openShare 0 to 1
     * @throws IllegalArgumentException for a share outside that range
     */
    public static double openAreaLoss(double openShare) {
        if (!(openShare >= 0 && openShare <= 1)) {
            throw new IllegalArgumentException(
                    "open share " + openShare + ": write a fraction from 0 (shut) to 1 (open)");
        }
        double b2 = openShare;
        double b5 = openShare * openShare * Math.sqrt(openShare);
        double l = 1 + 0.622 * (1 - 0.215 * b2 - 0.785 * b5);
        return (1 + 0.0696 * (1 - b5)) * l * l;
    }
}
