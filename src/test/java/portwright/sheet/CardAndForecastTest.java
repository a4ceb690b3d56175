package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.report.ForecastText;
import portwright.review.AskedState;
import portwright.review.PlateSetting;
import portwright.review.Review;
import portwright.review.StepRow;
import portwright.review.StepTravel;

/** What the firing card and the forecast say of one firing. */
class CardAndForecastTest {
    private static final String STEPS =
            "[{\"to\": \"900 °C\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"}, {\"to\": \"950 °C\", \"rate\": \"60 °C/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"heavy\"},"
                    + "{\"to\": \"cone 6\", \"rate\": \"60 °C/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"light\"}, {\"to\": \"1000 °C\", \"rate\": \"100 °C/h\", \"heat\": \"electric\", \"ports\": \"open\"}]";

    private static Review review;
    private static CardData card;

    @BeforeAll
    static void example() throws Exception {
        review =
                Review.of(DesignText.read(Files.readString(Path.of("src/test/resources/designs/contract-example.json")))
                        .document()
                        .set("firing.steps", STEPS)
                        .setText("kiln.power", "9 kW")
                        .read()
                        .design());
        CheckResult result = new RuleBook(LimitTable.load()).check(review);
        card = CardBuilder.of(result, review.design(), CardBuilder.Computed.of(review));
    }

    /** The forecast sets the plate once, for the middle of a step: that lies between the card's start and end. */
    @Test
    void plateOfTheForecastLiesInTheCardsSpan() {
        List<StepRow> rows = review.firing().rows(review.fire());
        List<StepTravel> travel = StepTravel.of(review.fire());
        assertThat(travel).hasSize(2);
        for (StepTravel t : travel) {
            assertThat(rows.get(t.step()).travelMm()).isBetween(t.startMm() - 0.2, t.endMm() + 0.2);
            assertThat(t.lowMm()).isLessThan(t.endMm() - 1);
            assertThat(t.highMm()).isGreaterThan(t.endMm() + 1);
            assertThat(card.steps().get(t.step()).plate()).isEqualTo(t.words()).doesNotContain(".");
        }
    }

    @Test
    void pluggedAndOpenAreNamedAlike() {
        List<StepRow> rows = review.firing().rows(review.fire());
        assertThat(card.steps().get(0).plate()).isEqualTo("plugged");
        assertThat(rows.get(0).damperOpen()).isNull();
        assertThat(card.steps().get(4).plate()).isEqualTo("off");
        assertThat(card.steps().get(3).across()).contains("the ports stay open");
        assertThat(rows.get(3).damperOpen()).isNotNull();
    }

    /** A cone falls where its heat work says at the rate asked for, in both. */
    @Test
    void oneTopTemperature() {
        AskedState cone = review.fire().asked().value().get(1);
        assertThat(cone.endK())
                .isCloseTo(review.firing().rows(review.fire()).get(2).endC() + 273.15, within(8.0));
    }

    @Test
    void noRangeOfOneValue() {
        String line = ForecastText.line(review);
        assertThat(line).doesNotContainPattern("([0-9.]+) to \\1\\b");
        assertThat(ForecastText.write(review)).doesNotContainPattern("([0-9.]+) to \\1 h\\b");
    }

    /** The band of the plate is the band of lambda carried over: with as much more air as its high end says, the level's middle needs the lower travel. */
    @Test
    void plateBandIsTheBandOfLambda() {
        double k = 1373.15;
        var level = portwright.calc.combustion.AtmosphereLevel.MEDIUM;
        PlateSetting p = review.fire().plateSetting(level, k);
        var band = review.fire().band(k, p.openShare()).lambda();
        double least = review.fire().plate().openShare(p.lowMm() / 1000);
        double mid = portwright.review.LevelSetting.middle(level);
        assertThat(review.fire().lambda(k, least).orElseThrow() * band.high() / mid)
                .isCloseTo(mid, within(0.01));
        assertThat(p.words(true)).contains(" in) from shut, between ");
    }
}
