package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import portwright.data.NumberDrill;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastText;

/** A cure that is told can be bought and set; a cone that falls in slow heat is explained. */
class FeasibleCuresTest {
    private static DesignText starter(String name) {
        return Starters.find(name).orElseThrow();
    }

    /** Jets are sizes of the drill table; a pressure never over what the regulator gives: 30 mbar × 1.25² = 47 mbar passes 37. */
    @Test
    void otherGasIsAJetOfTheSeries() {
        GasCures c = new GasCures(starter("hexagon-27cm").read().design());
        for (double share : c.shares(new double[] {0.7, 0.8, 0.9, 1.1, 1.25, 1.4})) {
            String words = c.words(share);
            Matcher m =
                    Pattern.compile("jets #([0-9]+), ([0-9.]+) mm, for 0.55 mm").matcher(words);
            assertThat(m.find()).as(words).isTrue();
            double mm = NumberDrill.of(Integer.parseInt(m.group(1))).diameterMm();
            assertThat(mm * mm / (0.55 * 0.55)).isCloseTo(share, org.assertj.core.api.Assertions.within(1e-6));
            assertThat(words.contains("mbar")).as(words).isEqualTo(30 * share * share <= 37);
        }
    }

    /** Gas is opened nowhere under what the card asks for lighting. */
    @Test
    void gasIsNotOpenedTooCold() {
        DesignText weak =
                starter("hexagon-27cm").setText("kiln.power", "1.9 kW").setText("firing.steps[0].to", "830 °C");
        for (ReachCures.Cure c : ReachCures.of(Review.of(weak.read().design()))) {
            Matcher m = Pattern.compile("gas opened at ([0-9]+) °C").matcher(c.words());
            if (m.find()) {
                assertThat(Integer.parseInt(m.group(1))).isBetween(800, 959);
            }
        }
    }

    /** The hexagon with 2.3 kW: electricity ends at 1164 °C, and cone 7, 1239 °C at 60 °C/h, still falls; the text says why. */
    @Test
    void aConeOverTheEndOfTheClimbIsExplained() {
        DesignText slow = starter("hexagon-27cm").setText("firing.steps[2].to", "cone 7");
        String text = ForecastText.write(Review.of(slow.read().design())).replaceAll("\\s+", " ");
        assertThat(text)
                .contains("By electricity alone cone 7 falls on the way there, at ", "long heat works like more heat");
    }
}
