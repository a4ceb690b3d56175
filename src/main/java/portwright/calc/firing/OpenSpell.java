package portwright.calc.firing;

import portwright.data.SafetyNumber;

/**
 * The minutes in which the kiln stands open without gas: ports open and plate off before gas is lit and after it is put out; and the
 * minutes of clean fire, plate off, that follow a lighting. They lie between two steps and belong to none, so the hours and kilowatt hours of the
 * steps are without them; the firing's are with them, and the step after them begins from what they leave in chamber, walls and load.
 * While the kiln stands open the elements do as the electric step beside does, in the clean fire as the step with gas asks.
 *
 * @param step index of the step that follows
 * @param lighting before a step with gas; else after one
 * @param startS when the ports open
 * @param endS when the step begins
 * @param fromK chamber when the ports open, K
 * @param toK chamber after the open minutes, K: gas is lit at this
 * @param endK chamber when the step begins, after the clean fire where there is one, K
 * @param lostJ carried out by air and radiated by the holes in the open minutes
 * @param electricJ given by the elements meanwhile
 * @param cleanElectricJ given by the elements in the clean fire; 0 after gas
 * @param cleanFuelKg gas burnt in the clean fire; 0 after gas
 */
public record OpenSpell(
        int step,
        boolean lighting,
        double startS,
        double endS,
        double fromK,
        double toK,
        double endK,
        double lostJ,
        double electricJ,
        double cleanElectricJ,
        double cleanFuelKg) {
    private static final double STEP_S = 10;

    /** How long the kiln stands open at least, and after gas, s. */
    public static double seconds() {
        return SafetyNumber.value("kiln-open") * 60;
    }

    /** How long it stands open before gas is lit, s, in whole minutes: those, or longer where its draught takes longer to purge it; not finite where that is not known. */
    public static double lightingS(double purgeS) {
        return Double.isFinite(purgeS) ? Math.max(seconds(), Math.ceil(purgeS / 60 - 1e-9) * 60) : seconds();
    }

    /** How long it stood open here, s, the clean fire left out. */
    public double openS() {
        return endS - startS - (lighting ? cleanSeconds() : 0);
    }

    /** How long gas burns clean after lighting, s. */
    public static double cleanSeconds() {
        return SafetyNumber.value("clean-fire") * 60;
    }

    /** Index of the step with gas that it is lit for or that ended. */
    public int gasStep() {
        return lighting ? step : step - 1;
    }

    /** Ports open and plate off, the elements as a step has them. */
    static Step open(Step as, boolean lit) {
        return new Step(
                new Step.Hold(seconds()), Step.FULL, as.electric(), lit, as.elementShare(), true, new Step.Share(1));
    }

    /** The chamber after open minutes without gas, K, the elements as a step has them; the state is carried on. */
    static double afterOpenK(KilnHeat kiln, GasExchange gas, Step as, Balance state) {
        FlowCurve flow = new FlowCurve(kiln, gas, open(as, false), 1);
        double from = state.chamberK();
        double most = as.electric() ? kiln.elements().fullW() * (as.controlled() ? 1 : as.elementShare()) : 0;
        for (double t = 0; t < gas.lightingS() - STEP_S / 2; t += STEP_S) {
            state.advance(STEP_S, as.controlled() ? from : Double.NaN, most, flow);
            state.accept();
        }
        return state.chamberK();
    }
}
