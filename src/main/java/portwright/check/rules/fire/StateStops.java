package portwright.check.rules.fire;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.draft.FireState;
import portwright.calc.draft.InletFlow;
import portwright.check.Limits;

/** What speaks against burning in one state at all: the same limits as {@link InletDraw} and {@link Soot}. */
public final class StateStops {
    private StateStops() {}

    /** Rule id and words for each stop; empty when there is none or no gas flows. */
    public static List<String> of(FireState state, Limits limits) {
        List<String> out = new ArrayList<>();
        if (!(state.balance().gasFlow() + state.balance().gasSpilled() > 0)) {
            return out;
        }
        double least = limits.value("inlet-draw", "stop");
        double rim = limits.value("inlet-draw", "top");
        for (int i = 0; i < state.balance().inlets().size(); i++) {
            InletFlow f = state.balance().inlets().get(i);
            InletTop top = InletTop.of(state.balance(), i);
            if (f.spills()) {
                out.add("inlet-draw: flame and fume come out of " + f.name() + ", under the kiln");
            } else if (Say.under(f.drive(), least)) {
                out.add("inlet-draw: " + f.name() + " draws with " + Say.n(f.drive(), 2) + " Pa, under "
                        + Say.n(least, 2) + " Pa");
            } else if (top != null && top.out(rim)) {
                out.add("inlet-draw: flame and fume come out at the upper part of " + f.name());
            }
        }
        double rich = limits.value("soot", "stop");
        state.lambda().ifPresent(l -> {
            if (Say.under(l, rich)) {
                out.add("soot: lambda " + Say.n(l, 2) + ", under " + Say.n(rich, 2));
            }
        });
        return out;
    }
}
