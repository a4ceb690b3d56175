package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.HoursBand;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.StepResult;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.CostWords;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;

/** What the forecast says of bands, of firings that do not finish, of minutes that no step holds; and that a terminal holds it. */
class ForecastWordsTest {
    private static final String PRICES = "{\"currency\": \"GBP\", \"perKwh\": 0.24, \"perKg\": 2.1}";

    private static DesignText practice() {
        try {
            return DesignFile.read(Path.of("src/test/resources/designs/common-practice-190-litres.json"))
                    .document()
                    .set("firing.prices", PRICES);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Half the elements to the end: the climb ends at some 1140 °C (see the firing of common practice). */
    private static DesignText stalls() {
        return practice().setText("firing.steps[4].elements", "50 %");
    }

    private static Review review(DesignText d) {
        return Review.of(d.read().design());
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** A band holds the middle, whichever brick is quicker: a kiln that cools by itself is slower with better brick. */
    @ParameterizedTest
    @CsvSource({"9 kW, 85 %", "11.5 kW, 85 %", "11.5 kW, 60 %", "11.5 kW, 50 %", "13 kW, 100 %"})
    void theBandHoldsTheMiddleOrHasNoUpperEnd(String power, String share) {
        Forecast f = review(practice()
                        .setText("kiln.power", power)
                        .setText("firing.steps[4].elements", share)
                        .append(
                                "firing.steps",
                                "{\"to\": \"900 °C\", \"rate\": \"full\", \"heat\": \"none\", \"ports\": \"plugged\"}"))
                .firing()
                .forecast()
                .value();
        HoursBand h = f.hours();
        boolean all = f.nominal().reached() && f.quick().reached() && f.slow().reached();
        assertThat(h.open()).isEqualTo(!all);
        assertThat(h.nominal()).isEqualTo(f.nominal().reached());
        if (h.nominal()) {
            assertThat(f.nominal().endS()).isBetween(h.leastS(), h.mostS());
        }
    }

    /** What is given up when the climb ends has no price and is compared with nothing; the other side is told for itself. */
    @Test
    void aStalledFiringHasNoPrice() throws IOException {
        Review review = review(stalls());
        assertThat(review.firing().forecast().value().nominal().reached()).isFalse();
        String text = flat(ForecastText.write(review));
        assertThat(text)
                .contains("NOT REACHED: the climb ends at 1143 °C, before cone 10")
                .contains("NOT FINISHED: step 5")
                .containsPattern(
                        "given up at 1143 °C \\(\\d+ °F\\), no price; [0-9.]+ kWh, [0-9.]+ kg \\([0-9.]+ lb\\) of gas used; of it [^.]*[0-9.]+ kWh and [0-9.]+ kg \\([0-9.]+ lb\\) in the 15 min between steps, plate off all electric")
                .contains("reaches the goal with")
                .contains("not compared")
                .contains("at least 16.5 h, and no upper end")
                .doesNotContain("reduction costs")
                .doesNotContain("(not reached)");
        assertThat(ForecastText.line(review)).startsWith("NOT FINISHED").contains("1143 °C");
        JsonNode j = new ObjectMapper().readTree(ForecastJson.write(review));
        for (String total : List.of("hours", "hoursHigh", "electricKwh", "gasKg", "cost")) {
            assertThat(j.get(total).isNull()).as(total).isTrue();
        }
        assertThat(j.get("givenUp").get("hours").asDouble()).isGreaterThan(15);
        assertThat(j.get("allElectric").get("compared").asBoolean()).isFalse();
        for (JsonNode t : j.get("trade")) {
            assertThat(t.get("computed").isNull())
                    .isEqualTo(!t.get("unit").asText().equals("W/in2"));
        }
    }

    /** Electricity that does not get there is not a price to compare with either. */
    @Test
    void electricityThatStallsIsNotCompared() {
        DesignText d = practice().setText("kiln.power", "8 kW").setText("firing.steps[4].atmosphere", "light");
        for (int i = 2; i < 5; i++) {
            d = d.setText("firing.steps[" + i + "].elements", "100 %");
        }
        Review review = review(d);
        assertThat(review.firing().forecast().value().nominal().reached()).isTrue();
        assertThat(review.firing().allElectric().value().run().reached()).isFalse();
        assertThat(CostWords.besideElectric(review.firing()).get(1).value())
                .contains("does not get there")
                .contains("not compared")
                .doesNotContain("GBP");
    }

    /** Money by hand: (kWh − kWh) × 0.24 + kg × 2.1. */
    @Test
    void aFinishedFiringIsCompared() throws IOException {
        Review review = review(practice());
        JsonNode j = new ObjectMapper().readTree(ForecastJson.write(review));
        double more = (j.get("electricKwh").asDouble()
                                - j.get("allElectric").get("electricKwh").asDouble())
                        * 0.24
                + j.get("gasKg").asDouble() * 2.1;
        assertThat(flat(ForecastText.write(review)))
                .contains(String.format(java.util.Locale.ROOT, "reduction costs %.2f GBP more", more));
    }

    /** Ten minutes open before lighting cost what the same ten minutes cost as a step of the firing. */
    @Test
    void openMinutesCostWhatAStepOfThemWould() {
        DesignText d = practice();
        OpenSpell said =
                review(d).firing().forecast().value().nominal().openSpells().get(0);
        assertThat(said.lighting()).isTrue();
        assertThat(said.step()).isEqualTo(2);
        StepResult step = review(d.insert(
                        "firing.steps[2]", "{\"hold\": \"10 min\", \"heat\": \"electric\", \"ports\": \"open\"}"))
                .firing()
                .forecast()
                .value()
                .nominal()
                .steps()
                .get(2);
        assertThat(said.electricJ()).isCloseTo(step.electricJ(), within(0.01 * step.electricJ()));
        assertThat(said.fromK() - said.toK()).isCloseTo(step.startK() - step.endK(), within(0.5));
        assertThat(said.lostJ() / 600).as("kilowatts, as open ports cost").isBetween(2000.0, 6000.0);
        assertThat(flat(ForecastText.write(review(d))))
                .contains("10 min with ports open and plate off before lighting step 3 lose");
    }

    @Test
    void aTerminalOf80ColumnsHoldsIt() {
        for (String starter : Starters.names()) {
            assertThat(ForecastText.write(review(Starters.find(starter).orElseThrow()))
                            .lines())
                    .as(starter)
                    .allMatch(l -> l.length() <= 80);
        }
        assertThat(ForecastText.write(review(stalls())).lines()).allMatch(l -> l.length() <= 80);
    }
}
