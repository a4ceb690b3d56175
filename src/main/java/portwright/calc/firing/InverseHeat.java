package portwright.calc.firing;

/**
 * The heat balance turned round: the heat that must have entered the chamber, all sources less open holes together, for
 * the chamber to follow a measured temperature.
 */
public final class InverseHeat {
    private InverseHeat() {}

    /**
     * Net heat into the chamber in each interval, W; entry i belongs to the interval that ends at sample i, entry 0 is 0.
     * A noisy record gives noisy heat: smooth it first.
     *
     * @param chamberK evenly spaced chamber temperatures, K; shell and load start at the first one
     * @param stepS spacing, s
     */
    public static double[] heatW(KilnHeat kiln, double[] chamberK, double stepS) {
        double[] out = new double[chamberK.length];
        Balance balance = new Balance(kiln, chamberK[0], Numerics.STANDARD.intervalsPerLayer());
        FlowCurve closed = new FlowCurve(kiln, GasExchange.NONE, Step.electric(new Step.Hold(1), Step.FULL), 0);
        for (int i = 1; i < chamberK.length; i++) {
            balance.follow(stepS, chamberK[i], closed);
            out[i] = balance.powerW();
            balance.accept();
        }
        return out;
    }
}
