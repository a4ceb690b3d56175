package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.StepResult;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.report.CheckText;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;
import portwright.sheet.CardBuilder;
import portwright.sheet.CardData;
import portwright.sheet.CardForecast;

/** Steps that do not go as asked: a cone that is down before, a fall at another rate; told in forecast, check and card alike. */
class ForecastStepsTest {
    private static final String UP = "[{\"to\": \"900 °C\", \"rate\": \"150 °C/h\", \"heat\": \"electric\"},"
            + " {\"to\": \"cone 6\", \"rate\": \"60 °C/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"light\"}, ";

    private static DesignText octagon() {
        return Starters.find("octagon-17").orElseThrow();
    }

    private static Design steps(String more) {
        return octagon().set("firing.steps", UP + more + "]").read().design();
    }

    private static String text(Review r) {
        return ForecastText.write(r).replaceAll("\\s+", " ");
    }

    private static CheckResult check(Review r) {
        return new RuleBook(LimitTable.load()).check(r);
    }

    private static CardData card(Review r) {
        return CardBuilder.of(check(r), r.design(), CardForecast.of(r));
    }

    /** The chart has cone 6 down at 1222 °C in a climb of 60 °C/h. */
    @Test
    @Tag("published")
    void aConeThatIsDownBefore() throws IOException {
        Review r = Review.of(
                steps(
                        "{\"to\": \"1000 °C\", \"rate\": \"200 °C/h\", \"heat\": \"electric\"},"
                                + " {\"to\": \"cone 6\", \"rate\": \"60 °C/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"light\"}"));
        StepResult again = r.firing().forecast().value().nominal().last();
        assertThat(again.coneDownBefore()).isTrue();
        assertThat(again.seconds()).isZero();
        assertThat(text(r)).contains("cone 6 is down already since ").doesNotContain("slower than any cone chart");
        JsonNode told = new ObjectMapper().readTree(ForecastJson.write(r)).get("steps");
        assertThat(told.get(3).get("coneDownBefore").asBoolean()).isTrue();
        assertThat(told.get(1).get("coneDownBefore").asBoolean()).isFalse();
        assertThat(check(r).findings())
                .filteredOn(f -> f.rule().equals("firing-reach"))
                .extracting(Finding::message)
                .anyMatch(m -> m.startsWith("Step 4 asks for cone 6, which is down already"));
        List<CardData.Step> rows = card(r).steps();
        int at = rows.indexOf(rows.stream()
                .filter(s -> s.to().equals("cone 6"))
                .reduce((a, b) -> b)
                .orElseThrow());
        assertThat(rows.get(at).beside()).startsWith("1222 °C");
        assertThat(rows.get(at + 1).across())
                .isEqualTo("Forecast: cone 6 is down already.")
                .hasSizeLessThanOrEqualTo(33);
    }

    @Test
    void aStepThatFallsIsSeenAsOne() throws IOException {
        Review r = Review.of(steps(
                "{\"to\": \"1000 °C\", \"rate\": \"100 °C/h\", \"heat\": \"gas\", \"ports\": \"open\", \"atmosphere\": \"heavy\"},"
                        + " {\"to\": \"800 °C\", \"rate\": \"100 °F/h\", \"heat\": \"none\"}"));
        StepRow falls = r.firing().rows(r.fire()).get(2);
        assertThat(falls.askedFallKPerH()).isCloseTo(100, within(1e-9));
        assertThat(falls.fallKPerH()).isGreaterThan(120);
        assertThat(text(r))
                .contains("falls " + Math.round(falls.fallKPerH()) + " °C/h, faster than the 100 °C/h asked");
        JsonNode power = new ObjectMapper().readTree(ForecastJson.write(r)).get("power");
        assertThat(power.get("stepIndexLostByElements").isInt()).isTrue();
        assertThat(power.get("stepIndexLostByElements").asInt()).isEqualTo(1);
        CardData card = card(r);
        assertThat(String.join(" ", card.alarm())).contains("upwind").doesNotContain("outside", "body out", "Back in");
        List<CardData.Step> rows = card.steps();
        assertThat(rows).anyMatch(s -> s.rate().equals("−100 °C/h"));
        assertThat(rows).anyMatch(s -> s.rate().equals("−100 °F/h"));
        assertThat(rows)
                .filteredOn(s -> s.rate().startsWith("−"))
                .allSatisfy(s -> assertThat(s.beside()).isNotEmpty().doesNotContain("cone"));
        assertThat(rows)
                .extracting(CardData.Step::across)
                .contains("Falls about " + Math.round(falls.fallKPerH()) + " °C/h, faster than asked.")
                .anyMatch(a -> a.matches("Falls about [0-9]+ °F/h, faster than asked."));
        assertThat(card.temperatureFalls().get(0)).startsWith("Not in a step").hasSizeLessThanOrEqualTo(32);
        assertThat(card(Review.of(octagon().read().design())).temperatureFalls())
                .noneMatch(f -> f.startsWith("Not in"));
    }

    /** Where nothing but electricity heats, nothing is said of gas, its probe or its meter. */
    @Test
    void electricityAlone() throws IOException {
        Review r = Review.of(octagon()
                .remove("damper")
                .remove("supply")
                .set("burners", "[]")
                .set("ports", "[]")
                .set("firing.steps", "[{\"to\": \"cone 6\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"}]")
                .read()
                .design());
        assertThat(r.design().allElectric()).isTrue();
        CheckResult checked = check(r);
        assertThat(checked.findings()).extracting(Finding::rule).doesNotContain("co-alarm", "room-place");
        assertThat(text(r)).doesNotContain("damper", "CO meter", "flame");
        String said = checked.findings() + " " + card(r).own()
                + CheckText.write(checked, null, r.design().units(), 80, false);
        assertThat(said).doesNotContain("permits gas", "CO meter", "reduction", "lost flame");
    }

    /** Two travels that round to one millimetre keep the inches that the forecast tells of each. */
    @Test
    void oneMarkForTwoTravelsTellsBothInches() throws IOException {
        Review r = Review.of(
                steps(
                        "{\"hold\": \"10 min\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"light\"},"
                                + " {\"to\": \"1240 °C\", \"rate\": \"60 °C/h\", \"heat\": \"both\", \"ports\": \"open\", \"atmosphere\": \"light\"}"));
        List<CardData.Band> bands =
                List.of(new CardData.Band(1, "light", 22.6, 20, 30), new CardData.Band(3, "light", 23.39, 20, 30));
        CardForecast own = CardForecast.of(r);
        CardForecast two = new CardForecast(
                own.plates(),
                bands,
                own.line(),
                own.endsC(),
                own.missed(),
                own.coneDown(),
                own.remarks(),
                own.notes(),
                own.close());
        List<CardData.Mark> marks =
                CardBuilder.of(check(r), r.design(), two).plate().marks();
        assertThat(marks).hasSize(1);
        assertThat(marks.get(0).inches()).isEqualTo("7/8–15/16 in");
    }

    /** Natural gas by a wide jet wants the plate wide: four fractions still leave a blank before lambda. */
    @Test
    void columnsStandApart() {
        DesignText t = octagon()
                .remove("supply.cylinder")
                .remove("supply.count")
                .remove("supply.regulator")
                .setText("supply.pressure", "20 mbar");
        for (int i = 0; i < 2; i++) {
            t = t.setText("burners[" + i + "].fuel", "natural-gas")
                    .setText("burners[" + i + "].jet", "1.0 mm")
                    .setText("burners[" + i + "].pressure", "20 mbar");
        }
        String text = ForecastText.write(Review.of(t.read().design()));
        assertThat(text).contains("(1 1/4 to 1 5/16) ").doesNotContainPattern("\\)[0-9]");
        assertThat(text.lines()).allMatch(l -> l.length() <= 80);
    }
}
