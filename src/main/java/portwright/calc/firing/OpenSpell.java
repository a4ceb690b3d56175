package portwright.calc.firing;

import java.util.ArrayList;
import java.util.List;
import portwright.data.SafetyNumber;

/**
 * The minutes in which the kiln stands open without gas: ports open and plate off before gas is lit and after it is put out; and the
 * minutes of clean fire, plate off, that follow a lighting. They belong to no step, so the hours and kilowatt hours of the steps are
 * without them. While the kiln stands open the elements do as the electric step beside does, in the clean fire as the step with gas asks.
 *
 * @param step index of the step with gas
 * @param lighting before its gas; else after it
 * @param fromK chamber when the ports open, K
 * @param toK chamber when the time is over, K
 * @param lostJ carried out by air and radiated by the holes
 * @param electricJ given by the elements meanwhile
 * @param cleanElectricJ given by the elements in the clean fire; 0 after gas
 * @param cleanFuelKg gas burnt in the clean fire; 0 after gas
 */
public record OpenSpell(
        int step,
        boolean lighting,
        double fromK,
        double toK,
        double lostJ,
        double electricJ,
        double cleanElectricJ,
        double cleanFuelKg) {
    private static final double STEP_S = 10;

    /** How long the kiln stands open, s. */
    public static double seconds() {
        return SafetyNumber.value("kiln-open") * 60;
    }

    /** How long gas burns clean after lighting, s. */
    public static double cleanSeconds() {
        return SafetyNumber.value("clean-fire") * 60;
    }

    /** From a state, which is carried on. */
    static OpenSpell of(
            KilnHeat kiln, GasExchange gas, int step, boolean lighting, Step beside, Step lit, Balance state) {
        Burst open = Burst.run(kiln, gas, beside, false, seconds(), state);
        double toK = state.chamberK();
        Burst clean = lighting ? Burst.run(kiln, gas, lit, true, cleanSeconds(), state) : Burst.NONE;
        return new OpenSpell(
                step, lighting, open.fromK, toK, open.lostJ, open.electricJ, clean.electricJ, clean.fuelKg);
    }

    /** Some minutes with ports open and plate off, with or without gas, the elements as a step has them. */
    private record Burst(double fromK, double lostJ, double electricJ, double fuelKg) {
        static final Burst NONE = new Burst(Double.NaN, 0, 0, 0);

        static Burst run(KilnHeat kiln, GasExchange gas, Step as, boolean lit, double seconds, Balance state) {
            Step open = new Step(
                    new Step.Hold(seconds), Step.FULL, as.electric(), lit, as.elementShare(), true, new Step.Share(1));
            FlowCurve flow = new FlowCurve(kiln, gas, open, 1);
            double from = state.chamberK();
            double most = as.electric() ? kiln.elements().fullW() * (as.controlled() ? 1 : as.elementShare()) : 0;
            double lost = 0;
            double electric = 0;
            double fuel = 0;
            for (double t = 0; t < seconds - STEP_S / 2; t += STEP_S) {
                state.advance(STEP_S, as.controlled() ? from : Double.NaN, most, flow);
                state.accept();
                lost += (state.radiationW() - state.flowHeatW()) * STEP_S;
                electric += state.powerW() * STEP_S;
                fuel += flow.at(state.chamberK()).fuelKgPerS() * STEP_S;
            }
            return new Burst(from, lost, electric, fuel);
        }
    }

    /** Finds them while a firing is computed. */
    static final class Finder implements StepWatch {
        private final KilnHeat kiln;
        private final GasExchange gas;
        private final List<Step> steps;
        private final List<OpenSpell> found = new ArrayList<>();
        private int looks;

        Finder(KilnHeat kiln, GasExchange gas, List<Step> steps) {
            this.kiln = kiln;
            this.gas = gas;
            this.steps = steps;
        }

        @Override
        public void look(Step step, double damperShare, Balance state) {
            int i = looks / 2;
            boolean begins = looks % 2 == 0;
            looks++;
            int beside = begins ? i - 1 : i + 1;
            if (step.gas()
                    && beside >= 0
                    && beside < steps.size()
                    && !steps.get(beside).gas()) {
                found.add(of(kiln, gas, i, begins, steps.get(beside), step, state.copy()));
            }
        }

        List<OpenSpell> found() {
            return List.copyOf(found);
        }
    }
}
