package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Relight;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastText;
import portwright.sheet.CardForecast;

/** What lighting again costs in degrees is what a step of the same open minutes loses. */
class RelightTest {
    private static Review review(DesignText d) {
        return Review.of(d.read().design());
    }

    @Test
    void itCostsWhatThoseMinutesCostInTheFiring() {
        DesignText d = Starters.find("hexagon-27cm").orElseThrow();
        Review r = review(d);
        Relight hot = Relight.hottest(r.firing().relights());
        OpenSpell open = review(d.remove("damper.open")
                        .set("firing.steps[3]", "{\"hold\": \"1 min\", \"heat\": \"none\", \"ports\": \"open\"}"))
                .firing()
                .forecast()
                .value()
                .nominal()
                .before(3)
                .orElseThrow();
        assertThat(hot.step()).isEqualTo(2);
        assertThat(hot.fromK() - hot.offK()).isCloseTo(open.fromK() - open.toK(), within(2.0));
        assertThat(hot.onK()).isGreaterThan(hot.offK());
        String off = Math.round(hot.fromK() - hot.offK()) + " °C lower";
        assertThat(ForecastText.write(r).replaceAll("\\s+", " "))
                .contains("to light again after a lost flame in step 3")
                .contains(off);
        assertThat(CardForecast.of(r).notes()).anyMatch(n -> n.contains(off));
    }

    @Test
    void theColdestIsHeldAgainstTheLightingLimit() {
        Review r = review(Starters.find("hexagon-27cm").orElseThrow());
        boolean over = Relight.coldest(r.firing().relights()).offK() - 273.15 >= 800;
        assertThat(ForecastText.write(r).replaceAll("\\s+", " ").contains("UNDER the 800 °C"))
                .isEqualTo(!over);
    }
}
