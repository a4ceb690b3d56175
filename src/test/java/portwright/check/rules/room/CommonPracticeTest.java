package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.review.Assumptions;
import portwright.review.FiringReview;
import portwright.review.Known;
import portwright.review.RoomReview;
import portwright.review.SupplyReview;

/** What potters know from use; common practice, no source. */
class CommonPracticeTest {

    @Test
    void twoSmallBurnersOnA25LbCylinderOutdoorsAtTenDegreesAreWithinBoilOff() {
        ObjectNode d = TestDesigns.edit(
                TestDesigns.outdoors(),
                "supply.cylinder={\"capacity\":\"25 lb\",\"fill\":\"80 %\"} ; supply.ambient=\"10 °C\"");
        CheckResult r = TestDesigns.check(d);
        assertThat(r.findings()).noneMatch(f -> f.rule().equals("cylinder-boil-off"));
        assertThat(r.figures().cylinderHours()).isBetween(20.0, 60.0);
        assertThat(r.assumed()).anyMatch(a -> a.field().equals("supply.cylinder.diameter"));
    }

    @Test
    void doorsOpenAtBothEndsWithABreezeAreNoProofForHeavyReduction() {
        ObjectNode d = TestDesigns.edit(
                TestDesigns.studio(),
                "room.ledOutdoors=\"0 %\" ; room.hood=- ; room.wind=\"2 m/s\" ; "
                        + "room.openings=[{\"area\":\"2 m2\",\"level\":\"1 m\",\"to\":\"outdoors\",\"free\":\"100 %\"},"
                        + "{\"area\":\"2 m2\",\"level\":\"1 m\",\"to\":\"outdoors\",\"free\":\"100 %\"}]");
        Finding f = TestDesigns.check(d).findings().stream()
                .filter(x -> x.rule().equals("room-co"))
                .findFirst()
                .orElseThrow();
        assertThat(f.severity()).isEqualTo(Severity.STOP);
        assertThat(f.message()).contains("with no wind").contains("with the stated wind");
        assertThat(f.remedy()).contains("m³/h of fresh air").contains("lead the flue gas outdoors by a hood");
        // even the breeze alone is over the 8 h limit
        Design design = TestDesigns.design(d);
        Assumptions assume = new Assumptions();
        RoomReview room = RoomReview.of(
                design,
                KilnGeometry.of(design),
                SupplyReview.of(
                        design,
                        FiringReview.of(design, KilnGeometry.of(design), Known.lacks(List.of("burners")), assume),
                        assume),
                null,
                null,
                assume);
        assertThat(room.co().value().stated().average8hPpm())
                .isGreaterThan(room.co().value().eightHours().value());
        assertThat(room.chartCalm()).hasSizeGreaterThan(60);
        assertThat(room.chartStated()).hasSameSizeAs(room.chartCalm());
        assertThat(room.chartStated().get(30).ppm())
                .isLessThanOrEqualTo(room.chartCalm().get(30).ppm());
    }

    @Test
    void naturalGasFromTheMainsNeedsNoCylinder() {
        ObjectNode d = TestDesigns.edit(
                TestDesigns.outdoors(),
                "supply={\"pressure\":\"11 inH2O\"} ; burners[0].fuel=\"natural-gas\" ; burners[1].fuel=\"natural-gas\"");
        CheckResult r = TestDesigns.check(d);
        assertThat(TestDesigns.lacking(r)).isEmpty();
        assertThat(r.findings()).noneMatch(f -> f.rule().startsWith("cylinder"));
    }

    /** A mix of 30 % propane gives out in the cold sooner than pure propane, and without its share nothing of the gas is known. */
    @Test
    void aMixOfPropaneAndButaneIsAFuelOfTheCylinder() {
        String mix = "burners[0].fuel=\"propane-butane\" ; burners[1].fuel=\"propane-butane\"";
        CheckResult pure = TestDesigns.check(TestDesigns.outdoors());
        CheckResult warm = TestDesigns.check(
                TestDesigns.edit(TestDesigns.outdoors(), mix + " ; supply.cylinder.propane=\"30 %\""));
        assertThat(warm.figures().boilOffKgPerH()).isLessThan(pure.figures().boilOffKgPerH());
        assertThat(warm.figures().heatNetKw()).isCloseTo(pure.figures().heatNetKw(), within(1e-9));
        assertThat(TestDesigns.check(TestDesigns.edit(
                                TestDesigns.outdoors(),
                                mix + " ; supply.cylinder.propane=\"30 %\" ; supply.ambient=\"-15 °C\""))
                        .findings())
                .anyMatch(f -> f.rule().equals("cylinder-boil-off") && f.severity() == Severity.STOP);
        CheckResult unknown = TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), mix));
        assertThat(TestDesigns.lacking(unknown))
                .anyMatch(n -> n.rule().equals("cylinder-boil-off") && n.needs().contains("supply.cylinder.propane"));
    }

    /** Purge by the draught and airing out are figures: five changes of 71 L take minutes; a closed room with little air takes hours. */
    @Test
    void purgeAndAiringOutAreFigures() {
        CheckResult r = TestDesigns.whole(TestDesigns.design(
                TestDesigns.edit(TestDesigns.studio(), "room.ledOutdoors=\"95 %\" ; room.hood=- ; room.openings=[]")));
        double v = r.figures().chamberVolumeL() / 1000;
        assertThat(r.figures().purgeMinutes()).isBetween(5 * v / 40 * 60, 5 * v / 2 * 60); // 2 to 40 m³/h of draught
        // decay of a stirred room, t = V/Q' ln(C1/C2), from the level that the gas leaves
        double minutes = 60 / (0.1 * 60 / 3) * Math.log(r.figures().roomCoPeakPpm() / 20) * 60;
        assertThat(r.figures().roomAirOutMinutes()).isBetween(0.9 * minutes, minutes * 1.001);
        assertThat(TestDesigns.whole(TestDesigns.design(TestDesigns.outdoors()))
                        .figures()
                        .roomAirOutMinutes())
                .isNull();
    }

    @Test
    void aChosenFamilyChangesTheLimitAndOnlyToItsOwn() {
        ObjectNode d = TestDesigns.edit(
                TestDesigns.studio(),
                "room.ledOutdoors=\"0 %\" ; room.hood={\"flow\":\"1300 m3/h\",\"diameter\":\"1.2 m\",\"height\":\"0.4 m\"} ; "
                        + "firing.steps[2]={\"hold\":\"6 h\",\"heat\":\"both\",\"atmosphere\":\"medium\"}");
        assertThat(message(d)).contains("20 ppm (UK EH40)");
        assertThat(message(TestDesigns.edit(d, "room.family=\"us\""))).contains("25 ppm (ACGIH)");
        assertThat(message(TestDesigns.edit(d, "room.family=\"eu\""))).contains("20 ppm (EU)");
    }

    private static String message(ObjectNode d) {
        return TestDesigns.check(d).findings().stream()
                .filter(f -> f.rule().equals("room-co"))
                .findFirst()
                .orElseThrow()
                .message();
    }
}
