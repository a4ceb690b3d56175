package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.PlanShape;
import portwright.model.UnitSystem;
import portwright.review.Review;

class OwnMeasuresTest {
    private final OwnMeasures m = new OwnMeasures(UnitSystem.INCH);

    private OwnMeasures.Ask ask(String path) {
        return m.asks().stream().filter(a -> a.path().equals(path)).findFirst().orElseThrow();
    }

    private String put(String path, String typed) {
        return m.put(ask(path), typed);
    }

    private void octagon() {
        assertThat(put("kiln.plan.sides", "8")).isNull();
        assertThat(put("kiln.plan.acrossFlats", "17 1/2 in")).isNull();
        rest();
    }

    private void rest() {
        assertThat(put("kiln.height", "460 mm")).isNull();
        assertThat(put("kiln.wall.thickness", "2 1/2 in")).isNull();
        assertThat(put("kiln.floor.thickness", "3")).isNull();
        assertThat(put("kiln.lid.thickness", "2 1/2 in")).isNull();
    }

    @Test
    void measuresStandInTheDesignAsTyped() {
        octagon();
        OwnMeasures.Made made = m.make(" shed kiln ");
        assertThat(made.wrong()).isEmpty();
        assertThat(made.text().get("title")).contains("shed kiln");
        assertThat(made.text().get("units")).contains("inch");
        assertThat(made.text().get("kiln.plan.acrossFlats")).contains("17 1/2 in");
        assertThat(made.text().get("kiln.height")).contains("460 mm");
        assertThat(made.text().get("kiln.floor.thickness")).contains("3 in");
        Design d = made.text().read().design();
        assertThat(d.ports()).isEmpty();
        assertThat(((PlanShape.PolygonPlan) d.kiln().plan()).sides()).isEqualTo(8);
    }

    @Test
    void whatIsNotTypedStaysUnknownAndNothingIsProven() {
        octagon();
        Design d = m.make("shed kiln").text().read().design();
        assertThat(d.kiln().elements()).isNull();
        assertThat(d.kiln().fittings()).isNull();
        assertThat(d.kiln().power()).isNull();
        assertThat(d.kiln().wall().brick()).isNull();
        assertThat(d.burners()).isNull();
        assertThat(d.room()).isNull();
        CheckResult r = new RuleBook(LimitTable.load()).check(Review.of(d));
        assertThat(r.stops(Forbids.DRILLING)).isZero();
        assertThat(r.notChecked()).anyMatch(n -> n.rule().equals("element-clearance"));
    }

    @Test
    void whatIsWrongIsSaidAtItsFieldAndGivesNoDesign() {
        octagon();
        assertThat(put("kiln.plan.acrossFlats", "17 inn")).contains("is no unit of length");
        assertThat(put("kiln.plan.sides", "3")).contains("4 to 64");
        assertThat(put("kiln.lid.thickness", "9 m")).contains("out of range");
        assertThat(put("kiln.power", "5")).contains("kW");
        OwnMeasures.Made made = m.make("shed kiln");
        assertThat(made.text()).isNull();
        assertThat(made.wrong())
                .containsOnlyKeys("kiln.plan.sides", "kiln.plan.acrossFlats", "kiln.lid.thickness", "kiln.power");
    }

    @Test
    void whatIsMissingIsAskedForWithAnExampleInTheChosenUnit() {
        assertThat(m.make("x").wrong())
                .containsOnlyKeys(
                        "kiln.plan.sides",
                        "kiln.plan.acrossFlats",
                        "kiln.height",
                        "kiln.wall.thickness",
                        "kiln.floor.thickness",
                        "kiln.lid.thickness")
                .hasEntrySatisfying("kiln.height", w -> assertThat(w).contains(" in"));
        m.units(UnitSystem.METRIC);
        assertThat(m.make("x").wrong().get("kiln.height")).contains(" mm").doesNotContain(" in.");
    }

    @Test
    void everyPlanMakesAKilnAndKeepsWhatWasTypedForAnother() {
        octagon();
        m.shape("rectangle");
        assertThat(m.make("x").wrong()).containsOnlyKeys("kiln.plan.width", "kiln.plan.depth");
        put("kiln.plan.width", "18 in");
        put("kiln.plan.depth", "20 in");
        assertThat(m.make("x").text().read().design().kiln().plan()).isInstanceOf(PlanShape.RectanglePlan.class);
        m.shape("oval");
        put("kiln.plan.sides", "9");
        put("kiln.plan.stretch", "9 in");
        assertThat(m.make("x").wrong().get("kiln.plan.sides")).contains("even number");
        put("kiln.plan.sides", "10");
        assertThat(m.make("x").text().read().design().kiln().plan()).isInstanceOf(PlanShape.OvalPlan.class);
        m.shape("polygon");
        assertThat(m.make("x").text().get("kiln.plan.acrossFlats")).contains("17 1/2 in");
        assertThat(m.make("x").text().has("kiln.plan.width")).isFalse();
    }
}
