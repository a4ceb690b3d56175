package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.check.Forbids.LIGHTING;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.NotChecked;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;

/** What the rules on the room's air and people ask for, what they may forbid, and their figures in thin air. Own judgement, no source, unless said. */
class RoomAskedSaidTest {
    private static final String PIPE = "room.hood=- ; room.ledBy=\"pipe\" ; room.ledOutdoors=\"90 %\"";

    private static Findings ask(Rule rule, String edits) {
        return OneRule.check(rule, OneRule.review(TestDesigns.studio(), edits));
    }

    private static List<String> needs(Findings out) {
        return out.notChecked().stream()
                .map(NotChecked::needs)
                .flatMap(List::stream)
                .toList();
    }

    @Test
    void namesOfTheRulesAndWhatTheyMayForbid() {
        Map<Rule, String> stopping = Map.of(
                AlarmRule.co(),
                "co-alarm",
                new RoomCoRule(),
                "room-co",
                new RoomOxygen(),
                "room-oxygen",
                new RoomPlaceRule(),
                "room-place");
        Map<Rule, String> telling = Map.of(
                AlarmRule.gas(),
                "gas-alarm",
                new CombustionAirRule(),
                "combustion-air",
                new HoodCapture(),
                "hood-capture",
                new MakeUpAir(),
                "make-up-air",
                new RoomHeat(),
                "room-heat",
                new VentFan(),
                "vent-fan");
        stopping.forEach((r, id) -> {
            assertThat(r.id()).isEqualTo(id);
            assertThat(r.canForbid()).as(id).isEqualTo(Set.of(LIGHTING));
        });
        telling.forEach((r, id) -> {
            assertThat(r.id()).isEqualTo(id);
            assertThat(r.canForbid()).as(id).isEmpty();
        });
    }

    /** What is counted with a usual value is asked by both rules that turn on it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "room.openings[1].free=-|room.openings[1].free",
                "firing.steps[1].elements=-|firing.steps[1].elements",
                "burners[1]={\"name\":\"burner B\",\"port\":\"inlet B\",\"fuel\":\"propane\",\"jet\":\"0.5 mm\",\"pressure\":\"11 inH2O\"}|burners[1].jets",
                "room.altitude=-|room.altitude"
            })
    void usualValuesAreAsked(String edit, String field) {
        assertThat(needs(ask(new RoomCoRule(), edit))).containsExactly(field);
        assertThat(needs(ask(new RoomOxygen(), edit))).containsExactly(field);
    }

    @Test
    void theFreeShareOfAnOpeningIsAskedForAirToBurnWith() {
        assertThat(needs(ask(new CombustionAirRule(), "room.openings[1].free=-")))
                .contains("room.openings[1].free");
        assertThat(needs(ask(new CombustionAirRule(), ""))).doesNotContain("room.openings[1].free");
    }

    @Test
    void withoutAPlaceCarbonMonoxideIsNotChecked() {
        Findings out = ask(new RoomCoRule(), "room.place=-");
        assertThat(out.findings()).isEmpty();
        OneRule.lacks(out, new RoomCoRule(), LIGHTING, "room.place");
        Findings air = ask(new RoomCoRule(), "room.volume=-");
        assertThat(air.findings()).isEmpty();
        OneRule.lacks(air, new RoomCoRule(), LIGHTING, "room.volume");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"diameter\":\"1.2 m\",\"height\":\"0.4 m\"",
                "\"flow\":\"1300 m3/h\",\"height\":\"0.4 m\"",
                "\"flow\":\"1300 m3/h\",\"diameter\":\"1.2 m\""
            })
    void aHoodNeedsAllThreeMeasures(String two) {
        Findings out = ask(new HoodCapture(), "room.hood={" + two + "}");
        assertThat(needs(out)).containsExactly("room.hood.flow", "room.hood.diameter", "room.hood.height");
        assertThat(OneRule.only(out, Severity.CAUTION).remedy())
                .isEqualTo("Add room.hood.flow, room.hood.diameter, room.hood.height.");
    }

    @Test
    void withoutARoomThereIsNoHood() {
        OneRule.silent(ask(new HoodCapture(), "room=-"));
    }

    /** A room joined to a dwelling whose carbon monoxide cannot be counted is stopped as one that leads nothing outdoors. */
    @Test
    void aJoinedRoomOfUnknownAirIsStopped() {
        Findings out = ask(new RoomPlaceRule(), "room.building=\"joined\" ; room.volume=-");
        Finding f = OneRule.only(out, Severity.STOP);
        assertThat(f.message())
                .isEqualTo(
                        "The kiln stands in a studio joined to a dwelling and less than 90 % of the flue gas is led outdoors: carbon monoxide goes through.");
        assertThat(f.remedy()).endsWith("or hang a hood that leads the flue gas outdoors.");
    }

    /** Air of 1.2 kg/m³ at sea level takes 1.2746 times the volume at 2000 m (standard atmosphere); 1006 J/kgK, ASHRAE from memory. */
    @Test
    void thinAirCarriesLessWarmth() {
        Review r = OneRule.review(
                TestDesigns.studio(),
                PIPE
                        + " ; room.altitude=\"2000 m\" ; room.ventilator=\"700 m3/h\" ; room.openings=[{\"area\":\"0.3 m2\",\"level\":\"1 m\",\"free\":\"100 %\",\"to\":\"outdoors\"}]");
        Finding f = OneRule.only(OneRule.check(new RoomHeat(), r), Severity.CAUTION);
        double heat = r.room().heat().value().heatW();
        double flow = heat * 1.2746 / (1.2 * 1006 * 15) * 3600;
        String told = f.remedy().replaceAll("Give the room ([0-9 .]+) m³/h of air; .*", "$1");
        assertThat(Double.parseDouble(told.replace(" ", ""))).isCloseTo(flow, within(flow * 0.01));
        assertThat(f.measured().value())
                .isCloseTo(
                        heat * 1.2746 / (1.2 * 1006 * 700 / 3600),
                        within(f.measured().value() * 1e-3));
        assertThat(f.limit().value()).isCloseTo(15, within(1e-9));
    }

    /** A limit that is not known to be kept is a caution with its limit and its source: what a work room usually allows. */
    @Test
    void warmthThatIsNotKnownIsToldWithItsLimit() {
        Finding f = OneRule.only(ask(new RoomHeat(), "room.volume=-"), Severity.CAUTION);
        assertThat(f.measured()).isNull();
        assertThat(f.limit().value()).isCloseTo(15, within(1e-9));
        assertThat(f.limit().unit()).isEqualTo("K");
        assertThat(f.source().line()).contains("usual allowance for a work room");
    }

    /** Minus signs, thousands and small figures as people write them. */
    @ParameterizedTest
    @CsvSource({
        "0,0",
        "0.00012345,0.000123",
        "-12345,−12 300",
        "123456,123 000",
        "-123456,−123 000",
        "12345.6,12 300",
        "1234567,1 230 000",
        "999.4,999",
        "1000,1000",
        "99.96,100",
        "-0.25,−0.25",
        "1,1",
        "100.4,100"
    })
    void threeFigures(double v, String words) {
        assertThat(Say.n(v)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"119.4,119 s", "120,2 min", "7199,120 min", "7200,2 h", "9000,2.5 h"})
    void times(double s, String words) {
        assertThat(Say.time(s)).isEqualTo(words);
    }

    @Test
    void limitsHoldWithinTheirTolerance() {
        for (double limit : new double[] {20, -20}) {
            double more = Math.abs(limit) * 1e-6;
            double dust = Math.abs(limit) * Say.TOLERANCE / 2;
            assertThat(Say.over(limit + more, limit)).isTrue();
            assertThat(Say.over(limit + dust, limit)).isFalse();
            assertThat(Say.under(limit - more, limit)).isTrue();
            assertThat(Say.under(limit - dust, limit)).isFalse();
        }
        assertThat(Say.justUnder("5", "5")).isEqualTo("just under 5");
        assertThat(Say.justUnder("4.9", "5")).isEqualTo("4.9");
        assertThat(Say.justOver("5", "5")).isEqualTo("just over 5");
        assertThat(Say.justOver("5.1", "5")).isEqualTo("5.1");
        assertThat(Say.flow(0.5)).isEqualTo("1800 m³/h");
        assertThat(Say.toC(293.15)).isEqualTo(20);
        assertThat(Say.celsius(373.15)).isEqualTo("100 °C (212 °F)");
    }
}
