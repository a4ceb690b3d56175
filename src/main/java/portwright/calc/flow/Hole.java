package portwright.calc.flow;

import portwright.source.Source;

/**
 * A round hole through brick, with or without a damper over its mouth: m = A √(2 ρ Δp/K), K = (1/Cd² - 1) + K_exit.
 *
 * <p>1/Cd = 1/Cd∞ + (20/Re)(1 + 2.25 L/d) - 0.005 (L/d)/(1 + 7.5 log10(0.00015 Re)²) with the ideal Reynolds number
 * Re = d √(2 Δp ρ)/μ. Cd∞: 0.61 up to L/d 0.3, rising in a straight line to 0.81 at 1.5, 0.81 to 2, then
 * 0.827 - 0.0085 L/d. The two Reynolds terms hold at every L/d. Below them the flow is laminar and falls with Δp itself,
 * so the formula is smooth through zero. Beyond L/d 10 the formula has no source; Cd∞ is held at its value there.
 *
 * <p>Source: Lichtarowicz, Duggins and Markland 1965, from memory (the end of high Reynolds numbers read, 0.82).
 *
 * @param diameter m
 * @param length through the brick, m
 */
public record Hole(double diameter, double length) {

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
    private static final double LN10 = Math.log(10);

    public Hole {
        if (!(diameter > 0 && diameter < 10)) {
            throw new IllegalArgumentException("hole diameter " + diameter + " m: write metres above 0");
        }
        if (!(length >= 0 && length < 10)) {
            throw new IllegalArgumentException("hole length " + length + " m: write metres, 0 or more");
        }
    }

    /** Area, m². */
    public double area() {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Length over diameter. */
    public double slenderness() {
        return length / diameter;
    }

    /** Discharge coefficient at high Reynolds number for a length over diameter. */
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

    /** Discharge coefficient at an ideal Reynolds number above 0. */
    public double cd(double reynolds) {
        if (!(reynolds > 0)) {
            throw new IllegalArgumentException("Reynolds number " + reynolds + ": write a number above 0");
        }
        return 1 / (inverseCdTurbulent(reynolds) + laminarTerm() / reynolds);
    }

    /** Ideal Reynolds number, d √(2 Δp ρ)/μ; Δp in Pa (its size counts), density kg/m³, viscosity Pa s. */
    public double reynolds(double pressureDrop, double density, double viscosity) {
        return diameter * Math.sqrt(2 * Math.abs(pressureDrop) * density) / viscosity;
    }

    /**
     * Exit loss of a damper laid over the mouth, referred to the whole bore: K_o/φ², K_o = 0.0696 (1 - b⁵) L² + L²,
     * L = 1 + 0.622 (1 - 0.215 b² - 0.785 b⁵), b = √φ. K_o: 1.000, 1.707, 2.281, 2.642 at φ 1, 0.75, 0.5, 0.25.
     * Source: Rennels and Hudson form, read.
     *
     * @param openShare φ, above 0, up to 1
     */
    public static double exitLoss(double openShare) {
        if (openShare == 0) {
            throw new IllegalArgumentException("open share 0: a shut damper passes nothing, its loss is no number");
        }
        return openAreaLoss(openShare) / (openShare * openShare);
    }

    /** The loss K_o referred to the open area; open share 0 to 1. */
    public static double openAreaLoss(double openShare) {
        checkShare(openShare);
        double b2 = openShare;
        double b5 = openShare * openShare * Math.sqrt(openShare);
        double l = 1 + 0.622 * (1 - 0.215 * b2 - 0.785 * b5);
        return (1 + 0.0696 * (1 - b5)) * l * l;
    }

    /**
     * Mass flow of an open hole, kg/s, with the sign of the pressure drop.
     *
     * @param pressureDrop along the hole, Pa, either sign
     * @param density of what flows, kg/m³
     * @param viscosity of what flows, Pa s
     */
    public double massFlow(double pressureDrop, double density, double viscosity) {
        return massFlow(pressureDrop, density, viscosity, 1);
    }

    /**
     * Mass flow with a damper over the mouth, kg/s, with the sign of the pressure drop. Continuous and rising in the
     * pressure drop and in the open share, 0 when shut.
     *
     * @param pressureDrop along the hole, Pa, either sign
     * @param density of what flows, kg/m³
     * @param viscosity of what flows, Pa s
     * @param openShare open share of the mouth, 0 to 1
     * @throws IllegalArgumentException for a share outside 0 to 1 or density or viscosity not above 0
     */
    public double massFlow(double pressureDrop, double density, double viscosity, double openShare) {
        return massFlow(pressureDrop, density, viscosity, openShare, 1);
    }

    /**
     * As above with the discharge coefficient multiplied by a factor, for spreads of Cd.
     *
     * @param cdFactor multiplies Cd, above 0; the product with Cd is kept below 1
     */
    public double massFlow(double pressureDrop, double density, double viscosity, double openShare, double cdFactor) {
        checkShare(openShare);
        if (!(density > 0 && viscosity > 0 && density < 1e5 && viscosity < 1e5)) {
            throw new IllegalArgumentException(
                    "density " + density + " kg/m³ and viscosity " + viscosity + " Pa s: write numbers above 0");
        }
        if (!(Math.abs(pressureDrop) < 1e7)) {
            throw new IllegalArgumentException("pressure drop " + pressureDrop + " Pa: write a number");
        }
        if (!(cdFactor > 0 && cdFactor < 10)) {
            throw new IllegalArgumentException(
                    "factor on the discharge coefficient " + cdFactor + ": write a number above 0");
        }
        if (pressureDrop == 0 || openShare == 0) {
            return 0;
        }
        double flux = Math.sqrt(2 * density * Math.abs(pressureDrop));
        double re = diameter * flux / viscosity;
        // everything multiplied by flux, so that nothing is divided by a vanishing Reynolds number
        double inverse = (inverseCdTurbulent(re) * flux + laminarTerm() * viscosity / diameter) / cdFactor;
        double tube = Math.max(0, inverse * inverse - flux * flux);
        double loss = openShare * openShare * tube + openAreaLoss(openShare) * flux * flux;
        double m = area() * flux * flux * openShare / Math.sqrt(loss);
        return Math.copySign(m, pressureDrop);
    }

    private double inverseCdTurbulent(double re) {
        double lg = Math.log(0.00015 * re) / LN10;
        return 1 / cdInfinite(slenderness()) - 0.005 * slenderness() / (1 + 7.5 * lg * lg);
    }

    private double laminarTerm() {
        return 20 * (1 + 2.25 * slenderness());
    }

    private static void checkShare(double openShare) {
        if (!(openShare >= 0 && openShare <= 1)) {
            throw new IllegalArgumentException(
                    "open share " + openShare + ": write a fraction from 0 (shut) to 1 (open)");
        }
    }
}
