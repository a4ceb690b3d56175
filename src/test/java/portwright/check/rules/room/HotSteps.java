package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.check.rules.room.OneRule.celsius;
import static portwright.check.rules.room.OneRule.check;
import static portwright.check.rules.room.OneRule.plain;
import static portwright.check.rules.room.OneRule.three;
import static portwright.check.rules.room.OneRule.withSteps;

import java.util.ArrayList;
import java.util.List;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.model.Atmosphere;
import portwright.review.ColdSide;
import portwright.review.StepTime;

/** Steps with gas for the rules on heat: as the file has them, or with chambers placed by hand. */
final class HotSteps {
    static final String GAS =
            "{\"hold\":\"10 min\",\"heat\":\"both\",\"elements\":\"controller\",\"ports\":\"open\",\"atmosphere\":\"light\"}";
    static final String NO_DEVICE = " ; burners[0].flameSafety=false";

    static String electric(String to) {
        return "{\"to\":\"" + to
                + "\",\"rate\":\"100 °C/h\",\"heat\":\"electric\",\"elements\":\"controller\",\"ports\":\"plugged\"}";
    }

    static String steps(String... steps) {
        return "firing.steps=[" + String.join(",", steps) + "]";
    }

    static double error(double c) {
        return 0.0075 * c + 10;
    }

    static void measures(Finding f, Double measured, double limit) {
        if (measured == null) {
            assertThat(f.measured()).isNull();
        } else {
            assertThat(f.measured().value()).isCloseTo(measured, within(1e-6));
            assertThat(f.measured().unit()).isEqualTo("°C");
        }
        assertThat(f.limit().value()).isCloseTo(limit, within(1e-6));
        assertThat(f.limit().unit()).isEqualTo("°C");
    }

    /** What reads like its limit is told as just under it. */
    static String under(double c, double limit) {
        return (told(c).equals(told(limit)) ? "just under " : "") + told(c);
    }

    static String told(double c) {
        return three(c)
                + celsius(Math.round(c))
                        .replaceFirst("^\\d+", "")
                        .replaceAll("\\(.*", "(" + Math.round(c * 1.8 + 32) + " °F)");
    }

    static StepTime step(int index, boolean gas, double from, double to, ColdSide cold, ColdSide coldest) {
        return new StepTime(index, 600, 600, from, to, cold, coldest, false, gas, true, Atmosphere.LIGHT);
    }

    static ColdSide at(double lit, double start, double end, double lowest) {
        return new ColdSide(lit, start, end, lowest);
    }

    static ColdSide steady(double c) {
        return at(c, c, c, c);
    }

    static Findings placed(Rule rule, StepTime... steps) {
        List<StepTime> all = new ArrayList<>();
        all.add(step(0, false, 20, 900, steady(20), steady(20)));
        all.addAll(List.of(steps));
        return check(rule, withSteps(plain(steps(electric("900 °C"), GAS) + NO_DEVICE), all));
    }

    private HotSteps() {}
}
