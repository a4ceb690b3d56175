package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastText;
import portwright.sheet.CardForecast;

/** What a forecast must not leave unsaid. */
class ForecastSaysTest {
    private static String words(DesignText t) {
        return ForecastText.write(Review.of(t.read().design()));
    }

    private static DesignText decagon() {
        return Starters.find("decagon-23").orElseThrow();
    }

    /** Elements on a fixed share keep no rate; the controller does. */
    @Test
    void aFixedShareIsNamed() {
        assertThat(words(decagon().setText("firing.steps[2].elements", "70 %")))
                .contains("elements on 70 % throughout");
        assertThat(words(decagon())).doesNotContain("throughout");
    }

    /** Without a fire asked for and without the damper's opening nothing is known of air and CO. */
    @Test
    void anUnknownPlateGivesNoLambda() {
        DesignText t = decagon().remove("firing.steps[2].atmosphere").remove("firing.steps[3].atmosphere");
        if (t.get("damper.open").isPresent()) {
            t = t.remove("damper.open");
        }
        Review r = Review.of(t.read().design());
        assertThat(r.firing().rows(r.fire())).allSatisfy(row -> {
            assertThat(row.lambda()).isNull();
            assertThat(row.coHighPct()).isNull();
        });
        assertThat(ForecastText.write(r)).contains("add damper.open");
    }

    /** A quarter of an hour at the top of cone 8 is work enough for cone 9. */
    @Test
    void aHoldThatTakesAHarderConeDownIsNamed() {
        DesignText six = Starters.find("six-corner-55cm")
                .orElseThrow()
                .setText("firing.steps[3].to", "cone 8")
                .setText("firing.steps[4].hold", "15 min");
        String said = words(six).replaceAll("\\s+", " ");
        assertThat(said).contains("the hold of step 5 takes cone 9 down after the cone 8 that is asked for");
        assertThat(CardForecast.of(Review.of(six.read().design())).notes())
                .anyMatch(n -> n.contains("takes cone 9 down"));
        assertThat(words(six.setText("firing.steps[4].hold", "2 min"))).doesNotContain("takes cone");
    }

    /** Whole millimetres beside sixteenths where the design is in inches: 19 mm is 3/4 in, 21 mm 13/16 in. */
    @Test
    void aPlateInInchesStandsBesideMillimetres() {
        assertThat(words(decagon())).contains("plate, mm (in)", "19 (3/4)", "20 to 21 (13/16)");
        assertThat(words(Starters.find("hexagon-27cm").orElseThrow())).doesNotContain("(in)");
    }

    /** The rule of thumb knows two cases; under the smaller it says no more than that the kiln stops earlier. */
    @Test
    void theRuleOfThumbIsNotDrawnOut() {
        assertThat(words(decagon().setText("kiln.power", "3 kW")))
                .contains("lies below both")
                .doesNotContain("would stop near cone 8");
    }
}
