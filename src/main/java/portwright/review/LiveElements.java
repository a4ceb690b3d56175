package portwright.review;

import java.util.List;
import portwright.model.Design;
import portwright.model.FiringStep;
import portwright.model.Heat;

/**
 * What is done at the switch of the elements round all that is moved in a port, where metal could touch a live coil (common practice, no source): one wording for card and
 * window.
 *
 * @param there whether the kiln has elements
 * @param onWithGas whether they help in the first step with gas, so that they go on again before it is lit
 */
public record LiveElements(boolean there, boolean onWithGas) {
    private static final String OFF = "elements off at the switch";
    private static final String ON = "tools out: elements on";

    /** Of a design; what its firing leaves open counts as helped. */
    public static LiveElements of(Design design) {
        List<FiringStep> steps = design.firing() == null || design.firing().steps() == null
                ? List.of()
                : design.firing().steps();
        return new LiveElements(
                !design.kiln().noElements(),
                steps.stream()
                        .map(FiringStep::heat)
                        .filter(h -> h == Heat.GAS || h == Heat.BOTH)
                        .findFirst()
                        .map(h -> h == Heat.BOTH)
                        .orElse(true));
    }

    /** Before the air that goes before lighting. */
    public String opening() {
        return (there ? OFF + ", " : "") + "plugs out, burners in, valves shut" + (there && onWithGas ? "; " + ON : "");
    }

    /**
     * After the flame is gone and the kiln aired.
     *
     * @param electric whether electricity goes on alone
     */
    public String closing(boolean electric) {
        return (there && electric ? "elements off, " : "") + "burners away; only then plug inlets, shut plate"
                + (there && electric ? "; " + ON : "");
    }

    /** The same in a row of the firing's steps. */
    public String betweenSteps(boolean electric) {
        return (there ? "elements off, " : "") + "burners away, only then plug the ports"
                + (there && electric ? "; elements on" : "");
    }
}
