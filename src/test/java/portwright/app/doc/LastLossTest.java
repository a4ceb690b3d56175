package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.form.Catalog;
import portwright.form.FieldSpec;

/** What an edit takes out of the design unasked is named, with the way back. */
class LastLossTest {
    private final Document doc = Open.starter("octagon-17");

    private FieldModel step(int i, String key) {
        FieldSpec spec = Catalog.stepFields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
        return new FieldModel(doc, "firing.steps[" + i + "]", spec);
    }

    private LastLoss loss() {
        return LastLoss.of(doc.undoStack()).orElse(null);
    }

    @Test
    void aStepThatBecomesAHoldSaysWhichGoalAndRateWent() {
        assertThat(step(4, "to").commit("cone 5")).isTrue();
        assertThat(step(4, "rate").commit("61 °C/h")).isTrue();
        assertThat(loss()).isNull();
        String before = doc.text().toText();
        assertThat(step(4, "hold").commit("1 h")).isTrue();
        assertThat(doc.text().has("firing.steps[4].to")).isFalse();
        assertThat(loss().head()).startsWith("step 5 lost ").contains("goal cone 5", "rate 61 °C/h");
        assertThat(loss().words()).contains("may end lower");
        doc.undo();
        assertThat(doc.text().toText()).isEqualTo(before);
        assertThat(loss()).isNull();
    }

    @Test
    void aHoldThatBecomesARiseSaysSoToo() {
        step(4, "hold").commit("1 h");
        step(4, "to").commit("cone 5");
        assertThat(loss().head()).isEqualTo("step 5 lost hold 1 h");
    }

    @Test
    void aDeletionIsNamedAndAValueTakenAwayOnPurposeIsNot() {
        String name = doc.text().get("ports[0].name").orElseThrow();
        doc.edit("delete " + name, t -> Moves.delete(t, "ports[0]"));
        assertThat(loss().head()).isEqualTo("Deleted " + name);
        assertThat(doc.text().has("firing.steps[0].heat")).isTrue();
        assertThat(step(0, "heat").commit("")).isTrue();
        assertThat(loss()).isNull();
    }

    @Test
    void anotherPlanTellsThatPostsAndLegsStandWhereTheyWere() {
        Document doc = Open.starter("octagon-17");
        String leg = "[{\"name\": \"leg 1\", \"kind\": \"leg\", \"on\": \"floor\", \"at\": [\"0 in\", \"-7 in\"],"
                + " \"diameter\": \"1 in\"}]";
        doc.edit("leg", t -> t.set("shelves", "[]").set("kiln.fittings", leg));
        doc.edit("across flats 20 in", t -> t.setText("kiln.plan.acrossFlats", "20 in"));
        LastLoss said = LastLoss.of(doc.undoStack()).orElseThrow();
        assertThat(said.head()).isEqualTo("Legs stand where they were");
        assertThat(said.words()).contains("1 leg.");
        doc.edit("delete leg 1", t -> t.remove(Parts.path(t, "leg 1")));
        doc.edit("across flats 21 in", t -> t.setText("kiln.plan.acrossFlats", "21 in"));
        assertThat(LastLoss.of(doc.undoStack())).isEmpty();
    }
}
