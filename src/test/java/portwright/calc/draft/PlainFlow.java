package portwright.calc.draft;

import portwright.calc.flow.Discharge;

/** The flow through holes and cracks as the formulas stand in print, with numbers of their own, to hold the solver's inner loop against. */
final class PlainFlow {
    private PlainFlow() {}

    /** Discharge coefficient at an ideal Reynolds number: Lichtarowicz, Duggins and Markland 1965, from memory. */
    static double cd(double slenderness, double reynolds) {
        double lg = Math.log10(0.00015 * reynolds);
        return 1
                / (1 / Discharge.cdInfinite(slenderness)
                        + 20 / reynolds * (1 + 2.25 * slenderness)
                        - 0.005 * slenderness / (1 + 7.5 * lg * lg));
    }

    /** Flow of an open hole, kg/s; m, Pa above 0, kg/m³, Pa s. */
    static double hole(double diameter, double length, double dp, double density, double viscosity) {
        return hole(diameter, length, dp, density, viscosity, 1);
    }

    /** The same with a damper over the mouth that leaves a share open, above 0. */
    static double hole(double diameter, double length, double dp, double density, double viscosity, double openShare) {
        double cd = cd(length / diameter, diameter * Math.sqrt(2 * dp * density) / viscosity);
        double loss = 1 / (cd * cd) - 1 + Discharge.exitLoss(openShare);
        return Math.PI / 4 * diameter * diameter * Math.sqrt(2 * density * dp / loss);
    }

    /** Flow through a crack, kg/s, from Δp = 12 μ L u/h² + 0.75 ρ u² (Baker, Sharples and Ward 1987, from memory); m, Pa above 0, kg/m³, Pa s. */
    static double crack(double gap, double length, double depth, double dp, double density, double viscosity) {
        double a = 0.75 * density;
        double b = 12 * viscosity * depth / (gap * gap);
        double u = 2 * dp / (b + Math.sqrt(b * b + 4 * a * dp));
        return density * gap * length * u;
    }
}
