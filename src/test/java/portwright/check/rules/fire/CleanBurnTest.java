package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.Atmosphere;

class CleanBurnTest {
    private final CleanBurn rule = new CleanBurn();

    private static FireBench kw(double kw) {
        FireBench b = new FireBench().usual(Atmosphere.MEDIUM);
        b.heatKw = kw;
        return b;
    }

    @Test
    void littleGasBurnsClean() {
        assertThat(kw(2).run(rule)).isEmpty();
    }

    @Test
    void tooMuchGasForbidsLightingFarTooMuchForbidsDrilling() {
        List<Finding> much = kw(9).run(rule);
        assertThat(much).anyMatch(f -> f.severity() == Severity.STOP && f.forbids() == Forbids.LIGHTING);
        assertThat(much).noneMatch(f -> f.forbids() == Forbids.DRILLING);
        List<Finding> far = kw(25).run(rule);
        assertThat(far)
                .anyMatch(f -> f.severity() == Severity.STOP
                        && f.forbids() == Forbids.DRILLING
                        && f.parts().equals(List.of("flue A", "flue B")));
    }

    @Test
    void edges() {
        double low = FireBench.of(kw(5.2).run(rule), Severity.CAUTION)
                .get(0)
                .measured()
                .value();
        kw(5.2).edge(rule, "lambda", Severity.CAUTION, low, 1);
        double high =
                FireBench.of(kw(9).run(rule), Severity.STOP).get(0).measured().value();
        kw(9).edge(rule, "lambda", Severity.STOP, high, 1);
    }

    @Test
    void remedyNamesFlueAndJet() {
        FireBench b = kw(0);
        b.jet = "1.1 mm";
        Finding f = b.run(rule).get(0);
        assertThat(f.remedy()).contains("Enlarge the flues to").contains("fit a smaller jet: #");
    }

    @Test
    void lacksBurnersAndSteps() {
        FireBench b = new FireBench();
        b.burners = false;
        b.steps = false;
        assertThat(b.lacks(rule))
                .extracting(n -> n.forbids())
                .containsExactlyInAnyOrder(Forbids.DRILLING, Forbids.LIGHTING);
        assertThat(b.lacks(rule).get(0).needs()).contains("burners", "firing.steps");
    }
}
