package portwright.check.rules.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.review.Review;

/** What the rules on the firing tell, and where they begin to tell it. */
class FiringSaidTest {
    private static DesignText kiln(String... steps) {
        DesignText d = Starters.find("decagon-23").orElseThrow();
        return steps.length == 0 ? d : d.set("firing.steps", "[" + String.join(",", steps) + "]");
    }

    private static String electric(String to) {
        return "{\"to\": \"" + to + "\", \"rate\": \"60 °C/h\", \"heat\": \"electric\"}";
    }

    private static String both(String to, String elements, String atmosphere) {
        return "{\"to\": \"" + to + "\", \"rate\": \"full\", \"heat\": \"both\", \"elements\": \"" + elements
                + "\", \"ports\": \"open\"" + (atmosphere == null ? "" : ", \"atmosphere\": \"" + atmosphere + "\"")
                + "}";
    }

    private static Findings check(Rule rule, DesignText text) {
        Design d = text.read().design();
        Findings out = new Findings();
        rule.check(Review.of(d), new LimitsInForce(LimitTable.load(), d), out);
        return out;
    }

    private static Finding only(Rule rule, DesignText text) {
        List<Finding> f = check(rule, text).findings();
        assertThat(f).hasSize(1);
        return f.get(0);
    }

    private static DesignText reducing(String to, String elements) {
        return kiln(electric("900 °C"), both(to, elements, "light")).setText("kiln.power", "14 kW");
    }

    /** Wire about 100 °C over the chamber and the alloy's table, as the limits' sources give them. */
    @ParameterizedTest
    @CsvSource({"1050 °C, , ", "1051 °C, 1051, 1050", "1150 °C, 1150, 1050", "1151 °C, 1151, 1150"})
    void elementsInReducingGas(String to, Double measured, Double limit) {
        List<Finding> all = check(new ElementAtmosphere(), reducing(to, "60 %")).findings();
        assertThat(all).hasSize(measured == null ? 0 : 1);
        for (Finding f : all) {
            assertThat(f.severity()).isEqualTo(Severity.CAUTION);
            assertThat(f.bearsOn(Forbids.LIGHTING)).isTrue();
            assertThat(f.parts()).containsExactly("step 2");
            assertThat(f.measured().value()).isCloseTo(measured, within(1e-9));
            assertThat(f.limit().value()).isCloseTo(limit, within(1e-9));
            assertThat(f.message())
                    .startsWith("Step 2 reduces with the elements on up to " + to + " (")
                    .contains(
                            limit > 1100
                                    ? "over 1150 °C (2102 °F) no alloy table"
                                    : "over 1050 °C (1922 °F) the oxide film");
        }
    }

    /** Elements left on a share take just that share all through the step. */
    @ParameterizedTest
    @CsvSource({"60 %, at most 60 % of their power", "89 %, at most 89 % of their power", "95 %, all their power"})
    void whatCanBeTakenOffTheElements(String share, String said) {
        assertThat(only(new ElementAtmosphere(), reducing("1060 °C", share)).remedy())
                .contains("the climb there takes " + said);
    }

    @Test
    void nothingIsTakenOffWhereTheClimbFallsShortOrIsNotKnown() {
        assertThat(only(
                                new ElementAtmosphere(),
                                kiln(electric("900 °C"), both("1350 °C", "10 %", "light"))
                                        .setText("kiln.power", "6 kW"))
                        .remedy())
                .contains("takes all their power");
        assertThat(only(new ElementAtmosphere(), reducing("1060 °C", "60 %").remove("kiln.wall.brick"))
                        .remedy())
                .endsWith("lower the element share near the top as far as the climb allows.");
    }

    @Test
    void airAndElementsOffWearNothingThere() {
        for (String step :
                List.of(both("1200 °C", "60 %", "oxidizing"), both("1200 °C", "0 %", "light"), electric("1200 °C"))) {
            assertThat(check(new ElementAtmosphere(), kiln(electric("900 °C"), step))
                            .findings())
                    .as(step)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"element-atmosphere", "firing-reach", "brick-heat"})
    void withoutStepsNothingIsClaimed(String rule) {
        Rule r = switch (rule) {
            case "brick-heat" -> new BrickHeat();
            case "firing-reach" -> new FiringReach();
            default -> new ElementAtmosphere();
        };
        Findings out = check(r, kiln().remove("firing.steps"));
        assertThat(out.findings()).isEmpty();
        assertThat(out.notChecked()).singleElement().satisfies(n -> {
            assertThat(n.rule()).isEqualTo(rule);
            assertThat(n.needs()).containsExactly("firing.steps");
        });
    }

    /**
     * Ten sides 22 3/4 in apart, 27 in high: perimeter 22.75 in × 10 tan 18°, floor and lid a quarter of perimeter times width each.
     * The trade's 3.1 W on a square inch stops near cone 8 (figures' source); in thick walls the heat balance says otherwise.
     */
    @Test
    void theTradeAndTheBalanceDisagree() {
        double perimeter = 22.75 * 10 * Math.tan(Math.toRadians(18));
        double in2 = perimeter * 27 + 2 * perimeter * 22.75 / 4;
        DesignText thick = kiln(electric("cone 10"))
                .setText("kiln.power", "8.7 kW")
                .setText("kiln.wall.thickness", "7 in")
                .setText("kiln.floor.thickness", "7 in")
                .setText("kiln.lid.thickness", "7 in");
        Finding f = only(new FiringReach(), thick);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.measured().value()).isCloseTo(8700 / in2, within(1e-6));
        assertThat(f.limit().value()).isEqualTo(3.1);
        assertThat(f.message())
                .contains("3.1 W for each square inch inside stops near cone 8", "alone reaches cone 10.");
    }

    /** Reached as tabled, missed where the brick conducts more; missed either way; reached either way. */
    @Test
    void reachedAsTabledOnly() {
        DesignText d = kiln(electric("600 °C"), electric("1200 °C"));
        Finding may = only(new FiringReach(), d.setText("kiln.power", "9 kW"));
        assertThat(may.parts()).containsExactly("step 2");
        assertThat(may.measured().value()).isBetween(1100.0, 1199.0);
        assertThat(may.message())
                .startsWith("Step 2 may not reach 1200 °C: the climb ends near "
                        + Math.round(may.measured().value()) + " °C (")
                .endsWith(" where the brick conducts 20 % more than tabled.");
        assertThat(may.remedy()).startsWith("Tried in the forecast, each of these alone reaches it: ");
        Finding no = only(new FiringReach(), d.setText("kiln.power", "6 kW"));
        assertThat(no.message()).startsWith("Step 2 does not reach 1200 °C: ").endsWith("°F).");
        assertThat(no.measured().value()).isLessThan(may.measured().value());
        assertThat(check(new FiringReach(), d.setText("kiln.power", "12 kW")).findings())
                .isEmpty();
    }

    /** Heat work is not undone: a softer cone after a harder one is down before its step begins. */
    @Test
    void aConeThatIsDownAlreadyIsTold() {
        Finding f = only(
                new FiringReach(), kiln(electric("cone 6"), electric("cone 04")).setText("kiln.power", "14 kW"));
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.parts()).containsExactly("step 2");
        assertThat(f.message()).startsWith("Step 2 asks for cone 04, which is down already");
        assertThat(check(
                                new FiringReach(),
                                kiln(electric("cone 04"), electric("cone 6")).setText("kiln.power", "14 kW"))
                        .findings())
                .isEmpty();
    }

    /** Where nothing reaches the goal alone, each thing is told with what it gains, the most first. */
    @Test
    void whatGainsMostIsToldFirst() {
        String remedy = only(new FiringReach(), kiln(electric("1350 °C")).setText("kiln.power", "3 kW"))
                .remedy();
        assertThat(remedy)
                .startsWith("Nothing that was tried in the forecast reaches it alone. Most is gained by ")
                .endsWith("Take several together, or ask for a lower goal.");
        List<Integer> gains = Pattern.compile("\\((\\d+) °C")
                .matcher(remedy)
                .results()
                .map(m -> Integer.valueOf(m.group(1)))
                .toList();
        assertThat(gains).hasSizeGreaterThan(1).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(gains.get(gains.size() - 1)).isGreaterThanOrEqualTo(10);
    }

    /** Class of group 23 and K over it as the limits give them; a goal of the second step, parts of one brick together. */
    @Test
    void brickOverItsClass() {
        double fails = new LimitsInForce(LimitTable.load(), kiln().read().design()).value("brick-heat", "fails");
        DesignText d = kiln(electric("600 °C"), electric("1250 °C")).setText("kiln.lid.brick", "ifb-28");
        Finding by = only(new BrickHeat(), d);
        assertThat(by.parts()).containsExactly("step 2", "floor", "wall");
        assertThat(by.limit().value()).isCloseTo(1230, within(1e-9));
        assertThat(by.message()).startsWith("Step 2 goes to 1250 °C").contains("floor, wall of ifb-23 have class 1230");
        assertThat(by.remedy()).startsWith("Keep holds at the top short").endsWith("above 1250 °C (2282 °F).");
        Finding far = only(
                new BrickHeat(),
                kiln(electric("600 °C"), electric(Math.round(1231 + fails) + " °C"))
                        .setText("kiln.lid.brick", "ifb-30")
                        .setText("kiln.wall.brick", "ifb-30"));
        assertThat(far.parts()).containsExactly("step 2", "floor");
        assertThat(far.limit().value()).isCloseTo(1230 + fails, within(1e-9));
        assertThat(far.remedy()).startsWith("Ask for a lower goal");
    }
}
