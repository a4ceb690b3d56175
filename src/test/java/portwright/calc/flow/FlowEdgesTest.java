package portwright.calc.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import portwright.Edges;

/** Arguments at the edge of what is taken; areas and limits from plain geometry and algebra. */
class FlowEdgesTest {
    private static final Jet JET = new Jet(0.0441, 1.131, 288.15, 101325);

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

    /** Area of a circle 30 mm wide: 706.858 mm². */
    @Test
    void areaOfAJet() {
        assertThat(Jet.area(30)).isEqualTo(706.858e-6, Offset.offset(1e-9));
    }
}
