package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.Atmosphere;

class OxidisedZoneNoteTest {
    private final OxidisedZoneNote rule = new OxidisedZoneNote();

    @Test
    void openInletsReachSixDiameters() {
        List<Finding> f = new FireBench().usual(Atmosphere.MEDIUM).run(rule);
        assertThat(f)
                .hasSize(1)
                .allMatch(x -> x.severity() == Severity.NOTE && x.parts().equals(List.of("inlet A", "inlet B")));
        assertThat(f.get(0).measured().value()).isCloseTo(6 * 35.0, within(1e-9));
    }

    @Test
    void shelfTurnsTheStreamAside() {
        FireBench b = new FireBench().usual(Atmosphere.MEDIUM);
        b.kiln.roundShelf("bottom", 380, 70, 38, TestKiln.polar("6 in", 0));
        assertThat(b.run(rule).get(0).measured().value()).isCloseTo(70, within(1e-9));
    }

    @Test
    void oxidizingFiringHasNone() {
        assertThat(new FireBench().usual(Atmosphere.OXIDIZING).run(rule)).isEmpty();
    }
}
