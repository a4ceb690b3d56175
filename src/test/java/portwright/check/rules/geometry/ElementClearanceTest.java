package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.ElementRun;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Tails;

class ElementClearanceTest {
    private static final String RULE = "element-clearance";

    private static TestKiln strip(On on, double coil) {
        TestKiln k = AtTheLimitTest.square();
        k.elements.add(new ElementRun(
                "EF",
                on,
                null,
                null,
                List.of(at(100, -150), at(100, 150)),
                new Groove(null, mm(16), mm(20), null),
                mm(coil),
                null));
        return k;
    }

    @Test
    void grooveInTheLid() {
        GeoBench.edge(
                RULE,
                Severity.STOP,
                Forbids.DRILLING,
                t -> strip(On.LID, 12).flue("F", 100 - 8 - 21 - 25 - t, 0, 40),
                "F",
                "EF");
    }

    /** A coil wider than its groove (24 against 16) is what the hole comes near to. */
    @Test
    void coilWiderThanItsGroove() {
        GeoBench.edge(
                RULE,
                Severity.STOP,
                Forbids.DRILLING,
                t -> strip(On.FLOOR, 24).inlet("A", 100 - 12 - 21 - 25 - t, 0, 40),
                "A",
                "EF");
    }

    @Test
    void tailsInTheSamePanel() {
        GeoBench.edge(
                RULE,
                Severity.STOP,
                Forbids.DRILLING,
                t -> {
                    TestKiln k = AtTheLimitTest.square().wallInlet("A", 3, 100 + 5 + 21 + 25 + t, 200, 40);
                    k.elements.add(new ElementRun(
                            "E1",
                            On.WALL,
                            mm(400),
                            null,
                            null,
                            new Groove(mm(16), null, mm(20), null),
                            mm(12),
                            new Tails(3, at(100, 200), mm(10))));
                    return k;
                },
                "A",
                "E1");
    }

    /** The other way round: a lid hole and the highest wall groove, 15 mm in plan and 20 mm of height apart, √(15² + 20²) = 25. */
    @Test
    void lidHoleToAWallGroove() {
        GeoBench.edge(
                RULE,
                Severity.STOP,
                Forbids.DRILLING,
                t -> AtTheLimitTest.square()
                        .wallElement("E9", 450 - 28, 16, 20, 0, null)
                        .flue("F", 0, 300 - 21 - (15 + t), 40),
                "F",
                "E9");
    }

    @Test
    void anElementOnOtherPanelsDoesNotCount() {
        TestKiln k = AtTheLimitTest.square()
                .wallElement("E1", 200, 16, 20, 0, List.of(1, 2, 4))
                .wallInlet("A", 3, 0, 200, 40);
        assertThat(GeoBench.of(k, RULE)).isEmpty();
        assertThat(GeoBench.of(
                        AtTheLimitTest.square()
                                .wallElement("E1", 200, 16, 20, 0, null)
                                .wallInlet("A", 3, 0, 200, 40),
                        RULE,
                        Severity.STOP))
                .hasSize(1);
    }

    @Test
    void ownLimitIsUsedAndSaid() {
        TestKiln k = strip(On.FLOOR, 12).inlet("A", 100 - 8 - 21 - 28, 0, 40);
        assertThat(GeoBench.of(k, RULE, Severity.STOP)).isEmpty();
        Finding f = GeoBench.of(k.limit(RULE, "limit", 30), RULE, Severity.STOP).get(0);
        assertThat(f.limitSetByUser()).isTrue();
        assertThat(f.limit().value()).isEqualTo(30);
        assertThat(GeoBench.of(k.limit(RULE, "limit", 15), RULE, Severity.STOP)).isEmpty();
    }

    /** Rows 92 mm apart leave a 1 in hole too little; the remedy says where to look. */
    @Test
    void betweenRowsTheRemedyPointsToFreePanels() {
        TestKiln k = AtTheLimitTest.square()
                .wallElement("E1", 150, 16, 20, 0, null)
                .wallElement("E2", 150 + 92, 16, 20, 0, null)
                .wallInlet("A", 1, 0, 196, 25.4);
        List<Finding> f = GeoBench.of(k, RULE, Severity.STOP);
        assertThat(f).hasSize(2);
        assertThat(f).allSatisfy(x -> assertThat(x.remedy()).contains("panel without elements"));
    }

    /** The rule book's own sum for that: 3.7 in of pitch between rows of 5/8 in grooves clear a 1 in hole (d+ 27.4) by 25 mm a side. */
    @Test
    void rowsFarEnoughApartPass() {
        double pitch = 15.875 + 27.4 + 50;
        assertThat(pitch / 25.4).isCloseTo(3.7, org.assertj.core.data.Offset.offset(0.05));
        TestKiln k = AtTheLimitTest.square()
                .wallElement("E1", 150, 15.875, 20, 0, null)
                .wallElement("E2", 150 + pitch, 15.875, 20, 0, null)
                .wallInlet("A", 1, 0, 150 + pitch / 2, 25.4);
        assertThat(GeoBench.of(k, RULE, Severity.STOP)).isEmpty();
    }
}
