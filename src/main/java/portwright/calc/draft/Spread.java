package portwright.calc.draft;

import portwright.source.Source;
import portwright.units.Celsius;

/**
 * How far the inputs of the balance may be off. Each ± is one standard deviation of a normal spread cut at 2.5;
 * the ranges with two ends are drawn evenly. All are independent of each other.
 *
 * @param holeSize diameter of all holes (one saw), ± m
 * @param cdLow lowest factor on all discharge coefficients (one formula)
 * @param cdHigh highest factor
 * @param gas ± share of the gas flow
 * @param temperature ± K of the chamber
 * @param damper ± open share
 * @param crackWidth widest lid joint, m; drawn from zero, unless the leak is stated
 * @param peepholeArea largest leak of peepholes, m²; drawn from zero, unless the leak is stated
 * @param leak ± share of a stated leak area, drawn evenly round it; 0 when the leak is not stated
 * @param wind ± Pa on all flues together
 * @param portWind ± Pa at each inlet by itself (0.1 Pa is a breath of 0.4 m/s)
 * @param momentum span of the jet's momentum share round the stated one
 * @param flamePlace whether the place of flames not stated inside or below a hole is drawn too
 */
public record Spread(
        double holeSize,
        double cdLow,
        double cdHigh,
        double gas,
        double temperature,
        double damper,
        double crackWidth,
        double peepholeArea,
        double leak,
        double wind,
        double portWind,
        double momentum,
        boolean flamePlace) {
    /** Where the spreads come from. */
    public static final Source SOURCE = Source.judgement(
            "spreads estimated one by one: drilling, short-tube coefficients, regulator, controller, plate, lid joint, draught");

    /** Burning stream in the hole, and below it, K; from memory of flame lengths, own judgement. */
    public static final double STREAM_IN_HOLE = 873.15;
    /** Flame that begins below the floor, K. */
    public static final double STREAM_BELOW = 1000 + Celsius.ZERO_C;

    /** What a builder's figure for the open area of gaps is worth, ± share; own judgement. */
    public static final double STATED_LEAK = 0.5;

    /** The usual spreads, leak not stated; gas ±10 %, or ±5 % when a gauge is read at the burner. */
    public static Spread usual(boolean gauge, boolean flamePlaceUnknown) {
        return new Spread(
                0.3e-3, 0.82, 1.08, gauge ? 0.05 : 0.10, 25, 0.03, 1.2e-3, 0.5e-4, 0, 0.8, 0.1, 0.2, flamePlaceUnknown);
    }

    /** The same spreads for a kiln whose leak area is stated. */
    public Spread withStatedLeak() {
        return new Spread(
                holeSize,
                cdLow,
                cdHigh,
                gas,
                temperature,
                damper,
                crackWidth,
                peepholeArea,
                STATED_LEAK,
                wind,
                portWind,
                momentum,
                flamePlace);
    }
}
