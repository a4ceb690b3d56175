package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Role;
import portwright.model.Tails;

/**
 * What posts, burners, fittings and elements are told to be off, and what is asked instead, worked by hand. A post 40 mm square is a circle of 20 √2 mm; a
 * jet widens by tan 11° on each side; inches are told in sixteenths, finer where those would not do, amounts to be carried out in the next one up.
 */
class SaidAmountsTest {
    private static final double TAN11 = Math.tan(Math.toRadians(11));
    private static final double POST = 20 * Math.sqrt(2);

    private static Finding only(TestKiln k, String rule) {
        List<Finding> all = GeoBench.of(k, rule);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static void says(Finding f, Severity severity, String message, String remedy, double mm, double limit) {
        assertThat(f.severity()).isEqualTo(severity);
        assertThat(f.message()).isEqualTo(message);
        assertThat(f.remedy()).startsWith(remedy);
        assertThat(f.measured().value()).isCloseTo(mm, within(1e-9));
        assertThat(f.limit().value()).isCloseTo(limit, within(1e-9));
    }

    private static TestKiln post(Place... posts) {
        return AtTheLimitTest.square().inlet("A", 0, 0, 40).roundShelf("shelf", 400, 75, 40, posts);
    }

    @Test
    void aPostOverAnInlet() {
        double over = 45 - POST - 20;
        Finding f = only(post(at(45, 0)), "post-in-flame");
        says(
                f,
                Severity.STOP,
                "shelf post 1 stands 3.3 mm (1/8 in) over A.",
                "Move the post 27.9 mm (1 1/8 in) straight away from A.",
                over,
                0);
        assertThat(f.marks()).hasSize(1);
        assertThat(27.9).isCloseTo(-over + 75 * TAN11 + 10, within(0.1));
    }

    @Test
    void aPostInTheFlameAndOneBesideIt() {
        double edge = 20 + POST + 75 * TAN11;
        says(
                only(post(at(0, edge - 5)), "post-in-flame"),
                Severity.CAUTION,
                "shelf post 1 stands 5.0 mm (3/16 in) in the flame of A.",
                "Move the post 15.0 mm (5/8 in) straight away from A.",
                -5,
                10);
        says(
                only(post(at(0, -edge - 4.4)), "post-in-flame"),
                Severity.CAUTION,
                "shelf post 1 stands 4.4 mm (3/16 in) from the flame of A.",
                "Move the post 5.6 mm (1/4 in) straight away from A.",
                4.4,
                10);
        assertThat(GeoBench.of(post(at(0, edge + 10)), "post-in-flame")).isEmpty();
    }

    /** Panel 1 is the back, its face at y = 300: a post at y = 200 stands 100 mm along the jet. */
    @Test
    void aPostBesideTheFlameOfAWallPort() {
        double flame = 60 - POST - 20 - 100 * TAN11;
        says(
                only(beforeTheWall(60, 60), "post-in-flame"),
                Severity.CAUTION,
                "shelf post 1 stands 7.7 mm (5/16 in) in the flame of A.",
                "Move the post 17.8 mm (3/4 in) sideways out of the flame of A.",
                flame,
                10);
        says(
                only(beforeTheWall(-72, 60), "post-in-flame"),
                Severity.CAUTION,
                "shelf post 1 stands 4.3 mm (5/32 in) from the flame of A.",
                "Move the post 5.8 mm (1/4 in) sideways out of the flame of A.",
                flame + 12,
                10);
        assertThat(only(beforeTheWall(60, 60), "post-in-flame").marks()).isEmpty();
        assertThat(GeoBench.of(beforeTheWall(78, 60), "post-in-flame")).isEmpty();
    }

    /** A port of 40 mm whose lower rim is at the shelf's underside still blows at the posts, one above it does not. */
    @ParameterizedTest
    @CsvSource({"95, 1", "95.01, 0", "150, 0"})
    void aWallPortAboveTheShelfBlowsOverItsPosts(double v, int findings) {
        assertThat(GeoBench.of(beforeTheWall(60, v), "post-in-flame")).hasSize(findings);
    }

    private static TestKiln beforeTheWall(double x, double v) {
        return AtTheLimitTest.square().wallInlet("A", 1, 0, v, 40).roundShelf("shelf", 400, 75, 40, at(x, 200));
    }

    @Test
    void aPostThatStandsOnALowerShelfIsNotInTheFlame() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 0, 0, 40)
                .roundShelf("low", 300, 75, 40, at(140, 0))
                .roundShelf("high", 400, 200, 40, at(45, 0), at(0, 160));
        assertThat(GeoBench.of(k, "post-in-flame")).isEmpty();
        k.shelves.remove(0);
        assertThat(GeoBench.of(k, "post-in-flame"))
                .singleElement()
                .satisfies(f -> assertThat(f.parts()).containsExactly("A", "high post 1"));
    }

    private static TestKiln burner(double hole, double tip, double body, double setback, double length, double stand) {
        TestKiln k = AtTheLimitTest.square().inlet("other", -200, 0, 60).inlet("A", 0, 0, hole);
        k.burners = List.of(AtTheLimitTest.burner("A", tip, body, setback, length));
        k.stand = mm(stand);
        return k;
    }

    @Test
    void theRingGapAndTheHoleItAsksFor() {
        says(
                only(burner(56, 40, 30, 20, 100, 400), "burner-fit"),
                Severity.CAUTION,
                "Ring gap 8.0 mm (5/16 in) round the tip of burner; 10.0 mm (3/8 in) wanted for air.",
                "Use a hole of 60.0 mm (2 3/8 in), or",
                8,
                10);
        says(
                only(burner(30, 20, 30, 20, 100, 400), "burner-fit"),
                Severity.CAUTION,
                "Ring gap 5.0 mm (3/16 in) round the tip of burner; 6.0 mm (1/4 in) wanted for air.",
                "Use a hole of 32.0 mm (1 5/16 in), or",
                5,
                6);
        says(
                only(burner(40, 40, 30, 20, 100, 400), "burner-fit"),
                Severity.STOP,
                "The tip of burner is as wide as A.",
                "Use a hole of 60.0 mm (2 3/8 in), or",
                0,
                0);
        assertThat(GeoBench.of(burner(60, 40, 30, 20, 100, 400), "burner-fit")).isEmpty();
    }

    @Test
    void theSetBackAndHowMuchMoreIsWanted() {
        says(
                only(burner(40, 20, 30, 10, 100, 400), "burner-fit"),
                Severity.CAUTION,
                "The tip of burner stands 10.0 mm (3/8 in) off the kiln; 12.7 mm (1/2 in) wanted.",
                "Set it back by 2.7 mm (1/8 in).",
                10,
                12.7);
        says(
                only(burner(100, 60, 30, 13, 100, 400), "burner-fit"),
                Severity.CAUTION,
                "The tip of burner stands 13.0 mm (1/2 in) off the kiln; 15.0 mm (9/16 in) wanted.",
                "Set it back by 2.0 mm (1/8 in).",
                13,
                15);
        says(
                only(burner(40, 20, 30, -5, 100, 400), "burner-fit"),
                Severity.STOP,
                "The tip of burner stands 5.0 mm (3/16 in) inside A.",
                "Set it back by 17.7 mm (3/4 in).",
                -5,
                0);
        assertThat(GeoBench.of(burner(100, 60, 30, 15, 100, 400), "burner-fit")).isEmpty();
    }

    @Test
    void theRoomUnderABurner() {
        says(
                only(burner(40, 20, 30, 15, 150, 200), "burner-room"),
                Severity.CAUTION,
                "Only 35.0 mm (1 3/8 in) under burner for hose and bend; 50.0 mm (1 15/16 in) wanted.",
                "Raise the kiln 15.0 mm (5/8 in) and level",
                35,
                50);
        says(
                only(burner(40, 20, 30, 15, 150, 150), "burner-room"),
                Severity.STOP,
                "burner is 15.0 mm (9/16 in) too long for the stand.",
                "Raise the kiln 65.0 mm (2 9/16 in) and level",
                -15,
                0);
    }

    private static TestKiln besideALeg(double x) {
        return burner(40, 20, 40, 15, 100, 400).fitting("leg", FittingKind.LEG, On.FLOOR, null, at(x, 0), 30);
    }

    @Test
    void theRoomBesideABurner() {
        Finding f = only(besideALeg(60), "burner-room");
        says(
                f,
                Severity.CAUTION,
                "25.0 mm (1 in) between burner and leg; 50.0 mm (1 15/16 in) wanted.",
                "Turn the stand, or move A ",
                25,
                50);
        assertThat(f.marks()).hasSize(1);
        says(
                only(besideALeg(30), "burner-room"),
                Severity.STOP,
                "burner does not fit beside leg.",
                "Turn the stand, or move A ",
                -5,
                0);
        // the hole without a burner and what is no leg do not count
        assertThat(GeoBench.of(
                        besideALeg(-200).fitting("vent", FittingKind.VENT, On.FLOOR, null, at(60, 0), 30),
                        "burner-room"))
                .isEmpty();
    }

    /** The flame's edge leans by 11°: at 100 mm it is (300 − y − 20 − 100 tan 11°) cos 11° from the wall's face, the spyhole's half diagonal is 10 √5 mm. */
    @Test
    void aFlameMeetsAnOblongSpyhole() {
        double touches = 300 - 20 - 100 * TAN11 - 10 * Math.sqrt(5) / Math.cos(Math.toRadians(11));
        assertThat(GeoBench.of(spyhole(touches - 0.5), "flame-on-fitting")).isEmpty();
        Finding f = only(spyhole(touches + 0.5), "flame-on-fitting");
        assertThat(f.message()).isEqualTo("The flame of A meets spyhole.");
        assertThat(f.remedy()).startsWith("Keep it plugged");
        assertThat(f.parts()).containsExactly("A", "spyhole");
    }

    private static TestKiln spyhole(double y) {
        return AtTheLimitTest.square()
                .inlet("A", 0, y, 40)
                .box("spyhole", FittingKind.SPYHOLE, On.WALL, 1, at(0, 100), 40, 20, null);
    }

    @Test
    void howFarAProbeReachesInIsAskedWhereAFlameCouldMeetIt() {
        TestKiln probe = AtTheLimitTest.square()
                .fitting("vent", FittingKind.VENT, On.LID, null, at(200, 200), 20)
                .fitting("probe", FittingKind.THERMOCOUPLE, On.WALL, 1, at(0, 100), 6);
        probe.flue("F", 0, 0, 40);
        assertThat(GeoBench.lacks(probe, "flame-on-fitting")).isEmpty();
        probe.inlet("A", 0, 0, 40);
        assertThat(GeoBench.lacks(probe, "flame-on-fitting"))
                .singleElement()
                .satisfies(n -> assertThat(n.needs()).containsExactly("kiln.fittings[1].reach"));
        Fitting p = probe.fittings.get(1);
        probe.fittings.set(
                1,
                new Fitting(
                        p.name(),
                        p.kind(),
                        null,
                        null,
                        p.on(),
                        p.panel(),
                        p.at(),
                        p.diameter(),
                        null,
                        null,
                        null,
                        null,
                        mm(20),
                        null));
        assertThat(GeoBench.lacks(probe, "flame-on-fitting")).isEmpty();
    }

    /** The largest hole of 42 mm with 35 mm of brick round it reaches 56 mm: to the wall's face at 300 from beyond 244. */
    @ParameterizedTest
    @CsvSource({"FLOOR, 244, ''", "FLOOR, 244.1, tails groove.slope", "LID, 244, ''", "LID, 244.1, tails"})
    void tailsAndSlopeAreAskedWhereAHoleStandsAtTheWall(On on, double x, String fields) {
        TestKiln k = AtTheLimitTest.square()
                .port("A", on == On.LID ? Role.FLUE : Role.INLET, on, null, at(x, 0), mm(40))
                .oversize(2);
        k.elements.add(new ElementRun(
                "E1", On.WALL, mm(200), null, null, new Groove(mm(16), null, mm(20), null), mm(12), null));
        assertThat(GeoBench.lacks(k, "element-clearance").stream()
                        .flatMap(n -> n.needs().stream())
                        .map(f -> f.replace("kiln.elements[0].", ""))
                        .filter(f -> f.startsWith("tails") || f.startsWith("groove.")))
                .containsExactlyElementsOf(fields.isEmpty() ? List.of() : List.of(fields.split(" ")));
    }

    /** An element of which the tails alone are known: of 12 mm, 47 mm beside a hole that is drilled 42 mm wide. */
    @Test
    void tailsAloneCount() {
        TestKiln k = AtTheLimitTest.square().wallInlet("A", 1, 0, 100, 40).oversize(2);
        k.elements.add(new ElementRun("E1", On.WALL, null, null, null, null, null, new Tails(1, at(47, 100), mm(12))));
        says(
                only(k, "element-clearance"),
                Severity.STOP,
                "20.0 mm (13/16 in) of brick between A and tails of E1; at least 25.0 mm (1 in) needed, 35.0 mm (1 3/8 in) wanted.",
                "Move A",
                20,
                25);
    }
}
