package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.LogParser;

/** Loss factor and leak area of a simulated kiln come back from its log. */
class RecordFitTest {
    @ParameterizedTest
    @CsvSource({"1.05, 5, 0", "1.40, 5, 0", "1.25, 12, 0", "1.15, 15, 1", "1.30, 3, 1"})
    void comesBack(double loss, double leakCm2, double noise, TestReporter out) {
        Review plan = Review.of(RecordBench.design(RecordBench.text()));
        Fit fit = RecordReview.fit(plan, LogParser.parse(RecordBench.healthyCsv(loss, leakCm2 * 1e-4, noise)));
        System.out.println("fit: " + loss + ", " + leakCm2 + " cm2, noise " + noise + " K: " + fit);
        assertThat(fit.lossFactor()).isCloseTo(loss, within(0.03));
        if (leakCm2 == 5) {
            assertThat(fit.leakM2()).as("the design's own leak").isNaN();
            assertThat(fit.whyNoLeak()).contains("no news");
        } else {
            assertThat(fit.leakM2() * 1e4).isCloseTo(leakCm2, within(0.5));
        }
    }
}
