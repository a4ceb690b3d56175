package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.Atmosphere;

class SootTest {
    private final Soot rule = new Soot();

    /** A level leaner than the flues can give: the fire stays richer than asked. */
    private static FireBench kw(double kw) {
        FireBench b = new FireBench().usual(Atmosphere.NEUTRAL);
        b.heatKw = kw;
        return b;
    }

    @Test
    void reachedLevelsAreSilent() {
        assertThat(new FireBench().usual(Atmosphere.HEAVY).run(rule)).isEmpty();
    }

    @Test
    void richIsACautionVeryRichAStop() {
        List<Finding> caution = kw(9.5).run(rule);
        assertThat(caution)
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.CAUTION && f.parts().equals(List.of("burner A", "burner B")));
        kw(9.5).edge(
                        rule,
                        "caution",
                        Severity.CAUTION,
                        caution.get(0).measured().value(),
                        1);
        List<Finding> stop = kw(14).run(rule);
        assertThat(stop).hasSize(1).allMatch(f -> f.severity() == Severity.STOP);
        kw(14).edge(rule, "stop", Severity.STOP, stop.get(0).measured().value(), 1);
    }

    @Test
    void lacksSteps() {
        FireBench b = new FireBench();
        b.steps = false;
        assertThat(b.lacks(rule)).hasSize(1);
    }
}
