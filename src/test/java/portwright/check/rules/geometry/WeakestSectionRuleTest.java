package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.FittingKind;
import portwright.model.On;

/** Square slab of 720 mm: one hole in its middle loses d+/720 of the line across. */
class WeakestSectionRuleTest {
    private static final String RULE = "weakest-section";

    @Test
    void aThirdPasses() {
        Finding f = GeoBench.edge(
                RULE,
                Severity.STOP,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square().inlet("A", 0, 0, 240 - 2 - t),
                "A",
                "floor");
        assertThat(f.measured().value()).isCloseTo(1 / 3.0 + 1e-3 / 720, within(1e-9));
        assertThat(f.marks()).hasSize(1);
        assertThat(f.marks().get(0).a().distance(f.marks().get(0).b())).isCloseTo(720, within(1e-6));
    }

    @Test
    void aQuarterPasses() {
        GeoBench.edge(
                RULE,
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square().flue("F", 0, 0, 180 - 2 - t),
                "F",
                "lid");
    }

    /** Two holes of 60 (d+ 62) and 120 (d+ 122) on one diameter: 184/720, a spyhole of 30 on it as well: 214/720. */
    @Test
    void holesOnOneLineAddUpAndExistingHolesCount() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 0, -200, 60).inlet("B", 0, 200, 120);
        assertThat(GeoBench.of(k, RULE).get(0).measured().value()).isCloseTo(184 / 720.0, within(1e-9));
        k.fitting("spyhole", FittingKind.SPYHOLE, On.FLOOR, null, TestKiln.at(0, 0), 30);
        assertThat(GeoBench.of(k, RULE).get(0).measured().value()).isCloseTo(214 / 720.0, within(1e-9));
    }

    /** A groove 20 deep in 60 of slab counts by a third: 300 mm of it along the line lose 100, the hole 98 + 2 more. */
    @Test
    void grooveCountsByItsDepth() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 250, 0, 98)
                .slabElement("EF", On.FLOOR, 16, 20, TestKiln.at(-192, 0), TestKiln.at(92, 0));
        assertThat(GeoBench.of(k, RULE).get(0).measured().value()).isCloseTo(200 / 720.0, within(1e-6));
    }
}
