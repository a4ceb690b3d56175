package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.Atmosphere;

class FlueInletRatioTest {
    private final FlueInletRatio rule = new FlueInletRatio();

    private static List<Finding> ratio(double r) {
        FireBench b = new FireBench();
        b.inletMm = 40;
        b.flueMm = 40 * Math.sqrt(r);
        return b.run(new FlueInletRatio());
    }

    @Test
    void limitsPassAndJustBeyondFires() {
        assertThat(ratio(0.8)).hasSize(1).allMatch(f -> f.severity() == Severity.CAUTION);
        assertThat(ratio(0.8 - 1e-6))
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.STOP && f.forbids() == Forbids.DRILLING);
        assertThat(ratio(1.0)).isEmpty();
        assertThat(ratio(1.0 - 1e-6)).hasSize(1).allMatch(f -> f.severity() == Severity.CAUTION);
        assertThat(ratio(2.0)).isEmpty();
        assertThat(ratio(2.0 + 1e-6)).hasSize(1).allMatch(f -> f.severity() == Severity.CAUTION);
    }

    @Test
    void namesAllHolesAndSaysHowMuch() {
        Finding f = ratio(0.5).get(0);
        assertThat(f.parts()).containsExactly("flue A", "flue B", "inlet A", "inlet B");
        assertThat(f.remedy()).contains("40 mm");
    }

    @Test
    void noFluesIsAStopAndNoInletsIsNotChecked() {
        FireBench b = new FireBench();
        b.flueMm = 0;
        assertThat(b.run(rule)).hasSize(1).allMatch(f -> f.severity() == Severity.STOP);
        assertThat(b.usual(Atmosphere.MEDIUM).run(new CleanBurn()))
                .isNotEmpty()
                .allMatch(f -> f.remedy().startsWith("Add flues of 1924 mm²"));
        FireBench c = new FireBench();
        c.inletMm = 0;
        c.burners = false;
        assertThat(c.lacks(rule)).hasSize(1);
    }
}
