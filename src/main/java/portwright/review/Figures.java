package portwright.review;

import portwright.calc.firing.OpenSpell;

/**
 * Headline figures of a check; null where the design does not allow one.
 *
 * @param freshAirM3PerH air that the room needs for the 8 h limit of CO; indoors only
 * @param roomAirM3PerH air that openings and fans give with no wind
 * @param roomCoPeakPpm highest CO in the room with no wind; indoors only
 * @param roomCoEightHourPpm highest 8 h average of it
 * @param roomOxygenPct lowest oxygen in the room with no wind; indoors only
 * @param boilOffKgPerH what the cylinders boil off at the lowest fill
 * @param unlitGasSeconds time until unlit gas brings the cold chamber to its lower limit
 * @param unlitGasGrams gas that does
 * @param purgeMinutes five changes of the chamber's air by the kiln's own draught after a lost flame, at the lowest temperature of gas
 * @param roomAirOutMinutes time after the last gas until CO in the room is down to the 8 h limit with no wind; indoors only
 * @param ledOutdoorsPct share of the flue gas counted as led outdoors; indoors only
 * @param roomCoMadeM3PerH CO made in the worst step, at the rich end of its level in gas of 1300 °C; indoors only
 */
public record Figures(
        Double inletAreaMm2,
        Double flueAreaMm2,
        Double flueToInletRatio,
        Double weakestFloorSectionShare,
        Double weakestLidSectionShare,
        Double chamberVolumeL,
        Double heatNetKw,
        Double gasKgPerH,
        Double gasWattsPerLitre,
        Double cylinderHours,
        Double freshAirM3PerH,
        Double roomAirM3PerH,
        Double roomCoPeakPpm,
        Double roomCoEightHourPpm,
        Double roomOxygenPct,
        Double boilOffKgPerH,
        Double unlitGasSeconds,
        Double unlitGasGrams,
        Double purgeMinutes,
        Double roomAirOutMinutes,
        Double ledOutdoorsPct,
        Double roomCoMadeM3PerH) {
    /** How long ports stand open and plate off before gas is lit, first or after a lost flame, whole minutes: as the forecast counts it. */
    public long openMinutes() {
        return Math.round(OpenSpell.lightingS(purgeMinutes == null ? Double.NaN : purgeMinutes * 60) / 60);
    }
}
