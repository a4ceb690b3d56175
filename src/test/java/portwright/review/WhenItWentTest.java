package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogParser;
import portwright.report.RecordJson;
import portwright.report.RecordText;

/** When a loss of power began is told only as far as the record shows it. */
class WhenItWentTest {
    /** A little over the goal of step 3. */
    private static final double BEHIND_STEP_3_C = (1780 - 32) / 1.8 + 12;

    private static final String STEPS =
            "[{\"to\": \"600 °F\", \"rate\": \"150 °F/h\", \"heat\": \"electric\"}, {\"to\": \"1700 °F\", \"rate\": \"%s\", \"heat\": \"electric\"},"
                    + "{\"to\": \"1780 °F\", \"rate\": \"100 °F/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"medium\"},"
                    + "{\"to\": \"2150 °F\", \"rate\": \"%s\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"light\"}]";

    /** Minute from which half the power is gone. */
    private double goneMin;

    /** Rows of a sound firing up to a reading, °C, then those of one with half the power from there. */
    private RecordReview spliced(String rate, double cutC) {
        OwnLogs o = new OwnLogs("octagon-17", STEPS.formatted(rate, rate));
        StringBuilder b = new StringBuilder("elapsed min,temp °C\n");
        goneMin = rows(b, o.sound(), 0, cutC, 0);
        rows(b, o.fire(0.55, x -> x), cutC, 2000, goneMin);
        return RecordReview.of(o.plan, List.of(LogParser.parse(b.toString()))).value();
    }

    private static double rows(StringBuilder b, FiringRun run, double fromC, double toC, double fromMin) {
        double shift = Double.NaN;
        double next = 0;
        double last = fromMin;
        for (var s : run.samples()) {
            double c = s.chamberK() - 273.15;
            if (Double.isNaN(shift) && c >= fromC || !Double.isNaN(shift)) {
                shift = Double.isNaN(shift) ? fromMin - s.timeS() / 60 : shift;
                if (c > toC) {
                    break;
                }
                last = s.timeS() / 60 + shift;
                if (last >= next) {
                    b.append(Math.round(last * 10) / 10.0)
                            .append(',')
                            .append(Math.round(c * 2) / 2.0)
                            .append('\n');
                    next = last + 3;
                }
            }
        }
        return last + 1;
    }

    /** Its bracket holds the true time. */
    @Test
    void aLossBehindASoundStepIsNotCalledOneFromTheStart() {
        RecordReview r = spliced("full", BEHIND_STEP_3_C);
        assertThat(r.results().get(0).findings()).isNotEmpty().noneMatch(LogFinding::fromStart);
        assertThat(r.results().get(0).findings()).anySatisfy(f -> {
            assertThat(f.soundS()).isPositive().isLessThan(goneMin * 60);
            assertThat(f.timeS()).isGreaterThan(goneMin * 60 - 300);
        });
        assertThat(words(r)).contains("so it began in between").doesNotContain("from the start", "from here on");
        assertThat(RecordJson.write(r, List.of("log.csv"), null)).contains("\"notSeenToHours\"");
    }

    @Test
    void nothingIsSaidOfTheTimeThatAControllerLed() {
        RecordReview r = spliced("150 °F/h", BEHIND_STEP_3_C);
        assertThat(r.results().get(0).findings()).isNotEmpty().noneMatch(LogFinding::fromStart);
        assertThat(words(r))
                .contains("when it began this record does not say")
                .doesNotContain("from the start", "from here on", "so it began in between");
    }

    /** A controller gives less than all before it falls behind: a loss in its step and one from before the firing look alike. */
    @Test
    void aLossUnderAnElectricControllerIsNotLaidBeforeTheFiring() {
        RecordReview r = spliced("250 °F/h", 700);
        assertThat(r.results().get(0).findings())
                .anySatisfy(f -> assertThat(f.timeS()).isGreaterThan(goneMin * 60 - 300));
        assertThat(words(r))
                .contains("whether since before this firing the record does not say")
                .doesNotContain("from the start", "is out since before");
    }

    private static String words(RecordReview r) {
        return RecordText.write(r, List.of("log.csv"), null);
    }
}
