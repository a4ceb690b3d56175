package portwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.model.UnitSystem;
import portwright.review.Review;
import portwright.sheet.CardBuilder;
import portwright.sheet.CardData;
import portwright.sheet.CardForecast;

/** What a check and a card tell of steps by electricity alone. */
class FiguresOfElectricTest {
    private static DesignText octagon() {
        return Starters.find("octagon-17").orElseThrow();
    }

    private static CheckResult check(Review r) {
        return new RuleBook(LimitTable.load()).check(r);
    }

    private static String text(CheckResult c) {
        return CheckText.write(c, null, UnitSystem.METRIC, 100, false);
    }

    /** No gas and no holes: no line tells of nothing. */
    @Test
    void nothingIsNoFigure() {
        Review r = Review.of(octagon()
                .remove("burners")
                .remove("supply")
                .remove("damper")
                .set("ports", "[]")
                .set("firing.steps", "[{\"to\": \"1000 °C\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"}]")
                .read()
                .design());
        assertThat(text(check(r)))
                .contains("chamber volume")
                .doesNotContain("inlet area", "flue area", "gas, net heat", "0 kg/h", "0 kW", "air before gas is lit");
    }

    /** Check and card tell one number of minutes, and what the draught needs of them. */
    @Test
    void oneNumberForTheAirBeforeGas() {
        Review r = Review.of(octagon().read().design());
        CheckResult c = check(r);
        long minutes = c.figures().openMinutes();
        assertThat(text(c).replaceAll(" +", " "))
                .contains("air before gas is lit " + minutes + " min, first or after a lost flame")
                .contains("of it five air changes ");
        assertThat(CardBuilder.of(c, r.design(), CardForecast.of(r)).flameOut().toString())
                .contains("Relight after " + minutes + " min");
    }

    /** A step that falls on a fixed share says so in its rate, and how fast the forecast has it fall. */
    @Test
    void aFallOnAShareOfTheElements() {
        String up = "{\"to\": \"1100 °C\", \"rate\": \"300 °C/h\", \"heat\": \"electric\"},";
        for (String rate : new String[] {"20 °C/h", "full"}) {
            Review r = Review.of(octagon()
                    .set(
                            "firing.steps",
                            "[" + up + "{\"to\": \"900 °C\", \"rate\": \"" + rate
                                    + "\", \"heat\": \"electric\", \"elements\": \"5 %\"}]")
                    .read()
                    .design());
            var steps = CardBuilder.of(check(r), r.design(), CardForecast.of(r)).steps();
            assertThat(steps).extracting(CardData.Step::rate).contains("5 %, falls");
            assertThat(steps)
                    .extracting(CardData.Step::across)
                    .anyMatch(w -> w.matches(
                            "Falls about \\d+ °C/h" + (rate.equals("full") ? "\\." : ", faster than asked\\.")));
            assertThat(ForecastText.write(r)).contains("elements on 5 % throughout: the fall follows, no rate is kept");
        }
    }

    /** The design's own hood is switched on before gas, and gas goes off when it stops; a kiln without one has no such line. */
    @Test
    void theCardKnowsTheHood() {
        for (String hood : new String[] {null, "{\"flow\": \"900 m3/h\"}"}) {
            DesignText t = octagon();
            Review r = Review.of(
                    (hood == null ? t : t.set("room.hood", hood)).read().design());
            CardData card = CardBuilder.of(check(r), r.design(), CardForecast.of(r));
            assertThat(card.lighting().toString().contains(", hood on, kiln shut"))
                    .isEqualTo(hood != null);
            assertThat(card.alarm().contains("Exhaust stops: gas off first.")).isEqualTo(hood != null);
        }
    }

    /** What type K does is not said of a kiln with type S alone; the words of the table are those that are looked for. */
    @Test
    void theCardKnowsTheProbes() {
        for (String type : new String[] {"K", "S"}) {
            Review r = Review.of(octagon()
                    .set(
                            "kiln.fittings",
                            "[{\"name\": \"probe\", \"kind\": \"thermocouple\", \"type\": \"" + type
                                    + "\", \"on\": \"wall\", \"panel\": 2, \"at\": [\"0 in\", \"5 in\"], \"diameter\": \"1/2 in\"}]")
                    .read()
                    .design());
            assertThat(CardBuilder.of(check(r), r.design(), CardForecast.of(r)).cautions())
                    .extracting(CardData.Caution::words)
                    .contains(type.equals("K") ? "Type K reads low: trust cones." : "Probes drift low: trust cones.");
        }
    }
}
