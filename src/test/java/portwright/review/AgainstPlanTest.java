package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.firing.log.LogParser;
import portwright.report.PlanNotes;
import portwright.report.RecordText;
import portwright.review.ShedKiln.Break;
import portwright.review.ShedKiln.Fault;
import portwright.review.ShedKiln.Moment;

/** Logs of a kiln reckoned apart from the product: what differs from the plan without a fault that the log proves. */
class AgainstPlanTest {
    private static RecordReview read(PaceLogs.Case c, String text) {
        return RecordReview.of(c.shed().plan, List.of(LogParser.parse(text))).value();
    }

    private static PaceLogs.Case fired(Fault fault, double fromC, double size) {
        return PaceLogs.of("decagon-56cm", PaceLogs.way(4, "8"), 1, new Break(fault, fromC, size, 0), new Random(4));
    }

    /** A log with pressure: 27 mbar from a reading on, and nothing before. */
    private static String withGas(PaceLogs.Case c, double litS) {
        StringBuilder b = new StringBuilder("elapsed min,temp °C,gas mbar\n");
        for (Moment m : c.fired().moments()) {
            b.append(Math.round(m.timeS() / 60))
                    .append(',')
                    .append(Math.round(m.readC()))
                    .append(',')
                    .append(m.timeS() >= litS ? "27" : "0")
                    .append('\n');
        }
        return b.toString();
    }

    @ParameterizedTest
    @ValueSource(ints = {-60, -35, 35, 60})
    void gasLitOffThePlanIsTold(int minutes) {
        PaceLogs.Case c = fired(Fault.NONE, 9999, 0);
        double met = c.fired().moments().stream()
                .filter(m -> m.readC() >= 920)
                .findFirst()
                .orElseThrow()
                .timeS();
        RecordReview r = read(c, withGas(c, met + 60.0 * minutes));
        AgainstPlan p = AgainstPlan.of(r, 0);
        assertThat(p.lit()).isPresent();
        assertThat(p.lit().get().lateS() / 60).isCloseTo(minutes, within(3.0));
        assertThat(RecordText.write(r, List.of("log.csv"), null))
                .contains(minutes > 0 ? " later than planned" : " earlier than planned");
    }

    @Test
    void gasLitInTimeIsNotTold() {
        PaceLogs.Case c = fired(Fault.NONE, 9999, 0);
        double met = c.fired().moments().stream()
                .filter(Moment::gas)
                .findFirst()
                .orElseThrow()
                .timeS();
        assertThat(AgainstPlan.of(read(c, withGas(c, met + 300)), 0).lit()).isEmpty();
    }

    /** Power short where the controller leads all steps: no step at a known power proves it, but the rates are not kept. */
    @Test
    void ratesThatAreNotKeptAreTold() {
        boolean told = false;
        for (double size : new double[] {1 / 3.0, 0.4}) {
            PaceLogs.Case c = fired(Fault.ELEMENT, 100, size);
            RecordReview r = read(c, withGas(c, 1e9).replace(",gas mbar", "").replaceAll("(?m),0$", ""));
            AgainstPlan p = AgainstPlan.of(r, 0);
            told |= p.slow().size() > 1;
            assertThat(p.slow().isEmpty() && r.results().get(0).findings().isEmpty())
                    .as("%s", c)
                    .isFalse();
        }
        assertThat(told).isTrue();
        PaceLogs.Case sound = fired(Fault.NONE, 9999, 0);
        assertThat(PlanNotes.words(AgainstPlan.of(read(sound, sound.text()), 0)))
                .isEmpty();
    }

    /** A hold too short to climb back after open ports: as planned, and said so; not where the record sags far more. */
    @Test
    void aHoldThatSagsAsForecastIsSaidToBeThePlan() {
        OwnLogs o = new OwnLogs(
                "octagon-17",
                "[{\"to\": \"927 °C\", \"rate\": \"139 °C/h\", \"heat\": \"electric\"},"
                        + "{\"to\": \"cone 6\", \"rate\": \"full\", \"heat\": \"both\", \"elements\": \"85 %\", \"ports\": \"open\", \"atmosphere\": \"light\"},"
                        + "{\"hold\": \"4 min\", \"heat\": \"electric\"}]");
        RecordReview sound = read(o, OwnLogs.csv(o.sound(), 1, 0.5, 1));
        assertThat(sound.results().get(0).kept()).isFalse();
        assertThat(AgainstPlan.of(sound, 0).sags()).isPresent();
        assertThat(RecordText.write(sound, List.of("log.csv"), null)).contains("the forecast sags alike");
        RecordReview weak = read(o, OwnLogs.csv(o.fire(1, OwnLogs.welded(2, 0)), 1, 0.5, 1));
        assertThat(weak.results().get(0).kept()).isFalse();
        assertThat(AgainstPlan.of(weak, 0).sags()).isEmpty();
    }

    private static RecordReview read(OwnLogs o, String text) {
        return RecordReview.of(o.plan, List.of(LogParser.parse(text))).value();
    }
}
