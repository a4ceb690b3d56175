package portwright.check.rules.firing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.model.UnitSystem;
import portwright.report.CheckText;
import portwright.review.Review;

/** What a goal that is not reached is said to need, and what is said of the rules that turn on it. */
class FiringReachTest {
    private static final String GAS_ALONE =
            "[{\"to\": \"1250 °C\", \"rate\": \"full\", \"heat\": \"gas\", \"atmosphere\": \"neutral\"}]";

    private static CheckResult check(DesignText d) {
        return new RuleBook(LimitTable.load()).check(Review.of(d.read().design()));
    }

    private static DesignText weak() {
        return Starters.find("decagon-23").orElseThrow().setText("kiln.power", "6 kW");
    }

    private static Finding reach(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.rule().equals("firing-reach") && f.message().contains("reach"))
                .findFirst()
                .orElseThrow();
    }

    private static List<NotChecked> open(CheckResult r) {
        return r.notChecked().stream()
                .filter(n -> n.rule().equals("cylinder-lasts") || n.rule().equals("cylinder-boil-off"))
                .toList();
    }

    /** The goal stands in the file: nobody is told to add it. */
    @Test
    void theCauseIsTheGoalThatIsNotReached() {
        CheckResult r = check(weak());
        assertThat(open(r)).hasSize(2).allSatisfy(n -> {
            assertThat(n.needs()).containsExactly("firing.steps[3].cone");
            assertThat(n.words())
                    .contains("step 4 does not reach cone 10 (the climb ends near", "nobody knows how long gas burns")
                    .doesNotContain("add firing");
        });
        assertThat(CheckText.write(r, null, UnitSystem.METRIC, 90, false).replaceAll("\\s+", " "))
                .contains("cylinder-lasts (lighting): by the forecast step 4 does not reach cone 10")
                .doesNotContain("add firing.steps[3].cone");
        assertThat(check(Starters.find("decagon-23").orElseThrow().remove("supply.cylinder.fill"))
                        .notChecked())
                .anySatisfy(n -> assertThat(n.words()).isEqualTo("add supply.cylinder.fill"));
    }

    /** What is told was computed; the same change in the design then reaches the goal. */
    @Test
    void moreElementPowerIsToldAsMuchAsReaches() {
        String remedy = reach(check(weak())).remedy();
        assertThat(remedy).contains("elements of ").doesNotContain("Renew", "renew", "smaller load", "half the load");
        java.util.regex.Matcher m =
                java.util.regex.Pattern.compile("elements of ([0-9.]+) kW").matcher(remedy);
        assertThat(m.find()).isTrue();
        DesignText cured = weak().setText("kiln.power", m.group(1) + " kW");
        boolean reaches = Review.of(cured.read().design())
                .firing()
                .forecast()
                .value()
                .nominal()
                .reached();
        assertThat(reaches).isEqualTo(remedy.contains("alone reaches it") || remedy.contains("this reaches it"));
    }

    @Test
    void wornElementsAreRenewedNewOnesNot() {
        DesignText worn = Starters.find("decagon-23").orElseThrow().setText("kiln.elementRise", "100 %");
        assertThat(reach(check(worn)).remedy()).contains("renew the worn elements");
        assertThat(reach(check(weak())).remedy()).doesNotContain("renew");
    }

    @Test
    void withoutElementsNoneAreNamed() {
        DesignText none = weak().set("kiln.elements", "[]");
        assertThat(reach(check(none)).remedy()).contains("The kiln has no elements", "let gas burn");
        DesignText gas = none.remove("kiln.power").set("firing.steps", GAS_ALONE);
        assertThat(reach(check(gas)).remedy()).doesNotContain("lements");
    }

    /** Far more gas than the air burns: air helps, more gas never does. */
    @Test
    void aRichFireIsNotFedWithMoreGas() {
        DesignText rich = weak().setText("kiln.power", "7 kW")
                .remove("firing.steps[3].atmosphere")
                .setText("damper.open", "20 %")
                .setText("burners[0].pressure", "20 inH2O")
                .setText("burners[1].pressure", "20 inH2O");
        assertThat(reach(check(rich)).remedy())
                .contains("open in it for 20 %")
                .doesNotContain("more gas", "larger jet", "load");
    }

    /** A goal below the kiln with a share that stays on: the share is to blame, no power and no wall. */
    @Test
    void aStepThatCannotCoolNamesItsShare() {
        CheckResult r = check(
                Starters.find("decagon-23")
                        .orElseThrow()
                        .set(
                                "firing.steps",
                                "[{\"to\": \"900 °C\", \"rate\": \"full\", \"heat\": \"electric\"}, {\"to\": \"700 °C\", \"rate\": \"full\", \"heat\": \"electric\", \"elements\": \"80 %\"}]"));
        Finding f = r.findings().stream()
                .filter(x -> x.rule().equals("firing-reach") && x.message().startsWith("Step 2"))
                .findFirst()
                .orElseThrow();
        assertThat(f.message())
                .contains(
                        "Step 2 asks for 700 °C",
                        "the kiln is hotter, and at this share of the elements it will not fall");
        assertThat(f.remedy()).isEqualTo("Set the share of the elements to 0, or raise the goal.");
    }
}
