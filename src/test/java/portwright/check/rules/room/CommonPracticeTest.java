package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

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

    @Test
    void aChosenFamilyChangesTheLimitAndOnlyToItsOwn() {
        ObjectNode d = TestDesigns.edit(
                TestDesigns.studio(),
                "room.ledOutdoors=\"0 %\" ; room.hood={\"flow\":\"1300 m3/h\",\"diameter\":\"1.2 m\",\"height\":\"0.4 m\"}");
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
