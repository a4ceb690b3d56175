package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.Atmosphere;

class InletDrawTest {
    private final InletDraw rule = new InletDraw();

    private static FireBench kw(double kw, Atmosphere level) {
        FireBench b = new FireBench().usual(level);
        b.heatKw = kw;
        return b;
    }

    @Test
    void strongDraftIsSilent() {
        assertThat(kw(5, Atmosphere.NEUTRAL).run(rule)).isEmpty();
    }

    @Test
    void weakDraftIsACautionAtEachInlet() {
        List<Finding> f = kw(3.4, Atmosphere.MEDIUM).run(rule);
        assertThat(f)
                .hasSize(2)
                .allMatch(x -> x.severity() == Severity.CAUTION && x.parts().size() == 1);
        assertThat(f).extracting(x -> x.parts().get(0)).containsExactly("inlet A", "inlet B");
        kw(3.4, Atmosphere.MEDIUM)
                .edge(rule, "caution", Severity.CAUTION, f.get(0).measured().value(), 1);
    }

    @Test
    void veryWeakDraftIsAStop() {
        List<Finding> f = kw(1.2, Atmosphere.HEAVY).run(rule);
        assertThat(f).isNotEmpty().allMatch(x -> x.severity() == Severity.STOP);
        kw(1.2, Atmosphere.HEAVY)
                .limit("inlet-draw", "caution", 0)
                .edge(rule, "stop", Severity.STOP, f.get(0).measured().value(), 1);
    }

    @Test
    void shutFluesLetFlameOut() {
        FireBench b = kw(3, Atmosphere.MEDIUM);
        b.flueMm = 0;
        assertThat(b.run(rule))
                .isNotEmpty()
                .allMatch(x -> x.severity() == Severity.STOP && x.message().contains("under the kiln"));
    }

    @Test
    void noGasStepsNothingToSay() {
        assertThat(new FireBench().run(rule)).isEmpty();
        FireBench b = new FireBench();
        b.steps = false;
        assertThat(b.lacks(rule).get(0).needs()).containsExactly("firing.steps");
    }
}
