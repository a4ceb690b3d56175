package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.report.RecordText;

/** A relay that welds shut: in the last hold, where the reading runs on over what the plan reaches, and in a climb under a rate. */
class OverTemperatureTest {
    /** The starter's firing with all power in its last hold, which lasts some minutes. */
    private static UnaryOperator<List<Step>> lastHold(double share, double minutes) {
        return steps -> {
            int n = steps.size() - 1;
            Step s = steps.get(n);
            steps.set(
                    n,
                    new Step(
                            new Step.Hold(60 * minutes),
                            Step.FULL,
                            s.electric(),
                            s.gas(),
                            share,
                            s.portsOpen(),
                            s.damper()));
            return steps;
        };
    }

    private static LogFinding over(OwnLogs o, FiringRun run, int seed) {
        return o.read(OwnLogs.csv(run, seed, 1, 1 + seed % 2)).findings().stream()
                .filter(f -> f.kind() == Kind.OVER)
                .findFirst()
                .orElse(null);
    }

    /** How far it goes over is told to 8 K: the first minutes of the hold may still be the climb's by the readings. */
    @ParameterizedTest
    @CsvSource({"front-loader-18, 15", "six-corner-55cm, 15", "oval-23, 15", "decagon-23, 45", "octagon-17, 60"})
    void weldedInTheLastHold(String starter, double minutes) {
        OwnLogs o = new OwnLogs(starter, null);
        FiringRun run = o.fire(1, lastHold(1, minutes));
        double over = run.topK() - o.sound().topK();
        assertThat(over).isGreaterThan(15);
        for (int seed = 1; seed <= 3; seed++) {
            LogFinding f = over(o, run, seed);
            assertThat(f).as("%s seed %s", starter, seed).isNotNull();
            assertThat(f.offsetK()).as("%s seed %s", starter, seed).isCloseTo(over, within(8.0));
        }
    }

    @Test
    void wordsNameConesAndWhatToDo() {
        OwnLogs o = new OwnLogs("front-loader-18", null);
        LogFinding f = over(o, o.fire(1, OwnLogs.welded(o.steps().size() - 1, 1)), 1);
        assertThat(RecordText.words(f, true))
                .contains("runs on over what the plan reaches, by ")
                .contains("cone " + f.cone() + " goes down")
                .contains("switch off at the isolator");
    }

    @ParameterizedTest
    @ValueSource(strings = {"decagon-23", "six-corner-55cm", "octagon-17", "oval-23"})
    void weldedInTheClimb(String starter) {
        OwnLogs o = new OwnLogs(starter, null);
        FiringRun run = o.fire(1, s -> OwnLogs.welded(1, 1).apply(s));
        for (int seed = 1; seed <= 2; seed++) {
            assertThat(o.read(OwnLogs.csv(run, seed, 1, seed)).findings())
                    .as("%s seed %s", starter, seed)
                    .anyMatch(f -> f.kind() == Kind.STUCK);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"decagon-23", "six-corner-55cm", "octagon-17", "oval-23", "front-loader-18"})
    void soundHoldsAreNotOver(String starter) {
        OwnLogs o = new OwnLogs(starter, null);
        FiringRun run = o.sound();
        for (int seed = 1; seed <= 4; seed++) {
            assertThat(over(o, run, seed)).as("%s seed %s", starter, seed).isNull();
        }
    }
}
