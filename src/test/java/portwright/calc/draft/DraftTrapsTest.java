package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Each test fails on the naive reading named in it. */
class DraftTrapsTest {

    /** Naive: the inlet passes air alone and the gas is added inside the chamber. */
    @Test
    void fuelPassesTheInletWithTheAir() {
        DraftCase kiln = Cases.reference(1100, 9, 0.5, 0, 0);
        DraftBalance b = DraftBalance.of(kiln);
        InletFlow hole = b.inlets().get(0);
        assertThat(hole.net()).isCloseTo(hole.air() + hole.gas(), within(1e-15));
        // the same hole at the same pressure without gas passes more air than the one that carries gas
        DraftCase same = kiln.withInlets(List.of(kiln.inlets().get(0), Inlet.plain("bare", 0.03, 0.064, 0)));
        DraftBalance two = DraftBalance.of(same);
        double lost = two.inlets().get(1).air() - two.inlets().get(0).air();
        double gas = two.inlets().get(0).gas();
        // heavier mix passes a little more mass; what is left is still most of the gas flow
        assertThat(lost).isBetween(0.6 * gas, gas);
    }

    /** Naive: mixed stream has the density of air. The mix of propane and air is heavier, so the hole passes more mass. */
    @Test
    void mixIsHeavierThanAir() {
        DraftCase kiln = Cases.reference(1100, 9, 0.5, 0, 0);
        DraftBalance two =
                DraftBalance.of(kiln.withInlets(List.of(kiln.inlets().get(0), Inlet.plain("bare", 0.03, 0.064, 0))));
        double share = two.inlets().get(0).gas() / two.inlets().get(0).net();
        double expected = Math.sqrt(1 / (1 - share * (1 - 0.0289651 / 0.0440956)));
        assertThat(two.inlets().get(0).net() / two.inlets().get(1).net())
                .isCloseTo(expected, within(2e-3))
                .isGreaterThan(1.005);
    }

    /** Naive: lambda falls with air pressure (0.82 at 1600 m). At fixed gauge pressure the jet's gas falls with √p: 0.885. */
    @Test
    void altitudeActsOnJetAndDraftTogether() {
        double sea = DraftBalance.of(Cases.reference(1100, 5, 1, 0, 0)).lambda().orElseThrow();
        double sameMass =
                DraftBalance.of(Cases.reference(1100, 5, 1, 0, 1600)).lambda().orElseThrow();
        double p = Cases.pressure(1600) / Cases.SEA;
        double coupled = DraftBalance.of(Cases.reference(1100, 5 * Math.sqrt(p), 1, 0, 1600))
                .lambda()
                .orElseThrow();
        assertThat(coupled / sea).isCloseTo(0.885, within(0.01));
        assertThat(sameMass / sea).isLessThan(0.83);
    }

    /** Naive: a crack is an orifice of its area. A hairline is laminar and passes a small part of that. */
    @Test
    void hairlineIsNoOrifice() {
        DraftCase kiln = Cases.reference(1100, 5, 0.6, 0, 0);
        double area = 0.2e-3 * 1.4;
        double crack = DraftBalance.of(kiln.withLeaks(List.of(new Crack(0.55, 0.2e-3, 1.4, 0.064)), List.of()))
                .leakOut();
        double orifice = DraftBalance.of(kiln.withLeaks(
                        List.of(), List.of(new LeakHole(0.55, 2 * Math.sqrt(area / Math.PI), 0.001))))
                .leakOut();
        assertThat(crack).isPositive().isLessThan(orifice / 10);
    }

    /** Naive: damper share scales the flow. The open mouth's loss is one of several, so half open passes more than half. */
    @Test
    void halfOpenIsNotHalfTheAir() {
        double full = DraftBalance.of(Cases.reference(1100, 5, 1, 0, 0)).airFlow();
        double half = DraftBalance.of(Cases.reference(1100, 5, 0.5, 0, 0)).airFlow();
        assertThat(half / full).isBetween(0.4, 0.5);
    }

    /** Naive: the stack ends at the lid's hot face. The flue hole itself is hot stack. */
    @Test
    void flueHoleIsStack() {
        DraftCase k = Cases.reference(1100, 5, 1, 0, 0);
        DraftCase shorter = k.withFlues(k.flues().stream()
                .map(f -> new Flue(f.name(), f.diameter(), f.length(), 0.55, 1, 0))
                .toList());
        double gain = DraftBalance.of(k).airFlow() / DraftBalance.of(shorter).airFlow();
        assertThat(gain).isBetween(1.04, 1.07);
    }
}
