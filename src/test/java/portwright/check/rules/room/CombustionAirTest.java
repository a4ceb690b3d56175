package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.check.CheckResult;

/**
 * The methods of the fuel-gas code family as a rule: 34.8 kW gross in a room too small to count, 3 m high, need 191 cm² in each of two openings (383 through horizontal
 * ducts), one of 255 cm², or two of 766 cm² to a larger room; one within 305 mm of the ceiling and one within 305 mm of the floor; none less than 3 in
 * wide or high.
 */
class CombustionAirTest {
    private static final String LARGE = "burners[0].heat=\"16 kW\" ; burners[1].heat=\"16 kW\" ; ";
    private static final String CLOSED = "room.hood=- ; room.volume=\"0.5 m3\" ; room.openings=[%s]";

    private static String opening(String area, String level, String more) {
        return String.format("{\"area\":\"%s\",\"level\":\"%s\",\"free\":\"100 %%\",\"to\":\"%s}", area, level, more);
    }

    @ParameterizedTest
    @CsvSource({
        "200 cm2, 0.2 m, 2.8 m, 'outdoors\"', yes",
        "180 cm2, 0.2 m, 2.8 m, 'outdoors\"', no",
        "250 cm2, 0.2 m, 1.5 m, 'outdoors\"', no",
        "250 cm2, 0.2 m, 0.2 m, 'outdoors\"', no",
        "300 cm2, 2.8 m, 2.8 m, 'outdoors\"', yes",
        "300 cm2, 0.2 m, 0.2 m, 'outdoors\"', no",
        "370 cm2, 0.2 m, 2.8 m, 'outdoors\",\"duct\":\"horizontal\"', no",
        "390 cm2, 0.2 m, 2.8 m, 'outdoors\",\"duct\":\"horizontal\"', yes",
        "200 cm2, 0.2 m, 2.8 m, 'outdoors\",\"duct\":\"vertical\"', yes",
        "700 cm2, 0.8 m, 2.2 m, 'outdoors\",\"height\":\"0.9 m\"', no",
        "920 cm2, 0.8 m, 2.2 m, 'outdoors\",\"height\":\"1.2 m\"', yes",
        "200 cm2, 0.2 m, 2.8 m, 'outdoors\",\"height\":\"3 in\"', yes",
        "200 cm2, 0.2 m, 2.8 m, 'outdoors\",\"height\":\"2.9 in\"', no",
        "200 cm2, 0.2 m, 2.8 m, 'outdoors\",\"height\":\"0.27 m\"', no",
        "770 cm2, 0.2 m, 2.8 m, 'room\"', no"
    })
    void twoOpenings(String area, String low, String high, String more, String enough) {
        CheckResult r =
                check(LARGE + String.format(CLOSED, opening(area, low, more) + "," + opening(area, high, more)));
        assertThat(cautions(r)).isEqualTo(enough.equals("no"));
    }

    /** A round hole of 3 in has 45.6 cm²: less area cannot be 3 in wide and high, whatever its shape. */
    @Test
    void anOpeningTooSmallToBeWideEnoughDoesNotCount() {
        for (String area : List.of("44 cm2", "47 cm2")) {
            CheckResult r = check(String.format(
                    CLOSED, opening(area, "0.2 m", "outdoors\"") + "," + opening(area, "2.8 m", "outdoors\"")));
            assertThat(cautions(r)).as(area).isEqualTo(area.startsWith("44"));
        }
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
                opening("60 cm2", "0.2 m", "outdoors\"") + ","
                        + opening("60 cm2", "2.8 m", "outdoors\"").replace("\"level\":\"2.8 m\",", "")));
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
