package portwright.review;

import portwright.calc.draft.DraftCase;
import portwright.calc.draft.DraftExchange;
import portwright.calc.draft.FireState;
import portwright.calc.firing.GasExchange;

/** The draft as the firing's heat balance asks for it. */
public final class DraftGas implements GasExchange {
    private static final double LEAST_KELVIN = 250;

    private final DraftExchange draft;

    /** Takes the kiln at full gas, see {@link FireReview#kiln()}. */
    public DraftGas(DraftCase kiln) {
        draft = new DraftExchange(kiln);
    }

    @Override
    public Flow at(boolean gasOn, double damperShare, double chamberK) {
        FireState s = draft.at(gasOn, damperShare, Math.max(LEAST_KELVIN, chamberK));
        return new Flow(
                s.heatW(),
                s.fuelNetW(),
                s.balance().gasFlow(),
                s.balance().airFlow(),
                gasOn ? s.lambda().orElse(0) : 0);
    }

    @Override
    public double damperFor(double lambda, double chamberK) {
        return draft.damperFor(lambda, Math.max(LEAST_KELVIN, chamberK));
    }
}
