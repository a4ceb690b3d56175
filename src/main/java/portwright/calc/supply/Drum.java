package portwright.calc.supply;

import portwright.data.SafetyNumber;

/**
 * One upright cylinder, as a plain drum.
 *
 * @param capacityKg LP gas when full by weight
 * @param diameterM outside diameter
 * @param steelKg mass of the metal; 0 leaves its heat out (the safe side)
 */
public record Drum(double capacityKg, double diameterM, double steelKg) {

    private static final double WATER = 1000;

    public Drum {
        if (!(capacityKg > 0 && diameterM > 0 && steelKg >= 0) || !Double.isFinite(capacityKg + diameterM + steelKg)) {
            throw new IllegalArgumentException(
                    "a cylinder needs contents and a diameter above 0 and a metal mass of at least 0, got " + capacityKg
                            + " kg, " + diameterM + " m, " + steelKg + " kg");
        }
    }

    /**
     * Contents of a full cylinder from its stamped water capacity: {@code m = 0.42 WC} (both by weight).
     * Example: WC 47.6 lb holds 20 lb. Published: 29 CFR 1910.110(b)(19).
     */
    public static double contentsFromWaterCapacity(double waterKg) {
        return SafetyNumber.value("fill-by-weight") * waterKg;
    }

    /**
     * Most LP gas that a drum of these outer measures can hold, kg: its volume full of water times the filling density, 0.42 or what 80 % of the volume
     * holds of a heavier liquid. Steel, domes and foot take room besides, so this is never too little. Example: propane, 12.5 in by 18 in: 15.2 kg.
     * Published: 29 CFR 1910.110(b)(19).
     *
     * @param diameterM outside
     * @param lengthM outside
     * @param liquidKgPerM3 density of the liquid
     */
    public static double mostKg(double diameterM, double lengthM, double liquidKgPerM3) {
        if (!(diameterM > 0 && lengthM > 0 && liquidKgPerM3 > 0)) {
            throw new IllegalArgumentException("a drum needs a diameter, a length and a density above 0, got "
                    + diameterM + " m, " + lengthM + " m, " + liquidKgPerM3 + " kg/m³");
        }
        double volume = Math.PI / 4 * diameterM * diameterM * lengthM;
        double byVolume = SafetyNumber.value("fill-by-volume") * liquidKgPerM3;
        return Math.max(contentsFromWaterCapacity(volume * WATER), volume * byVolume);
    }

    /**
     * Wetted area in m²: {@code A = 4 m/(rho D) + B pi D²/4}, side wall to the liquid's level plus the bottom weighted by B.
     * Example: 20 lb of propane in a 12.5 in cylinder 0.344 m². Bottom weight B: fit, see {@code safety_numbers.csv}.
     *
     * @param liquidKg liquid in it, at least 0
     * @param densityKgPerM3 of the liquid
     */
    public double wettedAreaM2(double liquidKg, double densityKgPerM3) {
        return wettedAreaM2(liquidKg, densityKgPerM3, SafetyNumber.value("boil-off-bottom"));
    }

    double wettedAreaM2(double liquidKg, double densityKgPerM3, double bottomWeight) {
        if (!(liquidKg >= 0 && densityKgPerM3 > 0)) {
            throw new IllegalArgumentException("liquid must be at least 0 kg and its density above 0, got " + liquidKg
                    + " kg, " + densityKgPerM3 + " kg/m³");
        }
        double bottom = Math.PI * diameterM * diameterM / 4;
        return 4 * liquidKg / (densityKgPerM3 * diameterM) + bottomWeight * bottom;
    }
}
