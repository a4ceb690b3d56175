package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.SyntheticKiln;
import portwright.calc.firing.SyntheticKiln.Fault;
import portwright.calc.firing.SyntheticKiln.Reading;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;
import portwright.report.RecordText;

/** A damper that stands farther open than the log says takes heat as a lost element does. */
class HiddenDamperTest {
    private static final int CASES = 8;
    private static Review plan;
    private static double[] planned;
    private static double gasS;

    @BeforeAll
    static void plan() {
        plan = Review.of(RecordBench.design(RecordBench.text().remove("kiln.leakArea")));
        planned = RecordReview.caseOf(plan, RecordBench.ANY).plannedDamper();
        gasS = begin(2);
    }

    private static double begin(int step) {
        return plan.firing().forecast().value().nominal().steps().get(step).startS();
    }

    /** Elements that are found lost; the damper column says what the plan says, whatever the plate did. */
    private static List<LogFinding> elements(int seed, Fault fault) {
        Random r = new Random(seed * 7919L);
        SyntheticKiln.Firing fired = RecordBench.fire(plan, plan.firing().kiln().value(), fault);
        List<Reading> told = fired.readings().stream()
                .map(x -> new Reading(x.timeS(), x.chamberK(), x.step(), planned[x.step()]))
                .toList();
        String log = RecordBench.csv(new SyntheticKiln.Firing(told, fired.cones()), r, 1.5, true, c -> 0);
        return RecordResult.of(RecordReview.caseOf(plan, LogParser.parse(log))).findings().stream()
                .filter(x -> x.kind() == Kind.ELEMENT)
                .toList();
    }

    @Test
    void noElementIsBlamedAloneForAir() {
        int told = 0;
        for (int seed = 1; seed <= CASES; seed++) {
            double at = begin(3) + 3600 * (0.3 + 0.2 * seed);
            double more = 0.3 + 0.05 * seed;
            for (LogFinding x : elements(seed, new Fault(t -> 1, t -> t < at ? 0 : more))) {
                told++;
                assertThat(x.orAir()).as("seed %d: %s", seed, x).isTrue();
                assertThat(RecordText.words(x, true))
                        .contains(
                                "Either an element or the relay of its group is out, or the damper stood farther open")
                        .contains("measure each element's resistance");
            }
        }
        assertThat(told).isGreaterThan(CASES / 2);
    }

    /** An element that goes long before there is gas is no damper: a third or a quarter of the power. */
    @Test
    void whatGoesBeforeTheGasIsNoAir() {
        int told = 0;
        for (int seed = 1; seed <= CASES; seed++) {
            double at = gasS * (0.45 + 0.03 * seed);
            double left = seed % 2 == 0 ? 2 / 3.0 : 3 / 4.0;
            for (LogFinding x : elements(seed, new Fault(t -> t < at ? 1 : left, t -> 0))) {
                told++;
                assertThat(x.orAir()).as("seed %d: %s", seed, x).isFalse();
            }
        }
        assertThat(told).isGreaterThan(CASES / 2);
    }
}
