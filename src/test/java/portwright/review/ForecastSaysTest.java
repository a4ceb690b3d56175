package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastText;

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

    /** The rule of thumb knows two cases; under the smaller it says no more than that the kiln stops earlier. */
    @Test
    void theRuleOfThumbIsNotDrawnOut() {
        assertThat(words(decagon().setText("kiln.power", "3 kW")))
                .contains("lies below both")
                .doesNotContain("would stop near cone 8");
    }
}
