package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.report.PlanNotes;
import portwright.report.RecordText;

/** Climbs that lie farther from the forecast than it is good to, where no controller leads them. */
class OffForecastTest {
    private static String steps(String share) {
        return "[{\"to\": \"315 °C\", \"rate\": \"80 °C/h\", \"heat\": \"electric\"}, {\"to\": \"920 °C\", \"rate\": \"full\", \"heat\": \"electric\", \"elements\": \"80 %\"},"
                + "{\"to\": \"970 °C\", \"rate\": \"full\", \"heat\": \"both\", \"elements\": \"" + share
                + "\", \"ports\": \"open\", \"atmosphere\": \"medium\"},"
                + "{\"to\": \"1150 °C\", \"rate\": \"full\", \"heat\": \"both\", \"elements\": \"" + share
                + "\", \"ports\": \"open\", \"atmosphere\": \"light\"}]";
    }

    private static RecordReview read(OwnLogs o, FiringRun run) {
        return RecordReview.of(o.plan, List.of(LogParser.parse(OwnLogs.csv(run, 1, 1, 1))))
                .value();
    }

    private static UnaryOperator<List<Step>> damper(int from, double open) {
        return steps -> {
            for (int i = from; i < steps.size(); i++) {
                Step s = steps.get(i);
                steps.set(
                        i,
                        new Step(
                                s.goal(),
                                s.rateKPerS(),
                                s.electric(),
                                s.gas(),
                                s.elementShare(),
                                s.portsOpen(),
                                new Step.Share(open)));
            }
            return steps;
        };
    }

    /** A relay that stays shut under the gas steps: all of the power where the plan asks a part. */
    @ParameterizedTest
    @CsvSource({"octagon-17, 30 %", "octagon-17, 45 %", "decagon-23, 30 %", "six-corner-55cm, 30 %"})
    void allThePowerForAShareIsTold(String starter, String share) {
        OwnLogs o = new OwnLogs(starter, steps(share));
        RecordReview r = read(o, o.fire(1, OwnLogs.welded(2, 1)));
        AgainstPlan p = AgainstPlan.of(r, 0);
        boolean found = r.results().get(0).findings().stream().anyMatch(f -> f.kind() == Kind.STUCK);
        assertThat(found || p.off().stream().anyMatch(x -> x.fast() && x.atShare()))
                .isTrue();
        if (!found) {
            assertThat(PlanNotes.cautions(p)).singleElement().asString().contains("stuck shut", "cold and unplugged");
        }
        assertThat(RecordText.write(r, List.of("log.csv"), null)).doesNotContain(RecordText.NOTHING + "\n");
    }

    /** A plate off its place: told as slow, with its causes, and never beside the words that nothing changed. */
    @Test
    void aPlateOffTheFlueIsTold() {
        OwnLogs o = new OwnLogs("octagon-17", steps("45 %"));
        RecordReview r = read(o, o.fire(1, damper(2, 1)));
        AgainstPlan p = AgainstPlan.of(r, 0);
        assertThat(p.off()).noneMatch(OffForecast::fast);
        String text = RecordText.write(r, List.of("log.csv"), null);
        assertThat(text).doesNotContain(RecordText.NOTHING + "\n");
        boolean told = !p.off().isEmpty() || !r.results().get(0).findings().isEmpty();
        assertThat(told).isTrue();
        if (!p.off().isEmpty()) {
            assertThat(text).contains("slower than forecast: step").contains(RecordText.NOTHING_BUT_CLIMB);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"octagon-17", "decagon-23", "six-corner-55cm"})
    void theForecastItselfIsNotOff(String starter) {
        for (String share : new String[] {"30 %", "60 %", "100 %"}) {
            OwnLogs o = new OwnLogs(starter, steps(share));
            RecordReview r = read(o, o.sound());
            assertThat(AgainstPlan.of(r, 0).off()).isEmpty();
            assertThat(r.results().get(0).findings()).isEmpty();
        }
    }

    /** Less than half as fast again may be a sound kiln: a note beside what it may be, no caution. */
    @Test
    void aLittleFasterIsANote() {
        OffForecast little =
                new OffForecast(List.of(new OffForecast.Climb(3, 181 / 3600.0, 129 / 3600.0)), true, false, true, true);
        AgainstPlan p = new AgainstPlan(List.of(), List.of(little), Optional.empty(), Optional.empty());
        assertThat(PlanNotes.cautions(p)).isEmpty();
        assertThat(PlanNotes.words(p))
                .singleElement()
                .asString()
                .contains("faster than forecast: step 4 climbs 181 for 129 °C/h", "stuck shut");
        assertThat(p.unevenClimb()).isTrue();
    }
}
