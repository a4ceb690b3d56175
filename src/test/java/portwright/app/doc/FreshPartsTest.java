package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.CheckResult;
import portwright.check.NotChecked;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.form.Catalog;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.model.On;
import portwright.review.Review;

/** Parts that were just added are not measured, and one fitting is not all of them. */
class FreshPartsTest {
    private static final String LEG =
            "[{\"name\": \"leg\", \"kind\": \"leg\", \"on\": \"floor\", \"at\": [\"5 in\", \"5 in\"], \"diameter\": \"1 in\"}]";

    private final Document doc = Open.starter("octagon-17");

    private static CheckResult check(DesignText t) {
        return new RuleBook(LimitTable.load()).check(Review.of(t.read().design()));
    }

    private static List<String> asks(DesignText t, String field) {
        return check(t).notChecked().stream()
                .filter(n -> n.needs().contains(field))
                .map(NotChecked::rule)
                .toList();
    }

    private static List<String> notes(DesignText t) {
        return check(t).findings().stream()
                .map(f -> f.message())
                .filter(m -> m.contains("is that all?"))
                .toList();
    }

    /** Common practice, no source: the burners of one kiln are alike, so are its legs. */
    @Test
    void oneMoreBurnerOrLegIsLikeTheFirst() {
        DesignText two = doc.text();
        int n = two.size("burners");
        DesignText more = Templates.append(two, Catalog.burners(), "burners");
        String made = "burners[" + n + "]";
        for (String key : List.of("fuel", "jet", "pressure", "head", "tip")) {
            assertThat(more.get(made + "." + key)).as(key).isEqualTo(two.get("burners[0]." + key));
        }
        assertThat(more.get(made + ".name")).isNotEqualTo(two.get("burners[0].name"));
        DesignText alone = two.remove("burners[" + (n - 1) + "]");
        String free = two.get("burners[" + (n - 1) + "].port").orElseThrow();
        assertThat(Templates.append(alone, Catalog.burners(), "burners").get("burners[" + (n - 1) + "].port"))
                .as("the inlet without a burner")
                .contains(free);
        DesignText leg = two.set("kiln.fittings", LEG);
        DesignText legs = Templates.ofKind(
                Templates.append(leg, KilnCatalog.fittings(), "kiln.fittings"), "kiln.fittings[1]", "leg");
        assertThat(legs.get("kiln.fittings[1].diameter")).contains("1 in");
        assertThat(legs.has("kiln.fittings[1].at")).isFalse();
    }

    @Test
    void oneLegIsNotTheWholeList() {
        DesignText none = doc.text().remove("kiln.fittings").remove("kiln.fittingsComplete");
        DesignText one = Templates.append(none, KilnCatalog.fittings(), "kiln.fittings");
        assertThat(one.get("kiln.fittingsComplete")).contains("false");
        DesignText leg = one.set("kiln.fittings", LEG);
        assertThat(asks(leg, "kiln.fittingsComplete"))
                .contains("fitting-clearance", "weakest-section", "near-flame", "vent-fan", "burner-room");
        assertThat(check(leg).drilling()).isEqualTo(Verdict.INCOMPLETE);
        assertThat(notes(leg))
                .singleElement()
                .asString()
                .startsWith("1 fitting is listed; is that all? Not among them:")
                .contains("hinge", "vent", "control-box")
                .doesNotContain("leg");
        DesignText all = leg.set("kiln.fittingsComplete", "true");
        assertThat(asks(all, "kiln.fittingsComplete")).isEmpty();
        assertThat(notes(all)).isEmpty();
    }

    /** A file from before the field was there keeps its verdicts; a note asks. */
    @Test
    void aListOfWhichNothingIsSaidStandsWithANote() {
        DesignText silent = doc.text().remove("kiln.fittingsComplete");
        assertThat(check(silent).drilling()).isEqualTo(check(doc.text()).drilling());
        assertThat(check(silent).lighting()).isEqualTo(check(doc.text()).lighting());
        assertThat(notes(silent)).hasSize(1);
        assertThat(notes(silent.set("kiln.fittings", "[]"))).isEmpty();
    }

    @Test
    void aFreshFittingWaitsForItsPlace() {
        doc.edit("leg", t -> Templates.append(t, KilnCatalog.fittings(), "kiln.fittings"));
        String at = "kiln.fittings[" + (doc.text().size("kiln.fittings") - 1) + "]";
        assertThat(doc.text().has(at + ".at")).isFalse();
        assertThat(asks(doc.text(), at + ".at")).contains("fitting-clearance", "burner-room");
        assertThat(UnderField.of(doc, at, spec("at")).get()).startsWith("Not measured yet");
        FieldModel place = new PlaceModel(doc, at + ".at", false).fields().get(0);
        assertThat(place.commit("3 in")).isFalse();
        assertThat(place.commit("3 in left, 4 back")).isTrue();
        assertThat(doc.text().get(at + ".at[0]")).contains("-3 in");
        assertThat(doc.text().get(at + ".at[1]")).contains("4 in");
        assertThat(new PlaceModel(doc, at + ".at", false).fields()).hasSize(2);
        assertThat(UnderField.of(doc, at, spec("at")).get())
                .as("its size is missing still")
                .contains("until its diameter, or its width and depth, is typed");
        assertThat(asks(doc.text(), at + ".diameter")).contains("fitting-clearance");
        doc.edit("size", t -> t.setText(at + ".diameter", "1 in"));
        assertThat(UnderField.of(doc, at, spec("at")).get()).isEmpty();
    }

    private static FieldSpec spec(String key) {
        return KilnCatalog.fittings().fields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anElementWithoutAHeightIsAskedForIt() {
        doc.edit("none", t -> t.set("kiln.elements", "[]"));
        doc.edit("first", t -> Templates.append(t, KilnCatalog.elements(), "kiln.elements"));
        assertThat(asks(doc.text(), "kiln.elements[0].height")).contains("element-clearance");
    }

    /** An element that is put into floor or lid has no place until its points are typed; it stays among what is missing. */
    @ParameterizedTest
    @ValueSource(strings = {"floor", "lid"})
    void anElementPutIntoASlabHasNoPlaceYet(String on) {
        int n = doc.text().size("kiln.elements");
        String at = "kiln.elements[" + n + "]";
        assertThat(n).isPositive();
        doc.edit("next", t -> Templates.append(t, KilnCatalog.elements(), "kiln.elements"));
        FieldSpec in = KilnCatalog.elements().fields().get(1);
        assertThat(new FieldModel(doc, at, in).commit(on)).isTrue();
        assertThat(doc.text().has(at + ".path")).isFalse();
        assertThat(doc.text().has(at + ".groove")).isFalse();
        assertThat(doc.shapes().geometry().grooves())
                .noneMatch(g -> g.face().on() == On.valueOf(on.toUpperCase(Locale.ROOT)));
        assertThat(asks(doc.text(), at + ".path")).contains("element-clearance");
        assertThat(check(doc.text()).drilling()).isNotEqualTo(Verdict.CLEAR);
        FieldSpec path = KilnCatalog.elements().fields().get(4);
        assertThat(UnderField.of(doc, at, path).get()).startsWith("Not measured yet");
        assertThat(new FieldModel(doc, at, path).commit("-2 in, 0 in\n2 in, 0 in"))
                .isTrue();
        assertThat(UnderField.of(doc, at, path).get()).isEmpty();
        assertThat(asks(doc.text(), at + ".groove")).contains("element-clearance");
    }

    @Test
    void freshTailsAreAskedForPlaceAndHole() {
        String at = "kiln.elements[0].tails";
        FormSpec tails = KilnCatalog.elements().inner().get(1);
        doc.edit("tails", t -> t.set(at, Templates.fill(t, tails)));
        assertThat(doc.text().size(at)).isZero();
        assertThat(doc.shapes().geometry().tails()).noneMatch(t -> t.element().equals("E1"));
        FieldSpec place = tails.fields().get(1);
        assertThat(UnderField.of(doc, at, place).get()).startsWith("Not measured yet");
        for (String field : List.of(".panel", ".at", ".diameter")) {
            assertThat(asks(doc.text(), at + field)).as(field).contains("element-clearance");
            doc.edit("typed", t -> switch (field) {
                case ".panel" -> t.set(at + field, "1");
                case ".at" -> t.set(at + field, "[\"1 in\", \"3 in\"]");
                default -> t.setText(at + field, "1/2 in");
            });
        }
        assertThat(UnderField.of(doc, at, place).get()).isEmpty();
        assertThat(asks(doc.text(), at + ".diameter")).isEmpty();
    }

    @Test
    void aFreshShelfIsAskedForItsSizeAndHeight() {
        doc.edit("none", t -> t.set("shelves", "[]"));
        int known = doc.shapes().geometry().shelves().size();
        doc.edit("shelf", t -> Templates.append(t, KilnCatalog.shelves(), "shelves"));
        assertThat(doc.shapes().geometry().shelves()).hasSize(known);
        FieldSpec place = KilnCatalog.shelves().fields().stream()
                .filter(f -> f.key().equals("at"))
                .findFirst()
                .orElseThrow();
        assertThat(UnderField.of(doc, "shelves[0]", place).get()).startsWith("Not measured yet");
        assertThat(asks(doc.text(), "shelves[0].height")).isNotEmpty();
        doc.edit("high", t -> t.setText("shelves[0].height", "3 in"));
        assertThat(asks(doc.text(), "shelves[0].diameter")).isNotEmpty();
        FieldSpec shape = KilnCatalog.shelves().fields().get(1);
        assertThat(new FieldModel(doc, "shelves[0]", shape).commit("polygon")).isTrue();
        assertThat(doc.text().has("shelves[0].acrossFlats")).isFalse();
        assertThat(asks(doc.text(), "shelves[0].sides")).isNotEmpty();
        assertThat(new FieldModel(doc, "shelves[0]", shape).commit("round")).isTrue();
        doc.edit("wide", t -> t.setText("shelves[0].diameter", "10 in"));
        assertThat(UnderField.of(doc, "shelves[0]", place).get()).isEmpty();
        assertThat(doc.shapes().geometry().shelves()).hasSize(1);
    }

    @Test
    void aCopiedElementLiesOneSpacingAboveTheHighest() {
        String last = "kiln.elements[" + (doc.text().size("kiln.elements") - 1) + "]";
        double top = doc.design()
                .kiln()
                .elements()
                .get(doc.text().size("kiln.elements") - 1)
                .height()
                .mm();
        double below = doc.design()
                .kiln()
                .elements()
                .get(doc.text().size("kiln.elements") - 2)
                .height()
                .mm();
        doc.edit("room", t -> t.setText("kiln.height", "24 in"));
        assertThat(Copies.refusal(doc.text(), last, true)).isEmpty();
        DesignText t = Copies.element(doc.text(), last, "next");
        var made = t.read().design().kiln().elements().get(t.size("kiln.elements") - 1);
        assertThat(made.height().mm()).isCloseTo(2 * top - below, org.assertj.core.data.Offset.offset(0.05));
        assertThat(made.tails()).isNull();
        assertThat(made.coil()).isNotNull();
    }

    @ParameterizedTest
    @CsvSource({
        "shelves[0],true,Use Add in its list.",
        "shelves[0],false,can be mirrored.",
        "kiln.elements[0],false,An element is not mirrored.",
        ",true,Choose a part first"
    })
    void whatCannotBeDoubledSaysWhy(String path, boolean twice, String words) {
        assertThat(Copies.refusal(doc.text(), path, twice)).contains(words).doesNotContain("duplicated.d");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "[{\"name\": \"E1\", \"on\": \"wall\", \"height\": \"3 in\"}]"})
    void withoutTwoHeightsTheNextIsNotKnown(String elements) {
        DesignText t = doc.text().set("kiln.elements", elements);
        assertThat(Templates.above(t)).isEmpty();
    }

    /** No figure that nobody measured stands in a fresh part as if it were measured. */
    @Test
    void freshPlateJointsAndDrillingAreEmpty() {
        for (String json : List.of(
                Catalog.damper().template(),
                Catalog.damper().inner().get(0).template(),
                Catalog.drilling().template(),
                KilnCatalog.slab("floor").inner().get(0).template())) {
            assertThat(json).isEqualTo("{}");
        }
        DesignText t = doc.text()
                .set("kiln.floor.joints", "{}")
                .set("damper", "{\"plate\": {}}")
                .set("drilling", "{}");
        assertThat(t.read().ok()).isTrue();
        assertThat(asks(t, "damper.plate.width")).isNotEmpty();
        assertThat(check(t).notChecked())
                .anyMatch(n -> n.needs().stream().anyMatch(x -> x.startsWith("kiln.floor.joints")));
    }

    /** A fitting is added as one of a kind that was asked for first. */
    @ParameterizedTest
    @CsvSource({"leg, floor, leg A", "hinge, lid, hinge A", "control-box, wall, control box A"})
    void aFittingHasTheKindThatWasChosen(String kind, String on, String name) {
        int n = doc.text().size("kiln.fittings");
        String at = "kiln.fittings[" + n + "]";
        DesignText t =
                Templates.ofKind(Templates.append(doc.text(), KilnCatalog.fittings(), "kiln.fittings"), at, kind);
        assertThat(t.read().ok()).isTrue();
        assertThat(t.get(at + ".kind")).contains(kind);
        assertThat(t.get(at + ".on")).contains(on);
        assertThat(t.get(at + ".name")).contains(name);
    }
}
