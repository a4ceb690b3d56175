package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A step that is to cool while heat that nobody leads stays on. What ends it, and how soon, is this project's judgement. */
class KeepsHotTest {
    private static final KilnHeat KILN = TestKilns.decagon(8000, 1.2);

    private static Step share(double toC, double share) {
        return new Step(TestKilns.to(toC), Step.FULL, true, false, share, false, new Step.Share(1));
    }

    private static FiringRun run(Step... more) {
        List<Step> steps = new java.util.ArrayList<>(List.of(TestKilns.full(TestKilns.to(1000))));
        steps.addAll(List.of(more));
        return Simulation.run(KILN, GasExchange.NONE, steps, List.of(), Numerics.STANDARD);
    }

    /** Not for two days, and not to where no brick lives. */
    @Test
    void aShareThatHeatsAwayFromTheGoalEndsSoon() {
        FiringRun r = run(share(800, 1), TestKilns.full(TestKilns.to(700)));
        StepResult last = r.last();
        assertThat(last.index()).isEqualTo(1);
        assertThat(r.reached()).isFalse();
        assertThat(last.ending()).isEqualTo(Ending.KEEPS_HOT);
        assertThat(last.seconds()).isLessThanOrEqualTo(2 * 3600);
        assertThat(last.ending().words()).contains("hotter", "does not fall");
    }

    /** A small share that lets it come down, but not so far. */
    @Test
    void aShareThatHoldsItOverTheGoalEndsWhereItStands() {
        FiringRun r = run(share(300, 0.45));
        assertThat(r.last().ending()).isEqualTo(Ending.KEEPS_HOT);
        assertThat(r.last().endK()).isBetween(600.0, 1273.15);
        assertThat(r.last().seconds()).isLessThan(40 * 3600);
    }

    @Test
    void aGoalThatIsColderIsReachedWithoutHeatOrWithLittle() {
        assertThat(run(share(600, 0)).reached()).isTrue();
        assertThat(run(share(900, 0.1)).reached()).isTrue();
        assertThat(run(TestKilns.full(TestKilns.to(800))).reached()).isTrue();
    }
}
