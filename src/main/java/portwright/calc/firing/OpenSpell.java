package portwright.calc.firing;

import java.util.ArrayList;
import java.util.List;
import portwright.data.SafetyNumber;

/**
 * The minutes in which the kiln stands open without gas: ports open and plate off before gas is lit and after it is put out. They
 * belong to no step, so a firing's hours and kilowatt hours are without them. The elements do as the electric step beside does.
 *
 * @param step index of the step with gas
 * @param lighting before its gas; else after it
 * @param fromK chamber when the ports open, K
 * @param toK chamber when the time is over, K
 * @param lostJ carried out by air and radiated by the holes
 * @param electricJ given by the elements meanwhile
 */
public record OpenSpell(int step, boolean lighting, double fromK, double toK, double lostJ, double electricJ) {
    private static final double STEP_S = 10;

    /** How long the kiln stands open, s. */
    public static double seconds() {
        return SafetyNumber.value("kiln-open") * 60;
    }

    /** From a state, which is carried on. */
    static OpenSpell of(KilnHeat kiln, GasExchange gas, int step, boolean lighting, Step beside, Balance state) {
        Step open = new Step(
                new Step.Hold(seconds()),
                Step.FULL,
                beside.electric(),
                false,
                beside.elementShare(),
                true,
                new Step.Share(1));
        FlowCurve flow = new FlowCurve(kiln, gas, open, 1);
        double from = state.chamberK();
        double most =
                beside.electric() ? kiln.elements().fullW() * (beside.controlled() ? 1 : beside.elementShare()) : 0;
        double lost = 0;
        double electric = 0;
        for (double t = 0; t < seconds() - STEP_S / 2; t += STEP_S) {
            state.advance(STEP_S, beside.controlled() ? from : Double.NaN, most, flow);
            state.accept();
            lost += (state.radiationW() - state.flowHeatW()) * STEP_S;
            electric += state.powerW() * STEP_S;
        }
        return new OpenSpell(step, lighting, from, state.chamberK(), lost, electric);
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
                found.add(of(kiln, gas, i, begins, steps.get(beside), state.copy()));
            }
        }

        List<OpenSpell> found() {
            return List.copyOf(found);
        }
    }
}
