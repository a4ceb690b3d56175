package portwright.calc.firing;

import java.util.List;

/**
 * What happens when all heat stops while gas burns: gas off, elements off, ports open, damper as it stands. Walls and load cool by the
 * same balance that heats them.
 *
 * <p>Hand case: a thick wall at one temperature that gives a steady flux q falls by ΔT in t = (π/α) (k ΔT / 2q)².
 *
 * @param fromK hot faces when the heat stops, K
 * @param seconds until they are at the temperature asked for; never more than {@link #LONGEST_S}; 0 when they are no hotter to begin with
 */
public record HeatStop(double fromK, double seconds) {
    /** Cooling is followed no longer than this. */
    public static final double LONGEST_S = 4 * 3600.0;

    private static final double STEP_S = 5;
    /** Short cooling lives in the first millimetres of brick: twice the grid of a firing. */
    private static final int FINER = 2;

    /**
     * The shortest time of a firing: heat stops at the start or at the end of any step with gas. The brick conducts as tabled, 20 % less
     * and 20 % more.
     *
     * @param toK temperature that the hot faces must not fall below
     * @return null when no step with gas is begun
     */
    public static HeatStop shortest(KilnHeat kiln, GasExchange gas, List<Step> steps, double toK, Numerics numerics) {
        Numerics fine = new Numerics(
                numerics.stepS(), FINER * numerics.intervalsPerLayer(), numerics.sampleS(), numerics.longestS());
        HeatStop[] shortest = {null};
        for (double c : new double[] {1, 1 - Forecast.CONDUCTIVITY_BAND, 1 + Forecast.CONDUCTIVITY_BAND}) {
            KilnHeat k = kiln.conducting(c);
            Simulation.run(k, gas, steps, List.of(), fine, (step, share, state) -> {
                if (step.gas()) {
                    double bound = shortest[0] == null ? LONGEST_S : shortest[0].seconds();
                    HeatStop stop = cool(k, gas, share, state.copy(), toK, bound);
                    if (shortest[0] == null || stop.seconds() < shortest[0].seconds()) {
                        shortest[0] = stop;
                    }
                }
            });
        }
        return shortest[0];
    }

    /** @param bound seconds after which it is followed no more: another firing step falls sooner */
    private static HeatStop cool(
            KilnHeat kiln, GasExchange gas, double damper, Balance state, double toK, double bound) {
        Step off = new Step(new Step.To(toK), Step.FULL, false, false, Step.CONTROLLER, true, new Step.Share(damper));
        FlowCurve flow = new FlowCurve(kiln, gas, off, damper);
        double from = state.chamberK();
        double t = 0;
        while (state.chamberK() > toK && t < bound) {
            double before = state.chamberK();
            state.advance(STEP_S, Double.NaN, 0, flow);
            state.accept();
            double now = state.chamberK();
            t += now < toK ? STEP_S * (before - toK) / (before - now) : STEP_S;
        }
        return new HeatStop(from, Math.min(t, LONGEST_S));
    }
}
