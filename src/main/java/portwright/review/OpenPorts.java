package portwright.review;

import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.units.Celsius;

/**
 * What ports that stand open without gas cost: air drawn through the kiln, and radiation.
 *
 * @param chamberK chamber
 * @param damperShare open share of the flues
 * @param airKgPerS air drawn
 * @param airW heat that it carries out
 * @param radiationW heat that the holes radiate
 */
public record OpenPorts(double chamberK, double damperShare, double airKgPerS, double airW, double radiationW) {
    /** The temperature at which it is told, K: 1000 °C. */
    public static final double TOLD_K = 1000 + Celsius.ZERO_C;

    static OpenPorts of(KilnHeat kiln, GasExchange gas, double damperShare) {
        GasExchange.Flow f = gas.at(false, damperShare, TOLD_K);
        double radiation = kiln.ports().stream()
                .mapToDouble(p -> (p.flue() ? damperShare : 1) * p.radiationW(TOLD_K, kiln.roomK()))
                .sum();
        return new OpenPorts(TOLD_K, damperShare, f.airKgPerS(), -f.heatW(), radiation);
    }

    /** All of it, W. */
    public double lostW() {
        return airW + radiationW;
    }
}
