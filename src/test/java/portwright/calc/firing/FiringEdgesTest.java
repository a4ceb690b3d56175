package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.Edges;

/** Edges of arguments, and the small laws of the firing worked by hand. */
class FiringEdgesTest {
    private static final Layer LAYER = new Layer(0.1, Conductivity.constant(0.2), 500, 1000);
    private static final Film FILM = (face, room) -> 10;

    private static ShellPart part(double inner, double outer) {
        return new ShellPart("wall", List.of(LAYER), inner, outer, FILM);
    }

    private static KilnHeat kiln(double factor, double load, double room, OpenPort... ports) {
        return new KilnHeat(
                List.of(part(1, 2), part(3, 4)), factor, load, 1, Elements.fresh(1000), List.of(ports), room);
    }

    private static Step step(double rate, double share, boolean gas, boolean open) {
        return new Step(new Step.Hold(60), rate, true, gas, share, open, new Step.Share(0.5));
    }

    /** Zero and what is no number are refused where a size must be above zero. */
    @Test
    void arguments() {
        for (double bad : new double[] {0, -1e-9, Double.NaN}) {
            assertThatThrownBy(() -> new Layer(bad, Conductivity.constant(1), 1, 1))
                    .hasMessageContaining("layer");
            assertThatThrownBy(() -> new Layer(1, Conductivity.constant(1), bad, 1))
                    .hasMessageContaining("layer");
            assertThatThrownBy(() -> new Layer(1, Conductivity.constant(1), 1, bad))
                    .hasMessageContaining("layer");
            assertThatThrownBy(() -> OutsideFilm.of(Facing.UP, bad, 0.3)).hasMessageContaining("length above zero");
            assertThatThrownBy(() -> part(bad, 1)).hasMessageContaining("wall: needs");
            assertThatThrownBy(() -> part(1, bad)).hasMessageContaining("wall: needs");
            assertThatThrownBy(() -> kiln(bad, 0, 293)).hasMessageContaining("loss factor");
            assertThatThrownBy(() -> kiln(1, 0, bad)).hasMessageContaining("room temperature");
            assertThatThrownBy(() -> new OpenPort(bad, 1, false)).hasMessageContaining("port");
            assertThatThrownBy(() -> new Numerics(bad, 1, 1, 9)).hasMessageContaining("time step");
            assertThatThrownBy(() -> step(bad, 1, false, false)).hasMessageContaining("rate");
        }
        Edges.hold("[0,1]", e -> OutsideFilm.of(Facing.UP, 1, e));
        Edges.hold("(0,inf)", f -> Conductivity.constant(1).times(f));
        Edges.hold("[0,inf)", w -> Elements.fresh(w));
        assertThatThrownBy(() -> new Elements(1, -1, 1)).hasMessageContaining("out of range");
        assertThatThrownBy(() -> new Elements(1, 0, -1e-9)).hasMessageContaining("out of range");
        assertThat(new Elements(1, 0, 0).fullW()).isZero();
        assertThatThrownBy(() -> kiln(1, -1e-9, 293)).hasMessageContaining("loss factor");
        assertThat(kiln(1, 0, 293).innerAreaM2()).isEqualTo(4);
        assertThatThrownBy(() -> new ShellPart("lid", List.of(), 1, 1, FILM))
                .hasMessageContaining("lid: needs a layer");
        assertThatThrownBy(() -> new OpenPort(1, -1e-9, false)).hasMessageContaining("port");
        assertThatThrownBy(() -> new Numerics(30, 0, 300, 9e3)).hasMessageContaining("grid");
        assertThatThrownBy(() -> new Numerics(30, 12, 29.9, 9e3)).hasMessageContaining("sample");
        assertThatThrownBy(() -> new Numerics(30, 12, 30, 30)).hasMessageContaining("longest");
        assertThat(new Numerics(30, 1, 30, 30.1).halfStep().stepS()).isEqualTo(15);
        assertThat(Numerics.STANDARD.halfGrid().intervalsPerLayer()).isEqualTo(24);
        assertThatThrownBy(() -> step(1, -1e-9, false, false)).hasMessageContaining("0 to 1");
        assertThatThrownBy(() -> step(1, 1.000001, false, false)).hasMessageContaining("0 to 1");
        assertThat(step(1, 0, false, false).portsOpen()).isFalse();
        assertThat(step(1, 1, true, false).portsOpen()).isTrue();
        assertThat(step(1, 1, false, true).portsOpen()).isTrue();
        assertThat(step(1, 1, false, false).controlled()).isFalse();
        assertThat(Step.electric(new Step.Hold(60), 1).controlled()).isTrue();
        assertThatThrownBy(() -> Conductivity.linear(0, 1)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> Conductivity.linear(1, -1e-3)).hasMessageContaining("above zero");
    }

    /** 0.2 + 0.1 at 1000 °C: 0.25 at 500 °C, 0.35 at 1500; a falling line never below a tenth of where it starts. */
    @Test
    void conductivityOnItsLine() {
        Conductivity k = Conductivity.linear(0.2, 1e-4);
        assertThat(k.at(773.15)).isEqualTo(0.25, within(1e-12));
        assertThat(k.at(1773.15)).isEqualTo(0.35, within(1e-12));
        assertThat(k.times(2).at(773.15)).isEqualTo(0.5, within(1e-12));
        assertThat(Conductivity.linear(1, -9e-4).at(3000)).isEqualTo(0.1, within(1e-12));
    }

    /** σ · (400² + 300²)(400 + 300) = 5.670374e-8 · 250 000 · 700 = 9.92315; by half at emissivity 0.5. 100 K: ∛ 4.641589, of 16 K over 1 m ¼ power 2. */
    @Test
    void films() {
        assertThat(Heat.radiationCoefficient(1, 400, 300)).isEqualTo(9.92315, within(1e-4));
        assertThat(Heat.radiationCoefficient(0.5, 400, 300)).isEqualTo(4.961577, within(1e-4));
        assertThat(OutsideFilm.coefficient(Facing.SIDE, 1, 0, 400, 300)).isEqualTo(1.31 * 4.641589, within(1e-5));
        assertThat(OutsideFilm.coefficient(Facing.UP, 1, 0, 400, 300)).isEqualTo(1.52 * 4.641589, within(1e-5));
        assertThat(OutsideFilm.coefficient(Facing.DOWN, 1, 0, 316, 300)).isEqualTo(0.59 * 2, within(1e-9));
        assertThat(OutsideFilm.coefficient(Facing.DOWN, 16, 0, 316, 300)).isEqualTo(0.59, within(1e-9));
        assertThat(OutsideFilm.of(Facing.SIDE, 1, 1).coefficient(400, 300))
                .isEqualTo(1.31 * 4.641589 + 9.92315, within(1e-4));
    }

    /** P = 1000 W · 0.9²/1.2. */
    @Test
    void agedElementsOnLowVoltage() {
        assertThat(new Elements(1000, 0.2, 0.9).fullW()).isEqualTo(675, within(1e-9));
    }

    /** A short hole sees 1 - x/2 (first term of its series), x = L/r: joined smoothly to the closed form. */
    @Test
    void shortHoles() {
        assertThat(new OpenPort(0.04, 0, false).viewFactor()).isEqualTo(1);
        assertThat(new OpenPort(0.04, 0.02 * 0.009, false).viewFactor()).isEqualTo(1 - 0.0045, within(1e-9));
        assertThat(new OpenPort(0.04, 0.02 * 0.011, false).viewFactor()).isEqualTo(1 - 0.0055, within(5e-5));
        assertThat(new OpenPort(0.04, 0, false).areaM2()).isEqualTo(1.256637e-3, within(1e-8));
    }

    /** Flows that are lines in temperature come back as they are; radiation falls with the damper over a flue only. */
    @Test
    void flowsBetweenTheirKnots() {
        GasExchange lines = new GasExchange() {
            @Override
            public Flow at(boolean gasOn, double damper, double t) {
                return new Flow(-2 * t, 3 * t, 4e-3 * t, 5e-3 * t, 1e-3 * t);
            }

            @Override
            public double damperFor(double lambda, double chamberK) {
                return 0;
            }
        };
        KilnHeat k = kiln(1, 0, 300, new OpenPort(0.04, 0, true), new OpenPort(0.04, 0, false));
        FlowCurve c = new FlowCurve(k, lines, step(1, 1, true, true), 0.5);
        GasExchange.Flow f = c.at(1007);
        assertThat(f.heatW()).isEqualTo(-2014, within(1e-9));
        assertThat(f.fuelNetW()).isEqualTo(3021, within(1e-9));
        assertThat(f.fuelKgPerS()).isEqualTo(4.028, within(1e-9));
        assertThat(f.airKgPerS()).isEqualTo(5.035, within(1e-9));
        assertThat(f.lambda()).isEqualTo(1.007, within(1e-9));
        assertThat(c.heatW(613)).isEqualTo(-1226, within(1e-9));
        assertThat(c.heatSlope(613)).isEqualTo(-2, within(1e-9));
        // σ A (1 + 0.5) (1000⁴ - 300⁴) = 5.670374e-8 · 1.256637e-3 · 1.5 · 9.919e11
        assertThat(c.radiationW(1000)).isEqualTo(106.018, within(1e-2));
        assertThat(c.radiationSlope(1000)).isEqualTo(4 * 106.884 / 1000, within(1e-4));
        FlowCurve shut = new FlowCurve(k, lines, step(1, 1, false, false), 0.5);
        assertThat(shut.at(1000)).isEqualTo(GasExchange.Flow.NONE);
        assertThat(shut.heatW(1000)).isZero();
        assertThat(shut.heatSlope(1000)).isZero();
        assertThat(shut.radiationW(1000)).isZero();
    }

    @Test
    void changedKilnsKeepTheRest() {
        KilnHeat k = kiln(1.25, 5000, 293, new OpenPort(0.04, 0, true));
        assertThat(k.withLoad(9).loadHeatCapacityJPerK()).isEqualTo(9);
        assertThat(k.withLossFactor(2).lossFactor()).isEqualTo(2);
        assertThat(k.withElements(Elements.fresh(7)).elements().nominalW()).isEqualTo(7);
        assertThat(k.conducting(2).parts().get(0).layers().get(0).conductivity().at(500))
                .isEqualTo(0.4, within(1e-12));
        assertThat(k.conducting(2).withLoad(9))
                .usingRecursiveComparison()
                .ignoringFields("parts", "loadHeatCapacityJPerK")
                .isEqualTo(k);
        assertThat(part(1, 1).thicknessM()).isEqualTo(0.1);
    }
}
