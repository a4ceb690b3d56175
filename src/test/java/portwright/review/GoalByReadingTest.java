package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Sample;
import portwright.calc.firing.log.LogParser;
import portwright.file.Starters;
import portwright.report.ForecastText;
import portwright.report.RecordText;

/** What is said of the goal where the reading cannot tell it, and of the load that a log notes. */
class GoalByReadingTest {
    private static final Review PLAN =
            Review.of(Starters.find("octagon-17").orElseThrow().read().design());

    /** The plan's own firing with gas logged, its reading changed. */
    private static RecordReview read(DoubleUnaryOperator shown, String note) {
        StringBuilder b = new StringBuilder("elapsed h,temp °C,gas mbar,note\n");
        for (Sample s : PLAN.firing().forecast().value().nominal().samples()) {
            double c = s.chamberK() - 273.15;
            b.append(String.format(
                    Locale.ROOT,
                    "%.4f,%d,%s,%s\n",
                    s.timeS() / 3600,
                    Math.round(shown.applyAsDouble(c)),
                    s.timeS() > 8.3 * 3600 && s.timeS() < 14.6 * 3600 ? "27.4" : "0",
                    s.timeS() == 0 ? note : ""));
        }
        return RecordReview.of(PLAN, List.of(LogParser.parse(b.toString()))).value();
    }

    private static String text(RecordReview r) {
        return RecordText.write(r, List.of("a.csv"), null);
    }

    @Test
    void aFrozenReadingIsTheCauseAndNoGoalIsJudged() {
        RecordReview r = read(c -> Math.min(c, 800), "");
        assertThat(r.results().get(0).goalKnown()).isFalse();
        assertThat(r.ledger().stoppedShort()).isEmpty();
        assertThat(text(r)).contains("not judged: the reading is frozen from").doesNotContain("before its goal");
    }

    @Test
    void aReadingWhereNoBrickKilnGoesReachesNothing() {
        RecordReview r = read(c -> c > 1000 ? 1000 + (c - 1000) * 1.75 : c, "");
        assertThat(r.results().get(0).topK()).isGreaterThan(1430 + 273.15);
        assertThat(r.results().get(0).reached()).isFalse();
        assertThat(text(r)).contains("where no brick kiln goes, and no cone is logged");
    }

    @Test
    void aLoadThatANoteTellsStandsBesideTheDesigns() {
        assertThat(text(read(c -> c, "load 45 kg")))
                .contains("45 kg of ware by a note of the log; the design has 12 kg");
        assertThat(text(read(c -> c, ""))).doesNotContain("by a note");
    }

    @Test
    void aPriceThatIsMissingIsNamed() {
        Review r = Review.of(Starters.find("octagon-17")
                .orElseThrow()
                .remove("firing.prices")
                .read()
                .design());
        assertThat(ForecastText.write(r).replaceAll("\\s+", " "))
                .contains("cost not told: add firing.prices.perKwh (electricity) and firing.prices.perKg (gas)");
    }
}
