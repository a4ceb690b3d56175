package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.FireBand;
import portwright.calc.firing.GasExchange;
import portwright.file.DesignFile;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;

class FireReviewTest {
    private static Review example() throws Exception {
        return Review.of(DesignFile.read(Path.of("src/test/resources/designs/contract-example.json"))
                .design());
    }

    @Test
    void readsHolesLeaksAndBurners() throws Exception {
        DraftCase k = example().fire().kiln().value();
        assertThat(k.inlets()).extracting(i -> i.name()).containsExactly("inlet A", "inlet B");
        assertThat(k.inlets().get(0).length()).isCloseTo(0.0635, within(1e-12));
        assertThat(k.inlets().get(0).streamTemperature()).isCloseTo(873.15, within(1e-9));
        assertThat(k.inlets().get(0).momentumShare()).isCloseTo(0.2, within(1e-12));
        assertThat(k.inlets().get(1).jetThrust()).as("heat only").isZero();
        assertThat(k.flues().get(0).height()).isCloseTo((18 + 2.5) * 0.0254, within(1e-12));
        assertThat(k.roomTemperature()).isCloseTo(288.15, within(1e-9));
        assertThat(k.cracks()).as("a stated leak is open area").isEmpty();
        assertThat(k.leaks().stream()
                        .mapToDouble(l -> Math.PI / 4 * l.diameter() * l.diameter())
                        .sum())
                .isCloseTo(5e-4, within(1e-12));
    }

    @Test
    void spyholesTakePartOfTheLeak() {
        TestKiln t = TestKiln.polygon(8, "17 in")
                .inlet("in", 0, 0, 35)
                .flue("out", 0, 0, 38)
                .fitting("spy", FittingKind.SPYHOLE, On.WALL, 2, TestKiln.at(0, 200), 20);
        t.burners = List.of();
        Review r = Review.of(t.build());
        DraftCase k = r.fire().kiln().value();
        assertThat(k.leaks()).hasSize(1);
        assertThat(k.leaks().get(0).height()).isCloseTo(0.2, within(1e-12));
        double area = k.cracks().get(0).width() * k.cracks().get(0).length()
                + Math.PI / 4 * Math.pow(k.leaks().get(0).diameter(), 2);
        assertThat(area).isCloseTo(5e-4, within(1e-12));
        double joint = 8 * 17 * 0.0254 * Math.tan(Math.PI / 8);
        assertThat(k.cracks().get(0).length()).isCloseTo(joint, within(1e-9));
        assertThat(r.assumed())
                .extracting(Assumed::field)
                .contains("kiln.leakArea", "damper.open", "room.altitude", "room.temperature");
        assertThat(r.fire().gas()).isFalse();
        assertThat(r.fire().settings()).isEmpty();
    }

    @Test
    void wallPortsActAtTheirHeight() {
        TestKiln t = TestKiln.polygon(8, "17 in").wallInlet("in", 1, 0, 150, 35).flue("out", 0, 0, 38);
        t.burners = List.of();
        assertThat(Review.of(t.build()).fire().kiln().value().inlets().get(0).height())
                .isCloseTo(0.15, within(1e-12));
    }

    @Test
    void unknownBurnersLack() {
        TestKiln t = TestKiln.polygon(8, "17 in").inlet("in", 0, 0, 35).flue("out", 0, 0, 38);
        Known<DraftCase> k = Review.of(t.build()).fire().kiln();
        assertThat(k.known()).isFalse();
        assertThat(k.needs()).containsExactly("burners");
    }

    @Test
    void bandsAreKeptAndCurvesAreDrawn() throws Exception {
        FireReview f = example().fire();
        FireBand b = f.band(1373.15, 0.5);
        assertThat(f.band(1373.15, 0.5)).isSameAs(b);
        DamperCurve c = f.quickCurve(1373.15);
        assertThat(c.points()).hasSize(100);
        assertThat(c.points().get(99).open()).isEqualTo(1);
        assertThat(c.points().get(99).state().lambda().orElseThrow())
                .isGreaterThan(c.points().get(60).state().lambda().orElseThrow());
    }

    @Test
    void levelsLieInOrderAlongTheDamper() throws Exception {
        List<LevelSetting> levels = example().fire().levels(1373.15);
        assertThat(levels).hasSize(4);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i).openMid()).isLessThan(levels.get(i - 1).openMid());
            assertThat(levels.get(i).openHigh()).isCloseTo(levels.get(i - 1).openLow(), within(1e-6));
        }
    }

    @Test
    void draftForTheFiring() throws Exception {
        GasExchange g = new DraftGas(example().fire().kiln().value(), 600);
        GasExchange.Flow on = g.at(true, 1, 1373.15);
        assertThat(on.fuelNetW()).isCloseTo(3222, within(5.0));
        assertThat(on.lambda()).isGreaterThan(1);
        GasExchange.Flow off = g.at(false, 1, 1373.15);
        assertThat(off.heatW()).isNegative();
        assertThat(off.lambda()).isZero();
        double open = g.damperFor(0.9, 1373.15);
        assertThat(g.at(true, open, 1373.15).lambda()).isCloseTo(0.9, within(1e-6));
        for (double t = 260; t < 1650; t += 20) {
            GasExchange.Flow f = g.at(true, 0.6, t);
            assertThat(f.heatW()).as(t + " K").isFinite();
        }
    }

    @Test
    void everyDesignStateIsFinite() throws Exception {
        Design d = example().design();
        FireReview f = Review.of(d).fire();
        for (double open : new double[] {0, 0.05, 0.3, 1}) {
            for (double k : new double[] {293.15, 800, 1100, 1600}) {
                BurnState s = BurnState.of(f, k, open);
                assertThat(s.floorPressurePa()).isFinite();
                assertThat(s.airGPerS()).isFinite();
                if (s.lambda() == null) {
                    assertThat(s.why()).isNotNull();
                }
                assertThat(s.coPctDry() == null).isEqualTo(s.formal());
            }
        }
    }
}
