package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.form.Catalog;
import portwright.form.FieldNames;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;
import portwright.model.UnitSystem;
import portwright.units.Kind;
import portwright.units.Quantity;

/** A number alone gets the unit of the window in the field; the file always holds a unit. */
class ShortFormsTest {
    private DesignText text = Starters.find("octagon-17").orElseThrow();

    private static Stream<FieldSpec> fields(FormSpec form) {
        return Stream.concat(form.fields().stream(), form.inner().stream().flatMap(ShortFormsTest::fields));
    }

    /** What the file then holds. */
    private String typed(String units, FormSpec form, String base, String key, String words) {
        FieldSpec spec =
                fields(form).filter(f -> f.key().equals(key)).findFirst().orElseThrow();
        return typed(units, spec, base, words);
    }

    private String typed(String units, FieldSpec spec, String base, String words) {
        text = text.setText("units", units);
        String path = base + "." + spec.key();
        DesignText next = FieldCodec.put(text, spec, path, ShortForms.full(text, spec, path, words));
        return next.read().ok() ? FieldCodec.show(next, spec, path) : "refused";
    }

    @ParameterizedTest
    @CsvSource({
        "inch, 1 1/2, 1 1/2 in",
        "inch, 1.375, 1.375 in",
        "inch, 35 mm, 35 mm",
        "inch, 1-1/2, 1-1/2 in",
        "metric, 38, 38 mm",
        "metric, 38.5, 38.5 mm",
        "metric, 1 1/2, refused",
    })
    void lengthsTakeTheUnitOfTheWindow(String units, String words, String file) {
        assertThat(typed(units, Catalog.ports(), "ports[0]", "diameter", words)).isEqualTo(file);
    }

    @ParameterizedTest
    @CsvSource({
        "inch, ceiling, 9, 9 ft",
        "metric, ceiling, 2.8, 2.8 m",
        "inch, ceiling, none, none",
        "inch, altitude, 1200, 1200 ft",
        "metric, altitude, 400, 400 m",
        "inch, temperature, 70, 70 °F",
        "metric, temperature, 21, 21 °C",
        "inch, ledOutdoors, 60, 60 %",
        "inch, ledOutdoors, 0.6, refused",
        "inch, volume, 2000, refused",
        "metric, ventilator, 900, refused",
    })
    void roomsAreMeasuredInFeetAndWhatMayMeanTwoThingsIsRefused(String units, String key, String words, String file) {
        text = text.remove("room." + key);
        assertThat(typed(units, Catalog.room(), "room", key, words)).isEqualTo(file);
    }

    @ParameterizedTest
    @CsvSource({
        "inch, 1000 °F, 1900, 1900 °F",
        "metric, 900 °C, 1000, 1000 °C",
        "inch, 900 °C, 1900, refused",
        "metric, 1650 °F, 1000, refused",
        "inch, cone 8, 2300, 2300 °F",
        "metric, 900 °C, 10, refused",
        "metric, 900 °C, cone 10, cone 10",
    })
    void aGoalIsNeverTakenInTheOtherScaleNorACone(String units, String before, String words, String file) {
        text = text.setText("firing.steps[4].to", before).setText("firing.steps[4].rate", "full");
        assertThat(typed(units, Catalog.firing(), "firing.steps[4]", "to", words))
                .isEqualTo(file);
    }

    @ParameterizedTest
    @CsvSource({
        "at[0], 3 in left, -3 in",
        "at[0], left 3 in, -3 in",
        "at[0], right 3, 3 in",
        "at[0], 2 1/2 Left, -2 1/2 in",
        "at[1], 3 in front, -3 in",
        "at[1], back 3 in, 3 in",
        "at[1], 3 in left, refused",
        "at[0], -3 left, refused",
    })
    void sidesAreSigns(String key, String words, String file) {
        text = text.set("ports[0].at", "[\"0 in\", \"0 in\"]");
        assertThat(typed("inch", FieldSpec.quantity(key, "x", Kind.LENGTH), "ports[0]", words))
                .isEqualTo(file);
    }

    @Test
    void placesOfPostsGetUnitsLineByLine() {
        assertThat(typed("inch", KilnCatalog.shelves(), "shelves[0]", "posts", "4, 2 1/2\nr 5, 90\n3 in, 60 mm"))
                .isEqualTo("4 in, 2 1/2 in\nr 5 in, 90 deg\n3 in, 60 mm");
    }

    @Test
    void theFieldShowsTheUnitItAdds() {
        Document doc = Open.starter("octagon-17");
        FieldModel hole = new FieldModel(doc, "ports[0]", FieldSpec.quantity("diameter", "hole", Kind.LENGTH));
        assertThat(hole.aside("1 1/2")).isEqualTo("38.1 mm");
        assertThat(hole.commit("1 1/2")).isTrue();
        assertThat(hole.shown()).isEqualTo("1 1/2 in");
        assertThat(doc.undoStack().undoName()).endsWith("hole 1 1/2 in");
    }

    static List<FormSpec> forms() {
        return FieldNames.FORMS;
    }

    /** A hint is a text that the field takes, in either system. */
    @ParameterizedTest
    @MethodSource("forms")
    void everyExampleIsAQuantityOfItsKind(FormSpec form) {
        for (UnitSystem u : UnitSystem.values()) {
            DesignText in = text.setText("units", u.id());
            fields(form).filter(f -> f.type() == FieldSpec.Type.QUANTITY).forEach(f -> {
                String hint = Templates.inSystem(in, f.hint());
                assertThat(hint).as(f.key()).startsWith("e.g. ");
                assertThat(Quantity.parse(hint.substring(5), f.kind()).kind()).isEqualTo(f.kind());
            });
        }
    }

    /** Arithmetic: 4 × 5 × 2.5 = 50, 13 × 16 × 8 = 1664, 240 V × 37 A = 8.88 kW. */
    @ParameterizedTest
    @CsvSource({
        "volume, 4 x 5 x 2.5 m, 50 m3",
        "volume, 4m × 5m × 2.5m, 50 m3",
        "volume, 13 x 16 x 8 ft, 1664 ft3",
        "volume, 4 m x 5 ft x 2 m, 4 m x 5 ft x 2 m",
        "volume, 60 m3, 60 m3",
        "power, 240 V 8.9 kW, 8.9 kW",
        "power, '8.9 kW, 240V', 8.9 kW",
        "power, 240 V 37 A, 8.88 kW",
        "power, 4.8 kW, 4.8 kW"
    })
    void whatPeopleKnowIsWorkedOut(String field, String words, String taken) {
        assertThat(Products.of(field.equals("volume") ? Kind.VOLUME : Kind.POWER, words))
                .isEqualTo(taken);
    }

    @Test
    void moreThanAWholeTurnIsRefused() {
        Document doc = Open.starter("octagon-17");
        FieldModel turn = new FieldModel(doc, "kiln.plan", FieldSpec.quantity("turn", "turn", Kind.ANGLE));
        assertThat(turn.commit("9999 deg")).isFalse();
        assertThat(turn.error()).contains("more than a whole turn", "-360 to 360 deg");
        assertThat(turn.commit("-361")).isFalse();
        assertThat(turn.commit("360 deg")).isTrue();
        assertThat(turn.error()).isNull();
        FieldModel volume = new FieldModel(doc, "room", FieldSpec.quantity("volume", "volume", Kind.VOLUME));
        assertThat(volume.commit("4 x 5 m")).isFalse();
        assertThat(volume.error()).contains("4 x 5 x 2.5 m");
    }
}
