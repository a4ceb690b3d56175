package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.file.DesignText;
import portwright.geometry.Hole;
import portwright.geometry.Pt;

/** Undo goes back byte for byte, redo goes forth, with names. */
class UndoTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void twoHundredRandomEditsGoBackByteForByte(long seed) {
        Random r = new Random(seed);
        Document doc = Open.starter("decagon-23");
        String start = doc.text().toText();
        List<String> states = new ArrayList<>(List.of(start));
        int taken = 0;
        for (int i = 0; taken < 200 && i < 2000; i++) {
            int before = doc.undoStack().size();
            edit(doc, r);
            if (doc.undoStack().size() > before) {
                taken++;
                states.add(doc.text().toText());
            }
        }
        assertThat(taken).isEqualTo(200);
        for (int i = states.size() - 2; i >= 0; i--) {
            assertThat(doc.undoStack().undoName()).isNotBlank();
            assertThat(doc.undo()).isTrue();
            assertThat(doc.text().toText()).isEqualTo(states.get(i));
        }
        assertThat(doc.undo()).isFalse();
        assertThat(doc.text().toText()).isEqualTo(start);
        for (int i = 1; i < states.size(); i++) {
            assertThat(doc.redo()).isTrue();
            assertThat(doc.text().toText()).isEqualTo(states.get(i));
        }
        assertThat(doc.redo()).isFalse();
    }

    @Test
    void aPartThatUndoTakesAwayIsNoLongerChosen() {
        Document doc = Open.starter("hexagon-27cm");
        doc.edit("add", t -> Moves.addPort(t, "flue", "lid", 0, new Pt(50, 0), "second"));
        doc.select("second");
        doc.undo();
        assertThat(doc.selected()).isNull();
    }

    private static void edit(Document doc, Random r) {
        List<Hole> holes = doc.shapes().geometry().holes();
        int kind = r.nextInt(7);
        if (holes.isEmpty() || kind == 0) {
            String name = Templates.free(doc.text(), "inlet");
            Pt at = new Pt(r.nextInt(160) - 80, r.nextInt(160) - 80);
            doc.edit("add " + name, t -> Moves.addPort(t, "inlet", "floor", 0, at, name));
            return;
        }
        Hole h = holes.get(r.nextInt(holes.size()));
        String path = Parts.path(doc.text(), h.name());
        switch (kind) {
            case 1 -> doc.edit("move", t -> Moves.to(t, path, new Pt(r.nextInt(200) - 100, r.nextInt(200) - 100)));
            case 2 -> doc.edit("nudge", t -> Moves.by(t, path, h.centre(), 25.4 / 16, 0));
            case 3 -> doc.edit("size", t -> t.setText(path + ".diameter", 20 + r.nextInt(40) + " mm"));
            case 4 -> {
                if (holes.size() > 3) {
                    doc.edit("delete", t -> Moves.delete(t, path));
                }
            }
            case 5 ->
                doc.edit(
                        "mirror",
                        t -> Moves.copy(
                                t,
                                path,
                                Templates.free(t, "inlet"),
                                new Pt(-h.centre().x(), h.centre().y())));
            default -> doc.edit("title", t -> t.setText("title", "kiln " + r.nextInt(1000)));
        }
    }

    @org.junit.jupiter.api.Test
    void arrowKeysInARowAreOneStep() {
        Document doc = Open.starter("octagon-17");
        DesignText start = doc.text();
        for (int i = 0; i < 5; i++) {
            Hole h = doc.shapes().geometry().holes().get(0);
            doc.edit("nudge " + h.name(), "nudge ports[0]", t -> Moves.by(t, "ports[0]", h.centre(), 1, 0));
        }
        assertThat(doc.undoStack().size()).isEqualTo(1);
        String port = doc.design().ports().get(0).name();
        assertThat(doc.undoStack().undoName()).isEqualTo("5 nudges of " + port);
        doc.undo();
        assertThat(doc.undoStack().redoName()).isEqualTo("5 nudges of " + port);
        assertThat(doc.text().toText()).isEqualTo(start.toText());
    }
}
