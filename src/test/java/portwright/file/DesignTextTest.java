package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import portwright.units.Format;

/** Editing a document: what is touched changes, nothing else does. */
class DesignTextTest {
    private static DesignText octagon() {
        return Starters.find("octagon-17").orElseThrow();
    }

    @Test
    void setsAValueAndKeepsTheRest() {
        DesignText before = octagon();
        DesignText after = before.setText("ports[1].at[0]", "3 in");
        assertThat(after.get("ports[1].at[0]")).contains("3 in");
        assertThat(before.get("ports[1].at[0]")).contains("-7/32 in");
        assertThat(after.toText())
                .isEqualTo(before.toText().replaceFirst("(?s)(\"inlet back\".*?\"at\": \\[\")-7/32 in", "$13 in"));
        assertThat(after.setText("ports[1].at[0]", "-7/32 in")).isEqualTo(before);
    }

    @Test
    void makesMissingObjectsOnTheWay() {
        DesignText d = octagon()
                .remove("damper")
                .setText("damper.plate.width", "4 in")
                .set("limits", "{}")
                .setText("limits[\"element-clearance\"]", "30 mm");
        assertThat(d.getJson("damper"))
                .contains("{\"plate\": {\"width\": \"4 in\"}}"
                        .replace("{\"plate\"", "{\n  \"plate\"")
                        .replace("}}", "}\n}"));
        assertThat(d.read()
                        .design()
                        .limits()
                        .get("element-clearance")
                        .get("limit")
                        .value())
                .isEqualTo(30);
        assertThat(d.fields("").subList(0, 3)).isEqualTo(octagon().fields("").subList(0, 3));
    }

    @Test
    void insertsAppendsRemovesAndRenames() {
        DesignText d = octagon();
        String port =
                "{\"name\": \"spare\", \"role\": \"flue\", \"on\": \"lid\", \"at\": [\"3 in\", \"0 in\"], \"diameter\": \"1 in\"}";
        DesignText more = d.insert("ports[0]", port);
        assertThat(more.size("ports")).isEqualTo(4);
        assertThat(more.get("ports[0].name")).contains("spare");
        assertThat(more.remove("ports[0]")).isEqualTo(d);
        assertThat(d.append("ports", port).get("ports[3].name")).contains("spare");
        assertThat(d.remove("no.such[3].field")).isSameAs(d);
        assertThat(d.remove("shelves").append("shelves", "{}").size("shelves")).isEqualTo(1);
    }

    @Test
    void refusesWhatHasNoPlace() {
        DesignText d = octagon();
        assertThatThrownBy(() -> d.setText("ports[9].name", "x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> d.setText("title.text", "x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> d.insert("ports", "{}")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> d.set("title", "not json")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> d.get("ports[")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void keepsNumbersAndTextsAsTyped() {
        String odd =
                "{\"portwright\": 1.0e0, \"title\": \"caf\\u00e9 \\/ \\\"x\\\"\", \"n\": [-0, 0.10, 1E3, \"\\ud83d\\ude00\", true, null, {}, []]}\n";
        DesignText d = DesignText.read(odd).document();
        assertThat(d.toText()).contains("1.0e0", "\"caf\\u00e9 \\/ \\\"x\\\"\"", "-0, 0.10, 1E3, \"\\ud83d\\ude00\"");
        assertThat(DesignText.read(d.toText()).document().toText()).isEqualTo(d.toText());
        assertThat(d.get("title")).contains("café / \"x\"");
    }

    @Test
    void textsOfEveryCharacterSurvive() {
        StringBuilder all = new StringBuilder();
        for (int c = 0; c < 0x2100; c++) {
            all.append((char) c);
        }
        all.append("\ud83d\ude00").append('\ud83d');
        DesignText d = octagon().setText("notes", all.toString());
        assertThat(DesignText.read(d.toText()).document().get("notes")).contains(all.toString());
    }

    @Test
    void anEditedDocumentTellsTheLinesOfItsText() {
        DesignText d = octagon().setText("kiln.height", "18 hands");
        Problem p = d.read().problems().get(0);
        assertThat(d.toText().lines().toList().get(p.line() - 1)).contains("18 hands");
        assertThat(p.path()).isEqualTo("kiln.height");
    }

    @Test
    void thousandsOfStepsShareWhatTheyDoNotTouch() {
        long seed = 7;
        Random random = new Random(seed);
        List<DesignText> undo = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        DesignText d = octagon();
        for (int i = 0; i < 5000; i++) {
            undo.add(d);
            if (i % 500 == 0) {
                texts.add(d.toText());
            }
            d = d.setText(
                    "ports[" + random.nextInt(3) + "].at[" + random.nextInt(2) + "]",
                    Format.plain(random.nextDouble() * 5, 3) + " in");
        }
        for (int i = 0; i < texts.size(); i++) {
            assertThat(undo.get(i * 500).toText())
                    .as("seed %d step %d", seed, i * 500)
                    .isEqualTo(texts.get(i));
        }
    }
}
