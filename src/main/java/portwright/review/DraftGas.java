package portwright.review;

import portwright.calc.draft.DraftCase;
import portwright.calc.draft.DraftExchange;
import portwright.calc.draft.FireState;
import portwright.calc.firing.GasExchange;

/** The draft as the firing's heat balance asks for it. */
public final class DraftGas implements GasExchange {
    private static final double LEAST_KELVIN = 250;
    /** The models of gas end at 1700 K; a search for a temperature may ask beyond, where the flows count as there. */
    private static final double MOST_KELVIN = 1690;

    private final DraftExchange draft;
    private final double lightingS;

    /** Takes the kiln at full gas, see {@link FireReview#kiln()}, and how long it stands open before gas is lit, s. */
    public DraftGas(DraftCase kiln, double lightingS) {
        draft = new DraftExchange(kiln);
        this.lightingS = lightingS;
    }

    @Override
    public double lightingS() {
        return lightingS;
    }

    @Override
    public Flow at(boolean gasOn, double damperShare, double chamberK) {
        return flow(draft.at(gasOn, damperShare, held(chamberK)), gasOn);
    }

    @Override
    public Flow plugged(double chamberK) {
        return flow(draft.plugged(held(chamberK)), false);
    }

    private static Flow flow(FireState s, boolean gasOn) {
        return new Flow(
                s.heatW(),
                s.fuelNetW(),
                s.balance().gasFlow(),
                s.balance().airFlow(),
                gasOn ? s.lambda().orElse(0) : 0);
    }

    @Override
    public double damperFor(double lambda, double chamberK) {
        return draft.damperFor(lambda, held(chamberK));
    }

    private static double held(double kelvin) {
        return Math.max(LEAST_KELVIN, Math.min(MOST_KELVIN, kelvin));
    }
}
