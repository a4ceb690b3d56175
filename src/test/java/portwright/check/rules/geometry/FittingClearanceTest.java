package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Ided;
import portwright.model.On;
import portwright.model.Size2;
import portwright.review.Review;

class FittingClearanceTest {
    private static final String RULE = "fitting-clearance";

    /** The rule book's distances: full is a caution, half is a stop. */
    @ParameterizedTest
    @CsvSource({
        "thermocouple,50",
        "spyhole,50",
        "crack,25",
        "leg,25",
        "stand-bar,25",
        "hinge,50",
        "latch,50",
        "handle,100",
        "terminals,75",
        "control-box,150",
        "vent,50",
        "other,25"
    })
    void everyKind(String id, double limit) {
        FittingKind kind = List.of(FittingKind.values()).stream()
                .filter(k -> ((Ided) k).id().equals(id))
                .findFirst()
                .orElseThrow();
        // fitting of 20 mm, hole of 40 (d+ 42): the edges touch at 31 between centres
        GeoBench.edge(
                RULE,
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .fitting("thing", kind, On.FLOOR, null, at(0, 0), 20)
                        .inlet("A", 31 + limit + t, 0, 40),
                "A",
                "thing");
        GeoBench.edge(
                RULE,
                Severity.STOP,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .fitting("thing", kind, On.LID, null, at(0, 0), 20)
                        .flue("F", 0, 31 + limit / 2 + t, 40),
                "F",
                "thing");
        GeoBench.edge(
                RULE,
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .fitting("thing", kind, On.WALL, 1, at(-100, 200), 20)
                        .wallInlet("A", 1, -100 + 31 + limit + t, 200, 40),
                "A",
                "thing");
    }

    @Test
    void ownClearanceTakesItsPlaceAndIsSaid() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 31 + 60, 0, 40);
        k.fittings.add(new Fitting(
                "leg",
                FittingKind.LEG,
                null,
                null,
                On.FLOOR,
                null,
                at(0, 0),
                mm(20),
                null,
                null,
                null,
                null,
                null,
                mm(80)));
        var f = GeoBench.of(k, RULE);
        assertThat(f).hasSize(1);
        assertThat(f.get(0).limit().value()).isEqualTo(80);
        assertThat(f.get(0).limitSetByUser()).isTrue();
    }

    @Test
    void oneFindingForEachPair() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", -40, 0, 40)
                .inlet("B", 40, 0, 40)
                .fitting("leg 1", FittingKind.LEG, On.FLOOR, null, at(0, 0), 20)
                .fitting("leg 2", FittingKind.LEG, On.FLOOR, null, at(0, 10), 20);
        assertThat(GeoBench.of(k, RULE))
                .extracting(f -> String.join("|", f.parts()))
                .containsExactlyInAnyOrder("A|leg 1", "A|leg 2", "B|leg 1", "B|leg 2");
    }

    @Test
    void turnedBoxIsMeasuredToItsTurnedSide() {
        // a square of 100 turned by 45° reaches 70.71 along x
        double corner = 50 * Math.sqrt(2);
        GeoBench.edge(
                RULE,
                Severity.CAUTION,
                Forbids.DRILLING,
                t -> {
                    TestKiln k = AtTheLimitTest.square().inlet("A", corner + 21 + 25 + t, 0, 40);
                    k.fittings.add(new Fitting(
                            "bar",
                            FittingKind.STAND_BAR,
                            null,
                            null,
                            On.FLOOR,
                            null,
                            at(0, 0),
                            null,
                            new Size2(mm(100), mm(100)),
                            TestKiln.deg(45),
                            null,
                            null,
                            null,
                            null));
                    return k;
                },
                "A",
                "bar");
    }

    /** A strap of 400 by 20 mm, 200 mm off, reaches the hole if it lies the other way round: unknown until its turn is given. */
    @Test
    void aPartThatMayLieTheOtherWayRoundIsNotChecked() {
        assertThat(unchecked(200)).containsExactly("kiln.fittings[0].turn");
        assertThat(unchecked(320)).isEmpty();
    }

    private static List<String> unchecked(double y) {
        TestKiln k = AtTheLimitTest.square()
                .box("strap", FittingKind.OTHER, On.LID, null, at(0, y), 400, 20, null)
                .flue("F", 0, 0, 40);
        return new RuleBook(LimitTable.load())
                .check(Review.geometryOnly(k.build()), Set.of(RuleBook.Section.GEOMETRY)).notChecked().stream()
                        .filter(n -> n.rule().equals(RULE))
                        .flatMap(n -> n.needs().stream())
                        .toList();
    }
}
