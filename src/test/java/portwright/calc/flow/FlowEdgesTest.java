package portwright.calc.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import portwright.Edges;

/** Arguments at the edge of what is taken; areas and limits from plain geometry and algebra. */
class FlowEdgesTest {
    private static final Hole HOLE = new Hole(0.03, 0.064);
    private static final Jet JET = new Jet(0.0441, 1.131, 288.15, 101325);
    private static final Crack CRACK = new Crack(1e-5, 1.8, 0.06);

    @Test
    void holes() {
        Edges.hold("(0,10)", d -> new Hole(d, 0.06));
        Edges.hold("[0,10)", l -> new Hole(0.03, l));
        Edges.hold("[0,1]", Hole::openAreaLoss);
        Edges.hold("(0,1]", Hole::exitLoss);
        Edges.hold("[0,1]", share -> HOLE.massFlow(0, 1.2, 1.8e-5, share));
        Edges.hold("(0,100000)", density -> HOLE.massFlow(1, density, 1.8e-5));
        Edges.hold("(0,100000)", viscosity -> HOLE.massFlow(1, 1.2, viscosity));
        Edges.hold("(-1e7,1e7)", drop -> HOLE.massFlow(drop, 1.2, 1.8e-5));
        Edges.hold("(0,10)", factor -> HOLE.massFlow(1, 1.2, 1.8e-5, 1, factor));
    }

    @Test
    void jets() {
        Edges.hold("(0.001,0.3)", m -> new Jet(m, 1.131, 288.15, 101325));
        Edges.hold("(1,2)", k -> new Jet(0.0441, k, 288.15, 101325));
        Edges.hold("(150,1000)", t -> new Jet(0.0441, 1.131, t, 101325));
        Edges.hold("(1e4,2e5)", p -> new Jet(0.0441, 1.131, 288.15, p));
        Edges.hold("(0,1]", cd -> JET.massFlow(cd, 1e-6, 2740));
        Edges.hold("[0,1)", area -> JET.massFlow(0.9, area, 2740));
        Edges.hold("(0,100)", Jet::area);
        Edges.hold("[0,1e7]", JET::massFlux);
        Edges.hold("[0,1e7]", JET::speed);
    }

    @Test
    void gases() {
        Edges.hold("(0,inf)", p -> GasState.density(p, 0.029, 300));
        Edges.hold("(0,inf)", m -> GasState.density(101325, m, 300));
        Edges.hold("(0,5000)", GasState::viscosity);
        Edges.hold("[-500,11000]", GasState::pressureAtAltitude);
        assertThatThrownBy(() -> GasState.density(101325, 0.029, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> GasState.density(1e200, 1e200, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> GasState.density(1e300, 1, 1e-10)).hasMessageContaining("above 0");
    }

    @Test
    void cracks() {
        Edges.hold("[0,1)", gap -> new Crack(gap, 1.8, 0.06));
        Edges.hold("[0,100)", width -> new Crack(1e-3, width, 0.06));
        Edges.hold("(0,10)", depth -> new Crack(1e-3, 1.8, depth));
        Edges.hold("(-1e7,1e7)", drop -> CRACK.speed(drop, 1.2, 1.8e-5));
        assertThatThrownBy(() -> CRACK.speed(1, 0, 1.8e-5)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> CRACK.speed(1, 1.2, 0)).hasMessageContaining("above 0");
    }

    /** A hairline passes ρ w h³ Δp/(12 μ L): flow between parallel plates. 1.2 · 1.8 · 1e-15 · 5/(12 · 1.8e-5 · 0.06) = 8.3333e-10 kg/s. */
    @Test
    void hairlineIsFlowBetweenPlates() {
        assertThat(CRACK.massFlow(5, 1.2, 1.8e-5)).isCloseTo(8.33333e-10, Percentage.withPercentage(1e-3));
        assertThat(CRACK.massFlow(-5, 1.2, 1.8e-5)).isCloseTo(-8.33333e-10, Percentage.withPercentage(1e-3));
    }

    /** Area of a circle 30 mm wide: 706.858 mm². */
    @Test
    void areaOfAHole() {
        assertThat(HOLE.area()).isEqualTo(706.858e-6, Offset.offset(1e-9));
        assertThat(Jet.area(30)).isEqualTo(706.858e-6, Offset.offset(1e-9));
    }
}
