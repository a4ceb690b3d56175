package portwright.calc.firing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What it costs in degrees to light again when the flame is lost in a step with gas: ports open and plate off for the minutes before
 * lighting, once with the elements off and once as the step has them.
 *
 * @param step index of the step
 * @param fromK chamber when the flame is lost, K
 * @param offK chamber after the minutes, elements off
 * @param onK chamber after the minutes, elements as the step has them
 * @param openS how long these minutes are, s
 */
public record Relight(int step, double fromK, double offK, double onK, double openS) {

    /** The hottest of a firing: that is told. */
    public static Relight hottest(List<Relight> all) {
        return all.stream().max(Comparator.comparingDouble(Relight::fromK)).orElse(null);
    }

    /** The coldest after its minutes, elements off: that decides whether gas may be lit again. */
    public static Relight coldest(List<Relight> all) {
        return all.stream().min(Comparator.comparingDouble(Relight::offK)).orElse(null);
    }

    /** At the start and at the end of every step with gas that is begun, the brick conducting as stated. */
    public static List<Relight> of(KilnHeat kiln, GasExchange gas, List<Step> steps, Numerics numerics) {
        List<Relight> out = new ArrayList<>();
        int[] looks = {0};
        Simulation.run(kiln, gas, steps, List.of(), numerics, (step, share, state) -> {
            int index = looks[0]++ / 2;
            if (step.gas()) {
                Step off = new Step(step.goal(), Step.FULL, false, false, Step.CONTROLLER, true, step.damper());
                out.add(new Relight(
                        index,
                        state.chamberK(),
                        OpenSpell.afterOpenK(kiln, gas, off, state.copy()),
                        OpenSpell.afterOpenK(kiln, gas, step, state.copy()),
                        gas.lightingS()));
            }
        });
        return List.copyOf(out);
    }
}
