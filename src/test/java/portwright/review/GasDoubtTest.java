package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.RecordResult;

/** A log with times and temperatures alone of a firing in which no gas burned, read against a plan with gas. Made by the tool's own forecast. */
class GasDoubtTest {
    private static final String PLAN = "[{\"to\":\"600 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"},"
            + "{\"to\":\"920 °C\",\"rate\":\"120 °C/h\",\"heat\":\"electric\"},"
            + "{\"to\":\"970 °C\",\"rate\":\"full\",\"elements\":\"80 %\",\"heat\":\"both\",\"atmosphere\":\"medium\"},"
            + "{\"to\":\"1200 °C\",\"rate\":\"full\",\"elements\":\"80 %\",\"heat\":\"both\",\"atmosphere\":\"light\"}]";

    private static List<Step> byElementsAlone(List<Step> steps) {
        steps.replaceAll(s -> new Step(s.goal(), s.rateKPerS(), true, false, s.elementShare(), false, s.damper()));
        return steps;
    }

    @Test
    void aClimbThatFitsElementsAloneIsDoubtedAndASoundOneIsNot() {
        OwnLogs o = new OwnLogs("decagon-23", PLAN);
        for (int seed = 1; seed <= 4; seed++) {
            RecordResult electric = o.read(OwnLogs.csv(o.fire(1, GasDoubtTest::byElementsAlone), seed, 1, 2));
            assertThat(electric.gasDoubted()).as("seed %d", seed).isTrue();
            assertThat(o.read(OwnLogs.csv(o.sound(), seed, 1, 2)).gasDoubted())
                    .as("seed %d", seed)
                    .isFalse();
        }
    }
}
