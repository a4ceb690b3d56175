package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.report.ForecastText;
import portwright.sheet.CardBuilder;
import portwright.sheet.CardData;
import portwright.sheet.CardForecast;

/** A cone asked for faster than the chart goes: check and forecast take one temperature, and both say that the chart ends before. */
class FastConeTest {
    private static Review review(String rate) throws IOException {
        return Review.of(DesignFile.read(Path.of("src/test/resources/designs/common-practice-190-litres.json"))
                .document()
                .setText("kiln.power", "40 kW")
                .set(
                        "firing.steps",
                        "[{\"to\": \"900 °C\", \"rate\": \"300 °C/h\", \"heat\": \"electric\"}, {\"to\": \"cone 11\", \"rate\": \""
                                + rate + "\", \"heat\": \"electric\"}]")
                .read()
                .design());
    }

    private static List<String> remarks(Review r) {
        return CardBuilder.of(new RuleBook(LimitTable.load()).check(r), r.design(), CardForecast.of(r)).steps().stream()
                .filter(CardData.Step::remark)
                .map(CardData.Step::across)
                .toList();
    }

    @Test
    void oneTemperatureBeyondTheChart() throws IOException {
        Review fast = review("645 °C/h");
        var run = fast.firing().forecast().value().nominal();
        assertThat(run.reached()).isTrue();
        FiringReview.Goal goal = fast.firing().hottestGoal();
        assertThat(goal.kelvin()).isCloseTo(run.endK(), within(3.0));
        assertThat(goal.words()).contains("faster than the cone chart's 150 °C/h");
        assertThat(ForecastText.write(fast).replaceAll("\\s+", " ")).contains("the cone chart ends at 150 °C/h");
        assertThat(remarks(fast))
                .contains("Chart to 150 °C/h: trust cones.")
                .allMatch(w -> !w.startsWith("Chart") || w.length() <= 32);
    }

    @Test
    void withinTheChartNothingIsSaid() throws IOException {
        Review usual = review("150 °C/h");
        assertThat(usual.firing().hottestGoal().words()).isEqualTo("cone 11 at 150 °C/h as asked");
        assertThat(ForecastText.write(usual)).doesNotContain("the cone chart ends");
        assertThat(remarks(usual)).noneMatch(w -> w.startsWith("Chart"));
    }
}
