package portwright.review;

/** Headline figures of a check; null where the design does not allow one. */
public record Figures(Double inletAreaMm2, Double flueAreaMm2, Double flueToInletRatio, Double weakestFloorSectionShare,
        Double weakestLidSectionShare, Double chamberVolumeL, Double heatNetKw, Double gasKgPerH, Double gasWattsPerLitre,
        Double cylinderHours, Double freshAirM3PerH) {}
