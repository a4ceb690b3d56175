package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.form.Catalog;
import portwright.form.FieldSpec;
import portwright.units.Kind;

/** While a field holds something unreadable its step shows it, the verdict stays open and no paper leaves. */
class UnreadTest {
    private final Document doc = Open.starter("octagon-17");
    private final FieldModel height = new FieldModel(doc, "kiln", FieldSpec.quantity("height", "height", Kind.LENGTH));

    private static FieldModel wallThickness(Document doc) {
        return new FieldModel(doc, "kiln.wall", FieldSpec.quantity("thickness", "thickness", Kind.LENGTH));
    }

    @Test
    void itsStepAndPaperShowIt() {
        List<Document.Change> heard = new ArrayList<>();
        doc.listen(heard::add);
        height.commit("18 kg");
        assertThat(heard).containsExactly(Document.Change.ENTRY);
        assertThat(FindingOrder.count(doc, Step.KILN).unread()).isEqualTo(1);
        assertThat(FindingOrder.count(doc, Step.KILN).words()).endsWith("1 field unreadable");
        assertThat(FindingOrder.count(doc, Step.PAPER).unread()).isEqualTo(1);
        assertThat(FindingOrder.count(doc, Step.GAS).unread()).isZero();
        assertThat(doc.unread().forbids())
                .startsWith("The field kiln height holds something that cannot be read")
                .contains("last good value");
        height.commit("18 in");
        assertThat(FindingOrder.count(doc, Step.KILN).unread()).isZero();
        assertThat(doc.unread().forbids()).isNull();
    }

    private static CheckResult result(int stops, int cautions) {
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < stops + cautions; i++) {
            all.add(new Finding(
                    "port-size",
                    i < stops ? Severity.STOP : Severity.CAUTION,
                    Forbids.NOTHING,
                    List.of(),
                    null,
                    null,
                    "",
                    "",
                    null,
                    false,
                    List.of()));
        }
        Verdict v = stops > 0 ? Verdict.STOP : cautions > 0 ? Verdict.CAUTION : Verdict.CLEAR;
        return new CheckResult("", v, v, all, List.of(), List.of(), null);
    }

    @Test
    void noVerdictIsBetterThanOpen() {
        VerdictWords good = VerdictWords.of(doc.result(), 0, "");
        assertThat(VerdictWords.of(doc.result(), 1, "").sign())
                .isEqualTo(good.sign() == Verdict.STOP ? Verdict.STOP : Verdict.INCOMPLETE);
    }

    @Test
    void theVerdictOfAnUnreadableFieldPermitsNothingAndKeepsItsCounts() {
        assertThat(VerdictWords.of(result(2, 1), 1, ""))
                .isEqualTo(new VerdictWords(Verdict.STOP, "2 stops, 1 field unreadable", "read the slip"));
        assertThat(VerdictWords.of(result(0, 3), 1, ""))
                .isEqualTo(new VerdictWords(
                        Verdict.INCOMPLETE,
                        "1 field unreadable, 3 cautions",
                        "not proven; nothing prints until it is mended"));
        assertThat(VerdictWords.of(result(0, 0), 2, ""))
                .isEqualTo(new VerdictWords(
                        Verdict.INCOMPLETE, "2 fields unreadable", "not proven; nothing prints until they are mended"));
    }

    /** Rules that forbid nothing may stay unchecked beside a whole verdict: the foot says so. */
    @Test
    void theVerdictNamesWhatIsNotChecked() {
        assertThat(VerdictWords.of(result(0, 8), 0, "3 not checked"))
                .isEqualTo(
                        new VerdictWords(Verdict.CAUTION, "8 cautions", "no stop, and 3 not checked: go on knowingly"));
        assertThat(VerdictWords.of(result(0, 0), 0, "1 not filled in"))
                .isEqualTo(new VerdictWords(Verdict.INCOMPLETE, "no stop", "1 not filled in"));
        assertThat(VerdictWords.of(result(0, 0), 0, "").sign()).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void noDrillingIsAllowedBesideAnUnreadableField() {
        Finding light = new Finding(
                "port-size", Severity.STOP, Forbids.LIGHTING, List.of(), null, null, "", "", null, false, List.of());
        CheckResult r = new CheckResult("", Verdict.CLEAR, Verdict.STOP, List.of(light), List.of(), List.of(), null);
        assertThat(VerdictWords.of(r, 0, "").forbids()).isEqualTo("do not light; drilling allowed");
        assertThat(VerdictWords.of(r, 1, "").forbids()).isEqualTo("do not light; drilling not proven");
    }

    @Test
    void aCorrectedFieldShowsWhatTheDesignTookWhileItsFormIsBuiltAnew() {
        FieldModel to =
                new FieldModel(doc, "firing.steps[4]", Catalog.stepFields().get(0));
        to.commit("10");
        assertThat(to.shown()).isEqualTo("10");
        List<String> built = new ArrayList<>();
        doc.listen(c -> {
            if (c == Document.Change.DESIGN) {
                built.add(new FieldModel(
                                doc, "firing.steps[4]", Catalog.stepFields().get(0))
                        .shown());
            }
        });
        assertThat(to.commit("cone 5")).isTrue();
        assertThat(built).containsExactly("cone 5");
        assertThat(to.error()).isNull();
        assertThat(doc.unread().forbids()).isNull();
    }

    @Test
    void anEntryGoesWhenItsFieldGetsAnotherGoodValueElsewhere() {
        assertThat(height.commit("18 1/4 in")).isTrue();
        height.commit("tall");
        doc.undo();
        assertThat(doc.unread().all()).isEmpty();
    }

    @Test
    void theEntryStaysWhenTheFormIsBuiltAnew() {
        wallThickness(doc).commit("2 1/2 inn");
        FieldModel again = wallThickness(doc);
        assertThat(again.shown()).isEqualTo("2 1/2 inn");
        assertThat(again.error()).isNotBlank();
        assertThat(doc.unread().at("kiln.wall.thickness").orElseThrow().field()).isEqualTo("wall thickness");
        doc.unread().settle("kiln.wall.thickness");
        assertThat(again.shown()).isEqualTo(again.good());
    }

    @Test
    void itFollowsItsPartAndGoesWithIt() {
        FieldModel second = new FieldModel(doc, "ports[1]", FieldSpec.quantity("diameter", "hole", Kind.LENGTH));
        String name = doc.text().get("ports[1].name").orElseThrow();
        second.commit("wide");
        doc.edit("delete", t -> Moves.delete(t, "ports[0]"));
        assertThat(doc.unread().all()).extracting(Unread.Entry::path).containsExactly("ports[0].diameter");
        assertThat(doc.unread().all()).extracting(Unread.Entry::field).containsExactly(name + " hole");
        assertThat(doc.unread().all().get(0).step()).isEqualTo(Step.PORTS);
        doc.edit("delete", t -> Moves.delete(t, "ports[0]"));
        assertThat(doc.unread().all()).isEmpty();
    }

    @Test
    void anotherDesignStartsWithoutAny() {
        height.commit("tall");
        doc.replace(doc.text(), doc.design(), false);
        assertThat(doc.unread().all()).isEmpty();
    }

    @Test
    void aBarThatCannotBeReadHoldsThePaperBack() {
        PaperModel model = new PaperModel(doc, PaperChoice.USUAL, Runnable::run);
        try {
            assertThat(model.measured(true, "100 kg")).isNotNull();
            assertThat(FindingOrder.count(doc, Step.PAPER).unread()).isEqualTo(1);
            assertThat(doc.unread().forbids()).contains("bar across");
            assertThat(model.measured(true, "100 mm")).isNull();
            assertThat(doc.unread().forbids()).isNull();
        } finally {
            model.close();
        }
    }
}
