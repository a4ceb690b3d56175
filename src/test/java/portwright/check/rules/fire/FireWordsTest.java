package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.Changed;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.InletFlow;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.model.Atmosphere;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Fuel;
import portwright.model.Heat;
import portwright.model.Jet;
import portwright.model.Role;
import portwright.model.UnitSystem;
import portwright.review.Review;
import portwright.units.Kind;

/** Remedies, needs and states of the fire's rules, each asked directly and worked by hand: two inlets of 35 mm and two flues of 38 unless said otherwise. */
class FireWordsTest {
    private static final double AREA = Math.PI / 4;

    private static Review review(FireBench b) {
        return Review.of(b.design());
    }

    private static FireBench kw(double kw, Atmosphere level) {
        FireBench b = new FireBench().usual(level);
        b.heatKw = kw;
        return b;
    }

    private static Review edited(FireBench b, UnitSystem units, List<Burner> burners) {
        Design d = b.design();
        return Review.of(Changed.of(d).units(units).burners(burners).design());
    }

    private static Burner burner(String name, String port, Jet jet, String heat, String pressure) {
        return new Burner(
                name,
                port,
                Fuel.PROPANE,
                null,
                jet,
                null,
                null,
                pressure == null ? null : FireBench.q(pressure, Kind.PRESSURE),
                heat == null ? null : FireBench.q(heat, Kind.POWER),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    @Test
    void atALimitARulePasses() {
        assertThat(Say.over(2, 2)).isFalse();
        assertThat(Say.over(2 + 1e-9, 2)).isFalse();
        assertThat(Say.over(2 + 3e-9, 2)).isTrue();
        assertThat(Say.under(2, 2)).isFalse();
        assertThat(Say.under(2 - 1e-9, 2)).isFalse();
        assertThat(Say.under(2 - 3e-9, 2)).isTrue();
        assertThat(Say.over(0, 0)).isFalse();
        assertThat(Say.under(0, 0)).isFalse();
        assertThat(Say.over(-2 + 1e-9, -2)).isFalse();
        assertThat(Say.under(-2 - 1e-9, -2)).isFalse();
    }

    @Test
    void partsAndAreas() {
        Review r = review(new FireBench());
        assertThat(Say.ports(r, Role.INLET)).containsExactly("inlet A", "inlet B");
        assertThat(Say.ports(r, Role.FLUE)).containsExactly("flue A", "flue B");
        assertThat(Say.burners(r)).containsExactly("burner A", "burner B");
        assertThat(Say.area(r, Role.INLET)).isCloseTo(2 * AREA * 35 * 35, within(1e-6));
        assertThat(Say.area(r, Role.FLUE)).isCloseTo(2 * AREA * 38 * 38, within(1e-6));
        FireBench none = new FireBench();
        none.burners = false;
        assertThat(Say.burners(review(none))).isEmpty();
    }

    /** 38 √2 = 53.74 mm: 57 mm is the next saw of the metric series, 2 1/8 in, 53.98, of the other. 38 mm itself is sold. */
    @Test
    void largerFluesByTheSawsOfTheOwnSeries() {
        FireBench b = new FireBench();
        Review metric = review(b);
        assertThat(Say.enlargeFlues(metric, 1)).isEqualTo("Enlarge the flues to 38 mm (1.5 in)");
        assertThat(Say.enlargeFlues(metric, 2)).isEqualTo("Enlarge the flues to 57 mm (2.24 in)");
        assertThat(Say.enlargeFlues(metric, 17))
                .isEqualTo("Drill further flues: no saw is wide enough for " + Math.round(17 * 2 * AREA * 38 * 38)
                        + " mm² in these,");
        Review inch = edited(b, UnitSystem.INCH, b.design().burners());
        assertThat(Say.enlargeFlues(inch, 2)).isEqualTo("Enlarge the flues to 2 1/8 in (54 mm)");
    }

    /** 2 · 962.1 mm² are 2.98 in². */
    @Test
    void fluesWhereThereAreNone() {
        FireBench b = new FireBench();
        b.flueMm = 0;
        assertThat(Say.enlargeFlues(review(b), 2))
                .isEqualTo("Add flues of 1924 mm² (2.98 in²) in all, as much as the inlets have,");
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1.6", "0.333, 1.06", "1, 3.2"})
    void lessGasByHeat(double share, String kw) {
        assertThat(Say.lessGas(review(kw(3.2, Atmosphere.MEDIUM)), share))
                .isEqualTo("burn at most " + kw + " kW in all");
    }

    /** Drills as tables have them: #57 is 0.043 in = 1.092 mm, #75 0.021 in = 0.533 mm, #80, the finest, 0.0135 in = 0.343 mm. */
    @Test
    void lessGasByJet() {
        FireBench b = new FireBench();
        Jet drill = new Jet("#57", null, 57);
        Review r = edited(
                b,
                UnitSystem.METRIC,
                List.of(
                        burner("by heat", "inlet A", null, "1 kW", null),
                        burner("by jet", "inlet B", drill, null, "11 inH2O")));
        double kw = r.supply().netW() / 1000;
        assertThat(Say.lessGas(r, 1))
                .startsWith("fit a smaller jet: #57 (1.09 mm) for by jet, so that the burners give " + Say.n(kw, 2)
                        + " kW (")
                .endsWith("Btu/h) in all");
        assertThat(Say.lessGas(r, 0.25))
                .startsWith("fit a smaller jet: #75 (0.53 mm) for by jet, so that the burners give " + Say.n(kw / 4, 2)
                        + " kW (");
        assertThat(Say.lessGas(r, 0.04)).startsWith("fit a smaller jet: 0.22 mm for by jet,");
        Review unknown = edited(
                b,
                UnitSystem.METRIC,
                List.of(burner("by jet", "inlet A", new Jet("1.1 mm", FireBench.mm(1.1), null), null, null)));
        assertThat(Say.lessGas(unknown, 0.25))
                .isEqualTo("fit a smaller jet: #75 (0.53 mm) for by jet, so that the burners give less");
        Review bare = edited(b, UnitSystem.METRIC, List.of(burner("bare", "inlet A", null, null, null)));
        assertThat(Say.lessGas(bare, 0.25)).isEqualTo("use less gas");
    }

    /** A port of 35 mm at 100 reaches to 117.5; over the floor the pressure grows by the gradient, so the rim has half a bore less of pull than the middle. */
    @Test
    void theRimOfAWallPort() {
        FireBench b = kw(3.2, Atmosphere.MEDIUM);
        b.wallMm = 100;
        Review r = review(b);
        DraftBalance wall = r.fire().state(1473.15, 0.5).balance();
        InletTop t = InletTop.of(wall, 1);
        assertThat(t.flow().name()).isEqualTo("inlet B");
        assertThat(t.heightM()).isCloseTo(0.1175, within(1e-9));
        assertThat(wall.gradient()).isPositive();
        assertThat(t.drive()).isCloseTo(wall.inlets().get(1).drive() - wall.gradient() * 0.0175, within(1e-9));
        assertThat(t.still()).isCloseTo(-wall.floorPressure() - wall.gradient() * 0.1175, within(1e-9));
        assertThat(t.out(t.drive() - 0.01)).isFalse();
        assertThat(t.out(t.drive() + 0.01)).isEqualTo(!t.flow().spills());
        b.wallMm = 0;
        assertThat(InletTop.of(review(b).fire().state(1473.15, 0.5).balance(), 0))
                .isNull();
    }

    @Test
    void aPortThatSpillsHasNoRim() {
        InletFlow in = new InletFlow("A", 1, 1, 0, 0, 1);
        InletFlow spills = new InletFlow("A", -1, 0, 0, 0, 1);
        assertThat(new InletTop(in, 0.1, -0.1, -0.2).out(0)).isTrue();
        assertThat(new InletTop(in, 0.1, 0.1, -0.2).out(0)).isFalse();
        assertThat(new InletTop(spills, 0.1, -0.1, -0.2).out(0)).isFalse();
    }

    // ---- the state that counts ----

    /** Of two steps the one with the higher pressure, and the one with the weaker draw, are told, in either order. */
    @ParameterizedTest
    @CsvSource({"NEUTRAL, HEAVY", "HEAVY, NEUTRAL"})
    void theWorseStepIsTold(Atmosphere first, Atmosphere second) {
        FireBench b = new FireBench()
                .step("900 °C", Heat.ELECTRIC, null)
                .step("1100 °C", Heat.BOTH, first)
                .step("1150 °C", Heat.BOTH, second);
        b.heatKw = 3.4;
        Review r = review(b);
        double pressure = r.fire().settings().stream()
                .mapToDouble(s -> r.fire().state(s.kelvin(), s.open()).balance().floorPressure())
                .max()
                .orElseThrow();
        double drive = r.fire().settings().stream()
                .mapToDouble(s -> r.fire()
                        .state(s.kelvin(), s.open())
                        .balance()
                        .inlets()
                        .get(0)
                        .drive())
                .min()
                .orElseThrow();
        Finding draws = b.run(new InletDraw()).get(0);
        assertThat(draws.parts()).containsExactly("inlet A");
        assertThat(draws.measured().value()).isCloseTo(drive, within(1e-9));
        assertThat(draws.message()).contains(" For heavy in step ");
        b.limit("chamber-pressure", "caution", pressure - 0.001);
        Finding over = b.run(new ChamberPressure()).get(0);
        assertThat(over.severity()).isEqualTo(Severity.CAUTION);
        assertThat(over.measured().value()).isCloseTo(pressure, within(1e-9));
        assertThat(over.message()).startsWith("For heavy in step ").contains(" even the floor is ");
    }

    /** The neutral level in millimetres is that of the state that counts. */
    @Test
    void fromWhereTheChamberIsOverRoomPressure() {
        FireBench b = new FireBench().usual(Atmosphere.MEDIUM);
        Review r = review(b);
        double level = r.fire().settings().stream()
                .map(s -> r.fire().state(s.kelvin(), s.open()).balance())
                .max(java.util.Comparator.comparingDouble(DraftBalance::floorPressure))
                .orElseThrow()
                .neutralLevel()
                .orElseThrow();
        assertThat(level).isBetween(0.01, 0.4572);
        Finding f = b.run(new ChamberPressure()).get(0);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.measured().value()).isCloseTo(level * 1000, within(1e-9));
        assertThat(f.limit()).isNull();
    }

    /** Without gas there is nothing to say of the chamber; without a port and without gas nothing of the areas. */
    @Test
    void electricAlone() {
        FireBench b = new FireBench().step("1200 °C", Heat.ELECTRIC, null);
        assertThat(b.run(new ChamberPressure())).isEmpty();
        assertThat(b.asks(new ChamberPressure())).isEmpty();
        FlueInletRatio ratio = new FlueInletRatio();
        b.inletMm = 0;
        b.flueMm = 0;
        b.burners = false;
        Design d = b.design();
        Findings asked = new Findings();
        ratio.check(edited(b, UnitSystem.METRIC, null), new LimitsInForce(LimitTable.load(), d), asked);
        assertThat(asked.notChecked()).hasSize(1);
        Findings none = new Findings();
        ratio.check(edited(b, UnitSystem.METRIC, List.of()), new LimitsInForce(LimitTable.load(), d), none);
        assertThat(none.notChecked()).isEmpty();
        assertThat(none.findings()).isEmpty();
        b.flueMm = 38;
        Findings flues = new Findings();
        ratio.check(edited(b, UnitSystem.METRIC, List.of()), new LimitsInForce(LimitTable.load(), d), flues);
        assertThat(flues.notChecked())
                .singleElement()
                .satisfies(n -> assertThat(n.needs()).containsExactly("ports (role inlet)"));
    }

    private static List<Finding> tops(FireBench b) {
        return b.run(new InletDraw()).stream()
                .filter(f -> f.message().startsWith("The top of"))
                .toList();
    }

    /** The weakest of the states asked for is told: rim, height of the neutral level, setting and push. */
    @Test
    void aPortWhoseTopIsPushedOut() {
        FireBench b = kw(2.4, Atmosphere.MEDIUM);
        b.wallMm = 220;
        Review r = review(b);
        List<Finding> all = tops(b);
        assertThat(all).isNotEmpty();
        double least = r.fire().settings().stream()
                .mapToDouble(s -> InletTop.of(
                                r.fire().state(s.kelvin(), s.open()).balance(), 0)
                        .drive())
                .min()
                .orElseThrow();
        Finding f = all.get(0);
        assertThat(f.rule()).isEqualTo("inlet-draw");
        assertThat(f.parts()).containsExactly("inlet A");
        assertThat(f.forbids()).isEqualTo(Forbids.LIGHTING);
        assertThat(f.severity()).isEqualTo(Severity.STOP);
        assertThat(f.measured().value()).isCloseTo(least, within(1e-9)).isNegative();
        assertThat(f.limit().value()).isZero();
        assertThat(f.message()).startsWith("The top of inlet A stands 238 mm (9 3/8 in) above the floor;");
        assertThat(f.remedy()).startsWith("Ask for a lighter atmosphere").endsWith("away from above the port.");
    }

    @Test
    void noTopsWherePortsAreLowOrInTheFloor() {
        assertThat(tops(kw(3.2, Atmosphere.MEDIUM))).isEmpty();
    }

    /** A flue too narrow for the gas: it comes out of the inlets, and nothing is said of their tops besides. */
    @Test
    void whatSpillsHasNoTop() {
        FireBench b = kw(3, Atmosphere.MEDIUM);
        b.flueMm = 0;
        b.wallMm = 220;
        assertThat(tops(b)).isEmpty();
        assertThat(b.run(new InletDraw())).isNotEmpty().allSatisfy(f -> {
            assertThat(f.severity()).isEqualTo(Severity.STOP);
            assertThat(f.measured().unit()).isEqualTo("Pa");
            assertThat(f.remedy()).startsWith("Ask for a lighter atmosphere, make the inlets smaller");
        });
    }

    // ---- what speaks against one state ----

    private static List<String> stops(FireBench b, double open) {
        Design d = b.design();
        return StateStops.of(Review.of(d).fire().state(1473.15, open), new LimitsInForce(LimitTable.load(), d));
    }

    @Test
    void whatSpeaksAgainstOneState() {
        FireBench none = kw(3, Atmosphere.MEDIUM);
        none.flueMm = 0;
        assertThat(stops(none, 1))
                .contains(
                        "inlet-draw: flame and fume come out of inlet A, under the kiln",
                        "inlet-draw: flame and fume come out of inlet B, under the kiln");
        FireBench sound = kw(3.2, Atmosphere.LIGHT);
        assertThat(stops(sound, 1)).isEmpty();
        double drive = Review.of(sound.design())
                .fire()
                .state(1473.15, 1)
                .balance()
                .inlets()
                .get(0)
                .drive();
        assertThat(stops(kw(3.2, Atmosphere.LIGHT).limit("inlet-draw", "stop", drive * 1.001), 1))
                .contains("inlet-draw: inlet A draws with " + Say.n(drive, 2) + " Pa, under " + Say.n(drive * 1.001, 2)
                        + " Pa");
        assertThat(stops(kw(3.2, Atmosphere.LIGHT).limit("inlet-draw", "stop", drive * 0.999), 1))
                .isEmpty();
    }

    /** The same rim as in the rule, at a limit just over and just under its drive. */
    @Test
    void aRimSpeaksAgainstAState() {
        FireBench wall = kw(3.2, Atmosphere.LIGHT);
        wall.wallMm = 100;
        double drive = InletTop.of(
                        Review.of(wall.design()).fire().state(1473.15, 1).balance(), 0)
                .drive();
        assertThat(drive).isPositive();
        assertThat(stops(wall.limit("inlet-draw", "top", drive * 1.001), 1))
                .contains("inlet-draw: flame and fume come out at the upper part of inlet A");
        assertThat(stops(wall.limit("inlet-draw", "top", drive * 0.999), 1)).isEmpty();
    }

    @Test
    void sootSpeaksAgainstAState() {
        FireBench b = kw(3.2, Atmosphere.LIGHT);
        double lambda = Review.of(b.design()).fire().state(1473.15, 1).lambda().orElseThrow();
        assertThat(stops(b.limit("soot", "stop", lambda * 1.001), 1))
                .containsExactly("soot: lambda " + Say.n(lambda, 2) + ", under " + Say.n(lambda * 1.001, 2));
        assertThat(stops(b.limit("soot", "stop", lambda * 0.999), 1)).isEmpty();
    }

    // ---- damper-range ----

    /** Too little gas: where even the lower end of the band is too lean the level is never reached, and that end is told; else the middle figure. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.1, CAUTION", "0.7, 0.1, CAUTION", "0.3, 0.5, STOP"})
    void tooLittleGasForALevel(double heat, double least, Severity severity) {
        FireBench b = kw(heat, Atmosphere.HEAVY).limit("damper-range", "least-open", least);
        Review r = review(b);
        double shut = r.fire().state(1173.15, least).lambda().orElseThrow();
        Double low = r.fire().band(1173.15, least).lambda().low();
        Finding f = b.run(new DamperRange()).get(0);
        assertThat(f.message())
                .contains(" at " + Say.n(least * 100, 0) + " % open it is still " + Say.n(shut, 2) + ".");
        assertThat(f.forbids()).isEqualTo(Forbids.LIGHTING);
        assertThat(f.parts()).containsExactly("flue A", "flue B");
        assertThat(f.severity()).isEqualTo(severity);
        double mid = f.limit().value();
        assertThat(shut).isGreaterThan(mid);
        assertThat(low != null && low > mid).isEqualTo(severity == Severity.STOP);
        assertThat(f.measured().value()).isCloseTo(severity == Severity.STOP ? low : shut, within(1e-9));
    }

    // ---- soot ----

    /** The richest of the states counts; the remedy's gas is in proportion to lambda, at least three tenths. */
    @Test
    void theRichestStateIsTold() {
        FireBench b = kw(4, Atmosphere.HEAVY).step("1250 °C", Heat.BOTH, Atmosphere.LIGHT);
        Review r = review(b);
        double least = r.fire().settings().stream()
                .mapToDouble(s -> r.fire().state(s.kelvin(), s.open()).lambda().orElse(9))
                .min()
                .orElseThrow();
        Soot rule = new Soot();
        b.limit("soot", "caution", least * 1.1).limit("soot", "stop", least * 0.9);
        Finding f = b.run(rule).get(0);
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        assertThat(f.forbids()).isEqualTo(Forbids.LIGHTING);
        assertThat(f.parts()).containsExactly("burner A", "burner B");
        assertThat(f.measured().value()).isCloseTo(least, within(1e-9));
        assertThat(f.limit().value()).isCloseTo(least * 1.1, within(1e-9));
        assertThat(f.message()).startsWith("For heavy in step 2 at ").contains(" lambda is " + Say.n(least, 2));
        assertThat(f.remedy())
                .startsWith("Open the damper to lambda " + Say.n(least * 1.1, 2) + " or more, or burn at most "
                        + Say.n(Math.floor(400 / 1.1) / 100, 2) + " kW in all. Soot in");
        b.limit("soot", "stop", least * 1.05);
        Finding stop = b.run(rule).get(0);
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.limit().value()).isCloseTo(least * 1.05, within(1e-9));
        b.limit("soot", "caution", least * 5);
        assertThat(b.run(rule).get(0).remedy()).contains("burn at most 1.2 kW in all");
    }

    // ---- oxidised-zone ----

    @Test
    void onlyReducingStepsHaveAnOxidisedZone() {
        OxidisedZoneNote rule = new OxidisedZoneNote();
        assertThat(kw(3.2, Atmosphere.OXIDIZING).run(rule)).isEmpty();
        Finding f = kw(3.2, Atmosphere.MEDIUM).run(rule).get(0);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.forbids()).isEqualTo(Forbids.NOTHING);
        assertThat(f.parts()).containsExactly("inlet A", "inlet B");
        assertThat(f.measured().value()).isCloseTo(210, within(1e-6));
        assertThat(f.limit()).isNull();
        // cores of 4 and 10 diameters
        assertThat(f.message())
                .endsWith(" above the floor (140 to 350 mm (5 1/2 to 13 3/4 in)): pieces there may come out oxidised.");
        FireBench shelf = kw(3.2, Atmosphere.LIGHT);
        shelf.kiln.roundShelf("shelf", 400, 120, 40);
        assertThat(shelf.run(rule).get(0).message())
                .endsWith(
                        "unmixed air can reach up to 120 mm (4 3/4 in) above the floor: pieces there may come out oxidised.");
        assertThat(f.remedy())
                .isEqualTo(
                        "Stand test pieces or oxidation glazes below that height and the reduction glazes above it.");
        FireBench none = new FireBench();
        none.steps = false;
        assertThat(none.lacks(rule)).hasSize(1);
        assertThat(none.lacks(rule).get(0).forbids()).isEqualTo(Forbids.NOTHING);
    }
}
