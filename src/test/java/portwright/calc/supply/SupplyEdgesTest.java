package portwright.calc.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import portwright.Edges;
import portwright.data.LpGas;

/** Edges of arguments, mixes weighted by hand, and draws whose heat balance has a closed form. */
class SupplyEdgesTest {
    private static final Liquid PROPANE = Liquid.pure(LpGas.named("propane"));
    private static final Liquid BUTANE = Liquid.pure(LpGas.named("butane"));
    private static final Drum DRUM = new Drum(10, 0.3, 0);
    /** 4 · 1 kg/(500 kg/m³ · 0.3 m) + 1.5 π 0.3²/4: 0.132695 m², times 10.3 W/m²K. */
    private static final double WALL_W_PER_K = 10.3 * 0.132695;

    @Test
    void arguments() {
        Edges.hold("(0,inf)", kg -> new Drum(kg, 0.3, 5));
        Edges.hold("(0,inf)", m -> new Drum(5, m, 5));
        Edges.hold("[0,inf)", steel -> new Drum(5, 0.3, steel));
        assertThat(DRUM.wettedAreaM2(0, 500)).isEqualTo(1.5 * Math.PI * 0.09 / 4, within(1e-12));
        assertThatThrownBy(() -> DRUM.wettedAreaM2(-1e-9, 500)).hasMessageContaining("at least 0");
        assertThatThrownBy(() -> DRUM.wettedAreaM2(1, 0)).hasMessageContaining("at least 0");
        Edges.hold("[0,inf)", s -> new SupplyRun.Draw(s, 1));
        Edges.hold("[0,inf)", kg -> new SupplyRun.Draw(1, kg));
        Edges.hold("(0,inf)", kg -> draw(t -> 0, 1, kg, 280, 280, 1e-4, 0, 10));
        Edges.hold("(0,inf)", q -> draw(t -> 0, 1, 1, 280, 280, q, 0, 10));
        assertThatThrownBy(() -> draw(t -> 0, 1, 1, 280, 280, 1e-4, 0, 0)).hasMessageContaining("time above 0");
        assertThatThrownBy(() -> draw(t -> 0, 1, 1, 280, Double.NaN, 1e-4, 0, 9))
                .hasMessageContaining("time above 0");
        assertThat(new Liquid(PROPANE.gases(), List.of(1.0)).moleShares()).containsExactly(1.0);
        assertThat(Liquid.propaneButane(1).vapourPressurePa(283)).isEqualTo(PROPANE.vapourPressurePa(283));
        assertThatThrownBy(() -> new Liquid(PROPANE.gases(), List.of(1 + 2e-9))).hasMessageContaining("add up to 1");
    }

    @Test
    void theRangeOfTemperaturesIsClosed() {
        Liquid propane = Liquid.pure(LpGas.named("propane"));
        double low = propane.vapourPressurePa(propane.minK());
        double high = propane.vapourPressurePa(propane.maxK());
        assertThat(propane.saturationK(low)).isEqualTo(223.15, within(1e-6));
        assertThat(propane.saturationK(high)).isEqualTo(333.15, within(1e-6));
        assertThatThrownBy(() -> propane.saturationK(low * 0.999999)).hasMessageContaining("from -50");
        assertThatThrownBy(() -> propane.saturationK(high * 1.000001)).hasMessageContaining("to 60");
        assertThatThrownBy(() -> propane.vapourPressurePa(223.1499))
                .hasMessageContaining("from -50.0 to 60.0 °C, asked at -50.0");
        assertThatThrownBy(() -> propane.vapourPressurePa(333.1501)).hasMessageContaining("asked at 60.0");
    }

    /** By mole 1 : 1, masses 44.09562 : 58.1222. 102.21782/(44.09562/508 + 58.1222/579) = 546.076 kg/m³; heat (44.09562 · 428 + 58.1222 · 386)/102.21782 = 404.118 kJ/kg. */
    @Test
    void aMixIsWeightedByMass() {
        Liquid mix = Liquid.propaneButane(0.5);
        assertThat(mix.densityKgPerM3()).isEqualTo(546.076, within(0.001));
        assertThat(mix.boilingLatentJPerKg()).isEqualTo(404_118, within(1.0));
        // the vapour's latent heat lies between the pure ones by the mass shares of the vapour
        double p = PROPANE.vapourPressurePa(283) * 44.09562;
        double b = BUTANE.vapourPressurePa(283) * 58.1222;
        assertThat(mix.latentJPerKg(283))
                .isEqualTo((p * PROPANE.latentJPerKg(283) + b * BUTANE.latentJPerKg(283)) / (p + b), within(1e-3));
    }

    private static ShortDraw.Course draw(
            DoubleUnaryOperator latent,
            double frost,
            double kg,
            double startK,
            double airK,
            double kgPerS,
            double coldestK,
            double limitS) {
        return ShortDraw.follow(DRUM, 500, latent, frost, kg, startK, airK, kgPerS, coldestK, limitS);
    }

    private static ShortDraw.Point last(ShortDraw.Course c) {
        return c.points().get(c.points().size() - 1);
    }

    /** Next to nothing drawn: the liquid nears the air as exp(-U A t/(m c + ms cs)), c 2500 and cs 460 J/kgK. */
    @Test
    void aRestingCylinderWarmsExponentially() {
        for (double s : new double[] {7, 600, 607}) {
            ShortDraw.Course c = draw(t -> 0, 0.65, 1, 280, 290, 1e-12, 0, s);
            assertThat(last(c).liquidK()).isEqualTo(290 - 10 * Math.exp(-WALL_W_PER_K * s / 2500), within(2e-5));
            assertThat(c.endS()).isEqualTo(s);
        }
        ShortDraw.Course frosted = draw(t -> 0, 0.65, 1, 260, 270, 1e-12, 0, 600);
        assertThat(last(frosted).liquidK())
                .isEqualTo(270 - 10 * Math.exp(-0.65 * WALL_W_PER_K * 600 / 2500), within(2e-5));
        ShortDraw.Course steel = ShortDraw.follow(new Drum(10, 0.3, 2), 500, t -> 0, 1, 1, 280, 290, 1e-12, 0, 600);
        assertThat(last(steel).liquidK())
                .isEqualTo(290 - 10 * Math.exp(-WALL_W_PER_K * 600 / (2500 + 2 * 460)), within(2e-5));
    }

    /** No wall to speak of and a latent heat of 1500 J/kgK times T: dT/T = (1500/2500) dm/m, so T = 280 · 0.4^0.6 = 161.5824 K once 0.4 of the mass is left. */
    @Test
    void aHardDrawCoolsAsAPowerOfTheMass() {
        ShortDraw.Course c = ShortDraw.follow(new Drum(10, 1e-4, 0), 1e12, t -> 1500 * t, 1, 1, 280, 280, 1e-3, 0, 600);
        assertThat(last(c).liquidK()).isEqualTo(161.5824, within(1e-3));
        assertThat(c.points().stream().map(ShortDraw.Point::timeS))
                .containsExactly(0., 60., 120., 180., 240., 300., 360., 420., 480., 540., 600.);
        assertThat(c.points().get(3).liquidKg()).isEqualTo(0.82, within(1e-9));
    }

    @Test
    void theEndIsMetAtTheVeryLimit() {
        assertThat(draw(t -> 0, 1, 1, 280, 280, 1e-4, 280, 10).end()).isEqualTo(ShortDraw.End.TOO_COLD);
        assertThat(draw(t -> 0, 1, 0.02, 280, 280, 1e-4, 0, 10).endS()).isZero();
        assertThat(draw(t -> 0, 1, 0.02, 280, 280, 1e-4, 0, 10).end()).isEqualTo(ShortDraw.End.EMPTY);
    }

    /** Two cylinders share the draw; the course of the second draw goes on where the first and the rest ended. */
    @Test
    void aBankOfTwo() {
        List<SupplyRun.Draw> draws =
                List.of(new SupplyRun.Draw(600, 2e-4), new SupplyRun.Draw(300, 0), new SupplyRun.Draw(600, 4e-4));
        SupplyRun run = SupplyRun.of(DRUM, 2, PROPANE, 8, 283.15, 2740, draws).orElseThrow();
        assertThat(run.availableKg()).isEqualTo(16);
        assertThat(run.neededKg()).isEqualTo(0.36, within(1e-12));
        assertThat(run.lowestKg()).isEqualTo(8 - 0.18, within(1e-12));
        assertThat(run.hoursAtPeak()).isEqualTo(16 / 4e-4 / 3600, within(1e-9));
        assertThat(run.starvedS()).isEqualTo(1500, within(1e-9));
        assertThat(run.course().get(10).timeS()).isEqualTo(600, within(1e-9));
        assertThat(run.course().get(11).timeS()).isEqualTo(900, within(1e-9));
        assertThat(run.course().get(21).timeS()).isEqualTo(1500, within(1e-9));
        assertThat(run.course().get(21).liquidKg()).isEqualTo(8 - 0.18, within(1e-9));
        assertThat(run.shareUsed()).isEqualTo(4e-4 / run.capacityKgPerS(), within(1e-12));
        assertThat(run.capacityKgPerS())
                .isEqualTo(
                        2 * BoilOff.continuousKgPerS(DRUM, PROPANE, 7.82, 283.15, run.coldestUsefulK()), within(1e-12));
    }

    /** Butane at 60 °C has 0.64 MPa; a regulator of 450 kPa wants that and the atmosphere and 1 bar more. */
    @Test
    void aPressureThatTheLiquidNeverHasStarvesAtOnce() {
        List<SupplyRun.Draw> draws = List.of(new SupplyRun.Draw(600, 1e-4));
        SupplyRun run = SupplyRun.of(DRUM, 1, BUTANE, 8, 333.15, 450_000, draws).orElseThrow();
        assertThat(run.coldestUsefulK()).isEqualTo(BUTANE.maxK());
        assertThat(run.end()).isEqualTo(ShortDraw.End.TOO_COLD);
        assertThat(run.course()).isEmpty();
        SupplyRun empty = SupplyRun.of(DRUM, 1, PROPANE, 0, 283, 2740, draws).orElseThrow();
        assertThat(empty.end()).isEqualTo(ShortDraw.End.EMPTY);
        assertThat(empty.starvedS()).isZero();
    }
}
