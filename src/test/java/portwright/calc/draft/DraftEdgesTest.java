package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Inputs at the edge give a flagged answer or a clear error. */
class DraftEdgesTest {
    private final DraftCase base = Cases.reference(1100, 5, 1, 0, 0);

    @Test
    void shutFluesPushGasOutOfTheInlets() {
        DraftBalance b = DraftBalance.of(base.damper(0));
        assertThat(b.flueFlow()).isZero();
        assertThat(b.spills()).isTrue();
        assertThat(b.lambda()).isEmpty();
    }

    @Test
    void noHoleAtAll() {
        DraftBalance b = DraftBalance.of(base.withInlets(List.of()).withFlues(List.of()));
        assertThat(b.sealed()).isTrue();
        assertThat(b.airFlow()).isZero();
        assertThat(b.lambda()).isEmpty();
        assertThat(b.inletDrive()).isEmpty();
    }

    @Test
    void pluggedInletsUnderLitBurnersSpillAllGas() {
        DraftBalance b = DraftBalance.of(base.withInlets(base.inlets().stream()
                .map(i -> new Inlet(i.name(), 0, i.length(), 0, 0, i.fuel(), i.gasFlow(), i.jetThrust(), 1, 0))
                .toList()));
        assertThat(b.gasSpilled()).isCloseTo(base.gasFlow(), within(1e-15));
        assertThat(b.gasFlow()).isZero();
        assertThat(b.lambda()).isEmpty();
    }

    @Test
    void oneHoleOnly() {
        DraftBalance b =
                DraftBalance.of(base.withFlues(List.of()).withInlets(List.of(Inlet.plain("only", 0.03, 0.064, 0))));
        assertThat(b.airFlow()).isZero();
        assertThat(b.floorPressure()).isCloseTo(0, within(1e-12));
        assertThat(b.sealed()).isFalse();
    }

    @Test
    void coldKilnHasNoDraft() {
        DraftBalance b = DraftBalance.of(Cases.reference(20, 0, 1, 0, 0));
        assertThat(b.airFlow()).isZero();
        assertThat(b.neutralLevel()).isEmpty();
    }

    @Test
    void coldKilnWithGasOnHasAlmostNoAir() {
        DraftBalance b = DraftBalance.of(Cases.reference(20, 5, 1, 0, 0));
        b.lambda().ifPresent(l -> assertThat(l).isLessThan(0.6));
    }

    @Test
    void downDraughtOnTheFlueTurnsTheFlow() {
        DraftBalance b = DraftBalance.of(base.withFlues(base.flues().stream()
                .map(f -> new Flue(f.name(), f.diameter(), f.length(), f.height(), 1, 20))
                .toList()));
        assertThat(b.flueBackflow()).isTrue();
        assertThat(b.spills()).isTrue();
        assertThat(b.lambda()).isEmpty();
        assertThat(b.inletDrive().orElseThrow()).isNegative();
    }

    @Test
    void windOnOnePortTurnsOnlyThatPort() {
        List<Inlet> in = new java.util.ArrayList<>(base.damper(0.4).inlets());
        in.set(1, in.get(1).withOutsidePressure(-1.5));
        DraftBalance b = DraftBalance.of(base.damper(0.4).withInlets(in));
        assertThat(b.inlets().get(1).spills()).isTrue();
        assertThat(b.inlets().get(0).spills()).isFalse();
        assertThat(b.lambda()).isEmpty();
    }

    @Test
    void highPlaces() {
        DraftBalance b = DraftBalance.of(Cases.reference(1250, 5, 0.5, 0.2, 3000));
        assertThat(b.lambda().orElseThrow()).isBetween(0.3, 0.9);
    }

    @Test
    void wrongNumbersAreRefusedInWords() {
        assertThatThrownBy(() -> new DraftCase(-5, 0.5, 293, 101325, List.of(), List.of(), List.of(), List.of()))
                .hasMessageContaining("chamber temperature");
        assertThatThrownBy(() -> new Flue("flue A", 0.04, 0.06, 0.6, 1.2, 0))
                .hasMessageContaining("open share of flue A");
        assertThatThrownBy(() -> Inlet.plain("inlet A", 0.03, 0.06, 0).withGas(null, 1e-4, 0, 0))
                .hasMessageContaining("inlet A");
        assertThatThrownBy(() -> Inlet.plain("inlet A", Double.NaN, 0.06, 0))
                .hasMessageContaining("diameter of inlet A");
    }
}
