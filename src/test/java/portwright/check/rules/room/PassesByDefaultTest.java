package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Severity;

/** A room that keeps a limit only as long as the brick is as tabled is told so, with the default behind it; how rich the draught may burn is counted. */
@Tag("regression")
class PassesByDefaultTest {
    private static final String HOOD = "room.hood.diameter=\"0.8 m\" ; room.ledBy=\"pipe\" ; room.ledOutdoors=";

    @Test
    void aSlowerKilnPassesTheLimitOverEightHours() {
        String richest =
                HOOD + "\"94 %\" ; firing.steps[1].atmosphere=\"beyond\" ; firing.steps[2].atmosphere=\"beyond\" ; "
                        + "firing.steps[3].atmosphere=\"beyond\"";
        Finding f = end(richest + " ; kiln.lossFactor=-");
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        assertThat(f.limit().value()).isEqualTo(20);
        assertThat(f.measured().value()).isBetween(20.0, 35.0);
        assertThat(f.message()).contains("kiln.lossFactor is not stated").doesNotContain("lambda");
        assertThat(f.remedy()).contains("lossFactor");
        Finding stated = end(richest + " ; kiln.lossFactor=1.25");
        assertThat(stated.measured()).isEqualTo(f.measured());
        assertThat(stated.message() + stated.remedy()).doesNotContain("lossFactor");
    }

    /** How rich the draught may burn is no default to be told apart: what is dangerous is judged at the rich end of the forecast's band. */
    @Test
    void aRicherFireIsCounted() {
        List<Finding> all = found(HOOD + "\"90 %\"", "room-co");
        assertThat(all).anySatisfy(f -> {
            assertThat(f.limit().value()).isEqualTo(20);
            assertThat(f.message()).contains("5 % of the draws lie beyond").doesNotContain("brick");
        });
        assertThat(ends(HOOD + "\"90 %\"")).isEmpty();
    }

    /** Rich counts, and where gas burns longer besides, that is told. */
    @Test
    void theSlowEndIsReckonedRich() {
        assertThat(end(HOOD + "\"92.5 %\"").message()).contains("brick");
    }

    @Test
    void farFromTheLimitNothingIsSaid() {
        assertThat(
                        ends(
                                HOOD
                                        + "\"90 %\" ; room.volume=\"300 m3\" ; room.ventilator=\"4000 m3/h\" ; room.openings[0].area=\"3 m2\""))
                .isEmpty();
    }

    /** At the rich end a short firing, too, brings what sends everybody out: a stop, where the middle of the band stays under it. */
    @Test
    void aShortFiringStops() {
        List<Finding> all = found(
                HOOD
                        + "\"70 %\" ; firing.steps=[{\"to\":\"900 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\",\"elements\":\"controller\",\"ports\":\"plugged\"},"
                        + "{\"hold\":\"40 min\",\"heat\":\"both\",\"elements\":\"controller\",\"ports\":\"open\",\"atmosphere\":\"medium\"}]",
                "room-co");
        assertThat(all).anySatisfy(f -> {
            assertThat(f.severity()).isEqualTo(Severity.STOP);
            assertThat(f.limit().value()).isEqualTo(100);
        });
    }

    @Test
    void oxygenFallsFurtherWhereGasBurnsLonger() {
        String closed = "room.openings=[] ; room.hood=- ; room.volume=";
        List<Finding> found = found(closed + "\"150 m3\" ; kiln.lossFactor=-", "room-oxygen");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.get(0).message()).contains("kiln.lossFactor");
        assertThat(found(closed + "\"600 m3\"", "room-oxygen")).isEmpty();
    }

    private static Finding end(String edits) {
        List<Finding> all = ends(edits);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static List<Finding> ends(String edits) {
        return found(edits, "room-co").stream()
                .filter(f -> f.source().title().contains("brick conductivity"))
                .toList();
    }

    private static List<Finding> found(String edits, String rule) {
        return TestDesigns.check(TestDesigns.edit(TestDesigns.studio(), edits)).findings().stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
    }
}
