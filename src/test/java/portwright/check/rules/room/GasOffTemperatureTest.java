package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.review.Review;

/** How soon the walls fall to 750 °C when all heat stops. */
class GasOffTemperatureTest {

    private static CheckResult check(ObjectNode d) {
        return new RuleBook(LimitTable.load()).check(Review.of(TestDesigns.design(d)), Set.of(RuleBook.Section.ROOM));
    }

    private static List<Finding> mine(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.rule().equals("gas-off-temperature"))
                .toList();
    }

    private static Review review(ObjectNode d) {
        return Review.of(TestDesigns.design(d));
    }

    @Test
    void aSmallKilnFallsWithinTheHour() {
        ObjectNode d = TestDesigns.outdoors();
        Finding f = mine(check(d)).get(0);
        double minutes = review(d).firing().heatStop().value().orElseThrow().seconds() / 60;
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        assertThat(f.measured().value()).isCloseTo(minutes, within(1e-9));
        assertThat(f.limit().value()).isEqualTo(60);
        assertThat(minutes).isBetween(5.0, 60.0);
    }

    /** A heavy load behind thick walls, gas only near the top: no alarm is asked for. */
    @Test
    void aHeavyKilnThatIsHotStaysWarmForAnHour() {
        ObjectNode d = TestDesigns.edit(
                TestDesigns.outdoors(),
                "kiln.power=\"12 kW\" ; kiln.wall.thickness=\"4 1/2 in\" ; kiln.floor.thickness=\"4 1/2 in\" ; kiln.lid.thickness=\"4 1/2 in\" ; "
                        + "firing.load=\"60 kg\" ; firing.steps[0].to=\"1150 °C\" ; firing.steps[1].to=\"1180 °C\"");
        CheckResult r = check(d);
        assertThat(review(d).firing().heatStop().value().orElseThrow().seconds())
                .isGreaterThan(3600);
        assertThat(mine(r)).isEmpty();
        assertThat(r.notChecked()).noneMatch(n -> n.rule().equals("gas-off-temperature"));
    }

    @Test
    void withoutTheKilnsPowerItIsNotCheckedAndTheCautionStays() {
        CheckResult r = check(TestDesigns.edit(TestDesigns.outdoors(), "kiln.power=-"));
        assertThat(mine(r)).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.CAUTION);
            assertThat(f.measured()).isNull();
        });
        assertThat(r.notChecked())
                .filteredOn(n -> n.rule().equals("gas-off-temperature"))
                .allSatisfy(n -> assertThat(n.needs()).containsExactly("kiln.power"))
                .extracting(n -> n.forbids())
                .containsExactlyInAnyOrder(Forbids.LIGHTING, Forbids.NOTHING);
        assertThat(r.lighting()).isEqualTo(Verdict.INCOMPLETE);
    }

    @Test
    void withoutGasNothingIsSaid() {
        CheckResult r = check(TestDesigns.edit(
                TestDesigns.outdoors(),
                "firing.steps=[{\"to\":\"1000 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"}]"));
        assertThat(mine(r)).isEmpty();
    }
}
