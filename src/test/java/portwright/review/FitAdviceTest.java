package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.LogParser;

/** A fit that is refused says what to fire instead, asks nothing that the log has already, and its advice bears fruit. */
class FitAdviceTest {
    private static final String STEPS =
            "[{\"to\": \"600 °F\", \"rate\": \"150 °F/h\", \"heat\": \"electric\"}, {\"to\": \"1700 °F\", \"rate\": \"full\", \"heat\": \"electric\"%s},"
                    + "{\"to\": \"1780 °F\", \"rate\": \"100 °F/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"medium\"}]";

    private static Fit fit(String share, String note) {
        OwnLogs o = new OwnLogs("octagon-17", STEPS.formatted(share));
        List<String> rows = OwnLogs.csv(o.sound(), 1, 1, 5).lines().toList();
        StringBuilder b = new StringBuilder("hours,temp °C,notes\n");
        for (int i = 1; i < rows.size(); i++) {
            b.append(rows.get(i)).append(',').append(i == 1 ? note : "").append('\n');
        }
        return RecordReview.fit(o.plan, LogParser.parse(b.toString()));
    }

    @Test
    void aFastClimbIsToBeFiredSlower() {
        Fit fast = fit("", "");
        assertThat(fast.fits()).isFalse();
        assertThat(fast.whyNoLoss())
                .contains("\"elements\": \"60 %\"", "a note of what the ware weighs (as: load 30 kg)", "cones");
        assertThat(fit(", \"elements\": \"60 %\"", "").fits()).isTrue();
    }

    @Test
    void whatTheLogHasIsNotAskedFor() {
        assertThat(fit("", "load 12 kg").whyNoLoss())
                .contains("\"elements\": \"60 %\"", "cones beside the thermocouple")
                .doesNotContain("a note of the ware");
    }
}
