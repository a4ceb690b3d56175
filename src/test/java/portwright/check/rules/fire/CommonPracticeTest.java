package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.Changed;
import portwright.TestKiln;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.combustion.Products;
import portwright.calc.draft.FireState;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.LimitsInForce;
import portwright.check.Severity;
import portwright.check.rules.FireRules;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.geometry.KilnGeometry;
import portwright.model.Atmosphere;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.Damper;
import portwright.model.Design;
import portwright.model.FiringPlan;
import portwright.model.FlameAt;
import portwright.model.Fuel;
import portwright.model.Heat;
import portwright.model.Jet;
import portwright.model.Room;
import portwright.review.FireReview;
import portwright.review.LevelSetting;
import portwright.review.Review;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Built kilns told among potters: common practice, no source. */
class CommonPracticeTest {
    private static final double INCH = 25.4;

    private static Burner heat(String name, String port, String gross, String net) {
        return new Burner(
                name,
                port,
                Fuel.PROPANE,
                null,
                null,
                null,
                null,
                null,
                q(net, Kind.POWER),
                q(gross, Kind.POWER),
                null,
                null,
                null,
                null,
                null,
                null,
                FlameAt.CHAMBER,
                null);
    }

    private static Quantity q(String text, Kind kind) {
        return text == null ? null : Quantity.parse(text, kind);
    }

    private static Design fire(TestKiln k, Burner... burners) {
        Design d = k.build();
        FireBench steps =
                new FireBench().step("900 °C", Heat.ELECTRIC, null).step("1200 °C", Heat.BOTH, Atmosphere.MEDIUM);
        return Changed.of(d)
                .title("case")
                .burners(List.of(burners))
                .damper(new Damper(q("100 %", Kind.SHARE), null))
                .supply(null)
                .room(null)
                .firing(new FiringPlan(null, null, steps.firing, null))
                .design();
    }

    private static TestKiln clubKiln() {
        TestKiln k = TestKiln.polygon(10, "23 in");
        k.height = TestKiln.len("27 in");
        double d = 1.25 * INCH;
        return k.inlet("inlet A", -120, 0, d)
                .inlet("inlet B", 120, 0, d)
                .flue("flue A", 0, 120, d)
                .flue("flue B", 0, -120, d);
    }

    private static FireReview club() {
        return Review.of(fire(
                        clubKiln(),
                        heat("burner A", "inlet A", null, "2 kW"),
                        heat("burner B", "inlet B", null, "2 kW")))
                .fire();
    }

    /** Two 1 1/4 in floor ports, two 1 1/4 in flues, two laboratory burners of 2 kW: clean with the damper off, every level below. */
    @Test
    void twoPortsTwoFluesTwoBurners() {
        FireReview fire = club();
        for (double c : new double[] {900, 1100, 1250}) {
            assertThat(fire.state(c + 273.15, 1).lambda().orElseThrow())
                    .as(c + " °C")
                    .isGreaterThan(1);
            for (AtmosphereLevel level :
                    new AtmosphereLevel[] {AtmosphereLevel.LIGHT, AtmosphereLevel.MEDIUM, AtmosphereLevel.HEAVY}) {
                LevelSetting l = fire.level(level, c + 273.15);
                assertThat(l.reachable()).isTrue();
                assertThat(l.openMid()).isBetween(0.3, 0.95);
                FireState s = fire.state(c + 273.15, l.openMid());
                assertThat(AtmosphereLevel.of(s.lambda().orElseThrow())).isEqualTo(level);
                assertThat(s.balance().spills()).isFalse();
            }
        }
    }

    /** The flue is the control, not the gas valve: half the gas leaves the air alone, half the flue halves it. */
    @Test
    void theFlueSetsTheAir() {
        FireReview fire = club();
        double k = 1373.15;
        double air = fire.state(k, 1).balance().airFlow();
        assertThat(fire.state(k, 1, 0.5).balance().airFlow() / air).isCloseTo(1, within(0.04));
        assertThat(fire.state(k, 0.5).balance().airFlow() / air).isLessThan(0.55);
    }

    private static TestKiln smallKiln() {
        TestKiln k = TestKiln.polygon(8, "14 in");
        k.height = TestKiln.len("14.9 in");
        return k.inlet("inlet", 0, 0, 1.5 * INCH).flue("flue", 0, 50, 1.5 * INCH);
    }

    /** One 1 1/2 in port and flue on 1.4 ft³, 12 000 Btu/h gross: reduces, with flame at flue and spyhole. */
    @Test
    void smallKilnTwelveThousandIsEnough() {
        Design d = fire(smallKiln(), heat("burner", "inlet", "12000 Btu/h", null));
        assertThat(KilnGeometry.of(d).chamberVolumeM3() * 35.3147).isCloseTo(1.4, within(0.01));
        FireReview fire = Review.of(d).fire();
        LevelSetting medium = fire.level(AtmosphereLevel.MEDIUM, 1473.15);
        FireState s = fire.state(1473.15, Math.min(1, medium.openMid()));
        Products p = s.shown().orElseThrow();
        assertThat(p.lambda()).isLessThan(0.94);
        assertThat(p.dryCo()).as("flame at the flue").isGreaterThan(0.01);
        double spyhole = s.balance().floorPressure() + s.balance().gradient() * 0.2;
        assertThat(spyhole).as("flame at a spyhole half way up, Pa").isPositive();
        assertThat(load(d)).isEmpty();
    }

    /** 35 000 Btu/h on the same kiln is overkill. */
    @Test
    void thirtyFiveThousandIsAStop() {
        assertThat(load(fire(smallKiln(), heat("burner", "inlet", "35000 Btu/h", null))))
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.STOP && f.parts().equals(List.of("burner")));
    }

    /** The example of the file format, its jet counted, is a sound design: no stop from these rules. */
    @Test
    void exampleDesignHasNoStop() throws Exception {
        Design d = DesignFile.read(java.nio.file.Path.of("src/test/resources/designs/contract-example.json"))
                .document()
                .set("burners[0].jets", "1")
                .read()
                .design();
        Findings out = new Findings();
        Review review = Review.of(d);
        FireRules.list().forEach(r -> r.check(review, new LimitsInForce(LimitTable.load(), d), out));
        assertThat(out.findings()).isNotEmpty().noneMatch(f -> f.severity() == Severity.STOP);
        assertThat(out.notChecked()).isEmpty();
    }

    private static List<Finding> load(Design d) {
        Findings out = new Findings();
        new GasLoad().check(Review.of(d), new LimitsInForce(LimitTable.load(), d), out);
        return out.findings();
    }

    /** Naive: a jet is a gas flow only. A bare jet at 5 psi pushes with 8 to 9 Pa on a 1 1/4 in hole at 2 kW, more than the stack. */
    @Test
    void bareJetAtFivePsiOutpullsTheStack() {
        FireState ported = jet(BurnerHead.PORTED);
        FireState bare = jet(BurnerHead.BARE);
        double push = bare.balance().inlets().get(0).drive() + bare.balance().floorPressure();
        double stack = bare.balance().gradient() * (bare.balance().kiln().chamberHeight() + 0.0635);
        assertThat(push).isBetween(7.0, 10.0).isGreaterThan(stack);
        assertThat(bare.lambda().orElseThrow() / ported.lambda().orElseThrow()).isGreaterThan(1.3);
        assertThat(bare.balance().floorPressure())
                .as("the jet puts the whole chamber over pressure")
                .isPositive();
    }

    private static FireState jet(BurnerHead head) {
        double d = 1.25 * INCH;
        TestKiln k = TestKiln.polygon(8, "17 in").inlet("inlet", 0, 0, d).flue("flue", 0, 80, d);
        Burner b = new Burner(
                "burner",
                "inlet",
                Fuel.PROPANE,
                null,
                new Jet("0.42 mm", q("0.42 mm", Kind.LENGTH), null),
                null,
                null,
                q("5 psi", Kind.PRESSURE),
                null,
                null,
                head,
                null,
                null,
                null,
                null,
                null,
                FlameAt.CHAMBER,
                null);
        return Review.of(fire(k, b)).fire().state(1373.15, 1);
    }

    /** Altitude acts on jet and draft together through the whole design. */
    @Test
    void altitudeThroughTheDesign() {
        Design d = fire(clubKiln(), heat("burner A", "inlet A", null, "2 kW"));
        Burner jet = new Burner(
                "burner",
                "inlet A",
                Fuel.PROPANE,
                null,
                new Jet("0.9 mm", q("0.9 mm", Kind.LENGTH), null),
                null,
                null,
                q("11 inH2O", Kind.PRESSURE),
                null,
                null,
                BurnerHead.PORTED,
                null,
                null,
                null,
                null,
                null,
                FlameAt.CHAMBER,
                null);
        double sea = lambda(d, jet, "0 m");
        double high = lambda(d, jet, "1600 m");
        assertThat(high / sea).isCloseTo(0.885, within(0.015));
    }

    private static double lambda(Design d, Burner b, String altitude) {
        var room = new Room(
                null,
                null,
                q("20 °C", Kind.TEMPERATURE),
                null,
                null,
                q(altitude, Kind.LENGTH),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                true,
                null);
        Design at = Changed.of(d).burners(List.of(b)).supply(null).room(room).design();
        return Review.of(at).fire().state(1373.15, 1).lambda().orElseThrow();
    }
}
