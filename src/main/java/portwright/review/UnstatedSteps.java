package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Design;
import portwright.model.FiringStep;
import portwright.model.Heat;

/**
 * What the steps up to the last gas do not say and the forecast takes as usual: elements by the controller, ports plugged while no gas burns. A fixed
 * share or an open port climbs slower, or not at all, so that gas opens colder and burns longer.
 */
public final class UnstatedSteps {
    private static final String CONTROLLER = "all the power that the climb asks for; write \"controller\" or the share";
    private static final String PLUGGED = "no air passes the kiln while no gas burns; write \"plugged\" or \"open\"";

    private UnstatedSteps() {}

    /** The fields left out, in the order of the steps; empty without steps or without gas. */
    public static List<String> fields(Design design) {
        if (design.firing() == null || design.firing().steps() == null) {
            return List.of();
        }
        List<FiringStep> steps = design.firing().steps();
        int last = steps.size() - 1;
        while (last >= 0 && !StepTime.gas(steps.get(last))) {
            last--;
        }
        List<String> out = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            FiringStep s = steps.get(i);
            String at = "firing.steps[" + i + "].";
            if ((s.heat() == Heat.ELECTRIC || s.heat() == Heat.BOTH) && !s.elementsStated()) {
                out.add(at + "elements");
            }
            if (s.heat() != null && !StepTime.gas(s) && s.ports() == null) {
                out.add(at + "ports");
            }
        }
        return List.copyOf(out);
    }

    /** Lists them with what is taken instead. */
    static void assume(Design design, Assumptions assume) {
        for (String field : fields(design)) {
            boolean ports = field.endsWith("ports");
            assume.add(field, ports ? "plugged" : "controller", ports ? PLUGGED : CONTROLLER);
        }
    }
}
