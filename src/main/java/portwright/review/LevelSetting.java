package portwright.review;

import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DamperPlate;
import portwright.calc.draft.DraftExchange;

/**
 * Damper setting of one atmosphere level at one chamber temperature, middle values.
 *
 * @param level the level
 * @param openLow open share at its rich end
 * @param openMid open share at its middle
 * @param openHigh open share at its lean end; the middle value cannot be reached when it is 1 and lambda there falls short
 * @param lambdaOpen lambda fully open; zero when an inlet spills
 * @param lambdaShut lambda with the flues all but shut, fed by leaks alone; zero when an inlet spills
 * @param reachable whether the level's middle lies between shut and open
 * @param travelLowMm plate travel from all shut at the rich end, mm
 * @param travelHighMm at the lean end, mm
 * @param mmPerHundredth plate travel of 0.01 of lambda at the middle, mm
 */
public record LevelSetting(
        AtmosphereLevel level,
        double openLow,
        double openMid,
        double openHigh,
        double lambdaOpen,
        double lambdaShut,
        boolean reachable,
        double travelLowMm,
        double travelHighMm,
        double mmPerHundredth) {
    private static final double HUNDREDTH = 0.01;
    private static final double ALL_BUT_SHUT = 1e-6;

    /** Middle of a level's band of lambda. */
    public static double middle(AtmosphereLevel level) {
        return switch (level) {
            case OXIDIZING -> 1.05;
            case BEYOND -> level.lambdaHigh();
            default -> (level.lambdaLow() + level.lambdaHigh()) / 2;
        };
    }

    static LevelSetting of(AtmosphereLevel level, double kelvin, DraftExchange draft, DamperPlate plate) {
        double mid = middle(level);
        double low = draft.damperFor(level.lambdaLow(), kelvin);
        double high = Double.isInfinite(level.lambdaHigh()) ? 1 : draft.damperFor(level.lambdaHigh(), kelvin);
        double at = draft.damperFor(mid, kelvin);
        double open = draft.at(true, 1, kelvin).lambda().orElse(0);
        double shut = draft.at(true, ALL_BUT_SHUT, kelvin).lambda().orElse(0);
        double travelLow = plate == null ? 0 : plate.travelFor(low) * 1000;
        double travelHigh = plate == null ? 0 : plate.travelFor(high) * 1000;
        double half = HUNDREDTH / 2;
        double per = plate == null
                ? 0
                : (plate.travelFor(draft.damperFor(mid + half, kelvin))
                                - plate.travelFor(draft.damperFor(mid - half, kelvin)))
                        * 1000;
        return new LevelSetting(
                level, low, at, high, open, shut, open >= mid && shut <= mid, travelLow, travelHigh, per);
    }

    /** Plate travel across the level, mm. */
    public double travelMm() {
        return travelHighMm - travelLowMm;
    }
}
