package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.OpenSpell;
import portwright.file.Starters;
import portwright.report.ForecastText;

/** What is told of one firing in two places is one number. */
class OneNumberTest {
    private static String number(String text, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        assertThat(m.find()).as("%s in %s", pattern, text).isTrue();
        return m.group(1);
    }

    /** Elements too weak for the goal: the end of the climb beside the firing by electricity alone, and that of the firing itself. */
    @Test
    void whereTheClimbEnds() {
        Review r = Review.of(Starters.find("octagon-17")
                .orElseThrow()
                .setText("kiln.power", "3.5 kW")
                .read()
                .design());
        String text = ForecastText.write(r).replaceAll("\\s+", " ");
        assertThat(number(text, "climb ends at (\\d+) °C(?: \\([^)]*\\))? by electricity alone"))
                .isEqualTo(number(text, "all electric does not get there: the climb ends at (\\d+) °C"));
        assertThat(number(text, "with ports plugged, (\\d+) °C(?: \\([^)]*\\))? with gas as the steps ask"))
                .isEqualTo(number(text, "NOT REACHED: the climb ends at (\\d+) °C"));
    }

    /** The fire is judged where the step begins, after the clean fire; whether gas may be lit where it is lit. */
    @Test
    void whereAStepWithGasBegins() {
        Review r = Review.of(Starters.find("octagon-17")
                .orElseThrow()
                .setText("kiln.power", "3.5 kW")
                .read()
                .design());
        var run = r.firing().forecast().value().nominal();
        OpenSpell lit = run.openSpells().get(0);
        assertThat(lit.endK() - lit.toK()).isGreaterThan(1);
        double begun = run.steps().get(lit.step()).startK();
        assertThat(r.fire().settings().get(0).kelvin()).isEqualTo(begun, within(0.01));
        assertThat(r.fire().gasOn().orElseThrow()).isEqualTo(lit.toK(), within(0.01));
    }
}
