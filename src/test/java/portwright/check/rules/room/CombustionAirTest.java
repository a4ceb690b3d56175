package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.check.CheckResult;

/**
 * The methods of the fuel-gas code family as a rule: 3.48 kW gross in a room too small to count, 3 m high, need 19.1 cm² in each of two openings (38.3 through horizontal
 * ducts), one of 25.5 cm², or two of 645 cm² to a larger room; one within 305 mm of the ceiling and one within 305 mm of the floor.
 */
class CombustionAirTest {
    private static final String CLOSED = "room.hood=- ; room.volume=\"0.5 m3\" ; room.openings=[%s]";

    private static String opening(String area, String level, String more) {
        return String.format("{\"area\":\"%s\",\"level\":\"%s\",\"free\":\"100 %%\",\"to\":\"%s}", area, level, more);
    }

    @ParameterizedTest
    @CsvSource({
        "20 cm2, 0.2 m, 2.8 m, 'outdoors\"', yes",
        "18 cm2, 0.2 m, 2.8 m, 'outdoors\"', no",
        "25 cm2, 0.2 m, 1.5 m, 'outdoors\"', no",
        "25 cm2, 0.2 m, 0.2 m, 'outdoors\"', no",
        "30 cm2, 2.8 m, 2.8 m, 'outdoors\"', yes",
        "30 cm2, 0.2 m, 0.2 m, 'outdoors\"', no",
        "37 cm2, 0.2 m, 2.8 m, 'outdoors\",\"duct\":\"horizontal\"', no",
        "39 cm2, 0.2 m, 2.8 m, 'outdoors\",\"duct\":\"horizontal\"', yes",
        "20 cm2, 0.2 m, 2.8 m, 'outdoors\",\"duct\":\"vertical\"', yes",
        "20 cm2, 0.8 m, 2.2 m, 'outdoors\",\"height\":\"0.9 m\"', no",
        "20 cm2, 0.8 m, 2.2 m, 'outdoors\",\"height\":\"1.2 m\"', yes",
        "650 cm2, 0.2 m, 2.8 m, 'room\"', no"
    })
    void twoOpenings(String area, String low, String high, String more, String enough) {
        CheckResult r = check(String.format(CLOSED, opening(area, low, more) + "," + opening(area, high, more)));
        assertThat(cautions(r)).isEqualTo(enough.equals("no"));
    }

    @Test
    void roomsJoinedByTwoOpeningsCountTogether() {
        String two = opening("650 cm2", "0.2 m", "room\"") + "," + opening("650 cm2", "2.8 m", "room\"");
        assertThat(cautions(check(String.format(CLOSED, two) + " ; room.joinedVolume=\"20 m3\"")))
                .isFalse();
        assertThat(cautions(check(String.format(CLOSED, two) + " ; room.joinedVolume=\"3 m3\"")))
                .isTrue();
    }

    @Test
    void aRoomKnownToBeTightDoesNotCountByItsVolumeAlone() {
        String closed = "room.hood=- ; room.openings=[]";
        CheckResult unknown = check(closed);
        assertThat(cautions(unknown)).isFalse();
        assertThat(unknown.notChecked())
                .anyMatch(n -> n.rule().equals("combustion-air") && n.needs().equals(List.of("room.infiltration")));
        assertThat(cautions(check(closed + " ; room.infiltration=\"3 m3/h\""))).isTrue();
        assertThat(cautions(check(closed + " ; room.infiltration=\"0 m3/h\""))).isTrue();
        assertThat(check(closed + " ; room.infiltration=\"30 m3/h\"").notChecked())
                .noneMatch(n -> n.rule().equals("combustion-air"));
    }

    @Test
    void withoutHeightsNothingIsProven() {
        CheckResult r = check(String.format(
                CLOSED,
                opening("30 cm2", "0.2 m", "outdoors\"") + ","
                        + opening("30 cm2", "2.8 m", "outdoors\"").replace("\"level\":\"2.8 m\",", "")));
        assertThat(cautions(r)).isTrue();
        assertThat(r.notChecked())
                .anyMatch(n -> n.rule().equals("combustion-air") && n.needs().contains("room.openings[1].level"));
    }

    @Test
    void anOpeningLeadsOutdoorsOrToARoom() {
        assertThat(TestDesigns.read(TestDesigns.edit(TestDesigns.studio(), "room.openings[0].to=\"corridor\""))
                        .problems())
                .anySatisfy(p -> assertThat(p.toString()).contains("outdoors").contains("room"));
    }

    private static CheckResult check(String edits) {
        ObjectNode d = TestDesigns.edit(TestDesigns.studio(), edits);
        return TestDesigns.check(d);
    }

    private static boolean cautions(CheckResult r) {
        return r.findings().stream().anyMatch(f -> f.rule().equals("combustion-air"));
    }
}
