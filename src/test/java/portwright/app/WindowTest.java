package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javafx.event.EventType;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.board.Board;
import portwright.app.doc.Document;
import portwright.app.doc.FieldModel;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Parts;
import portwright.app.doc.Picture;
import portwright.app.doc.Recovery;
import portwright.app.doc.Step;
import portwright.app.frame.MainView;
import portwright.app.frame.Shell;
import portwright.app.part.FieldBox;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.form.Catalog;
import portwright.form.FieldSpec;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.sheet.Paper;
import portwright.sheet.SheetBook;
import portwright.sheet.SheetOptions;
import portwright.sheet.SheetRefused;

/** The window as a hand uses it, in the real toolkit. */
class WindowTest {
    private static final int HAND_EDITS = 25;

    @TempDir
    Path folder;

    private Document doc;
    private MainView view;
    private Shell shell;
    private Stage stage;
    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(folder.resolve("home"), 1180, 720);
            doc = open.doc();
            view = open.view();
            stage = open.stage();
            shell = open.shell();
        });
        Toolkit.run(() -> {
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
            board().redraw();
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> {
            open.close();
        });
    }

    private Board board() {
        return view.board();
    }

    private void mouse(EventType<MouseEvent> type, Pt p, boolean alt) {
        Mouse.send(board(), type, p.x(), p.y(), alt);
    }

    private void drag(Pt from, Pt to) {
        mouse(MouseEvent.MOUSE_PRESSED, from, false);
        for (int i = 1; i <= 8; i++) {
            mouse(
                    MouseEvent.MOUSE_DRAGGED,
                    new Pt(from.x() + (to.x() - from.x()) * i / 8, from.y() + (to.y() - from.y()) * i / 8),
                    true);
        }
        mouse(MouseEvent.MOUSE_RELEASED, to, true);
    }

    private void key(KeyCode code, boolean shift, boolean control) {
        var target = stage.getScene().getFocusOwner() == null
                ? view
                : stage.getScene().getFocusOwner();
        target.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false));
    }

    @Test
    void everyStarterOpensOnEveryStepAndView() {
        for (String name : Starters.names()) {
            Toolkit.run(() -> {
                shell.files().starter(name, "");
                for (Step s : Step.values()) {
                    view.go(s);
                    view.layout();
                }
                view.go(Step.PORTS);
                for (Picture p : Picture.values()) {
                    board().show(p);
                }
                assertThat(doc.text().get("title")).contains(Starters.title(name));
            });
        }
    }

    @Test
    void draggingAPortIntoAnElementStopsAndTheTemplateRefuses() {
        Toolkit.run(() -> {
            doc.edit(
                    "test element",
                    t -> t.set(
                            "kiln.elements",
                            "[{\"name\": \"EF\", \"on\": \"floor\", \"path\": [[\"-60 mm\", \"-120 mm\"], [\"60 mm\", \"-120 mm\"]], \"groove\": {\"width\": \"16 mm\", \"depth\": \"19 mm\"}, \"coil\": \"12 mm\"}]"));
            view.layout();
            board().show(Picture.FLOOR_HOT);
            board().redraw();
        });
        int steps = doc.undoStack().size();
        Toolkit.run(() -> {
            Hole h = doc.shapes().geometry().holes().get(0);
            drag(board().canvasPoint(h.face(), h.centre()), board().canvasPoint(h.face(), new Pt(0, -105)));
            assertThat(doc.result().findings())
                    .anyMatch(f -> f.rule().equals("element-clearance")
                            && f.severity() == Severity.STOP
                            && f.parts().contains("EF"));
            assertThat(doc.undoStack().size()).isEqualTo(steps + 1);
            assertThat(doc.undoStack().undoName()).isEqualTo("move " + h.name());
        });
        Toolkit.until(() -> !doc.checking());
        assertThat(doc.result().stops(Forbids.DRILLING)).isPositive();
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> SheetBook.print(
                        doc.result(), doc.shapes().geometry(), "x", SheetOptions.plain(Paper.parse("a4"))))
                .isInstanceOf(SheetRefused.class);
        Toolkit.run(() -> key(KeyCode.Z, false, true));
        Toolkit.until(() -> !doc.checking());
        assertThat(doc.result().findings())
                .noneMatch(f -> f.rule().equals("element-clearance") && f.severity() == Severity.STOP);
    }

    @Test
    void escapePutsADraggedPortBack() {
        Toolkit.run(() -> {
            Hole h = doc.shapes().geometry().holes().get(0);
            String before = doc.text().toText();
            Pt at = board().canvasPoint(h.face(), h.centre());
            mouse(MouseEvent.MOUSE_PRESSED, at, false);
            mouse(MouseEvent.MOUSE_DRAGGED, new Pt(at.x() + 30, at.y()), true);
            assertThat(doc.text().toText()).isNotEqualTo(before);
            board().press("escape");
            assertThat(doc.text().toText()).isEqualTo(before);
            assertThat(doc.undoStack().size()).isZero();
        });
    }

    @Test
    void typingIntoTheTicketTakesUnitsAndExplainsWrongOnes() {
        Toolkit.run(() -> {
            doc.select(doc.design().ports().get(0).name());
            view.layout();
            FieldBox hole = view.lookupAll(".text-field").stream()
                    .map(n -> n.getParent())
                    .map(WindowTest::box)
                    .filter(b -> b != null && b.model().path().equals("ports[0].diameter"))
                    .findFirst()
                    .orElseThrow();
            for (String typed : new String[] {"1 3/8 in", "1 1/4", "35 mm"}) {
                ((TextField) hole.control(false)).setText(typed);
                hole.take();
                String full = typed.endsWith("m") || typed.endsWith("in") ? typed : typed + " in";
                assertThat(doc.text().get("ports[0].diameter")).contains(full);
                assertThat(((TextField) hole.control(false)).getText()).isEqualTo(full);
            }
            for (String wrong : new String[] {"35 kg", "1 3/8 inn"}) {
                ((TextField) hole.control(false)).setText(wrong);
                hole.take();
                assertThat(doc.text().get("ports[0].diameter")).contains("35 mm");
                assertThat(hole.model().error()).contains("Write");
                assertThat(hole.lookupAll(".wrong")).isNotEmpty();
            }
        });
    }

    @Test
    void renamingAFittingKeepsItsFormOpenAndTheKeysWhereTheyAre() {
        Toolkit.run(() -> {
            view.go(Step.KILN);
            doc.edit(
                    "fittings",
                    t -> t.set(
                            "kiln.fittings",
                            "[{\"name\": \"hinge\", \"kind\": \"hinge\", \"on\": \"wall\", \"panel\": 1, \"at\": [\"0 mm\", \"300 mm\"], \"diameter\": \"40 mm\"},"
                                    + " {\"name\": \"leg\", \"kind\": \"leg\", \"on\": \"floor\", \"at\": [\"0 mm\", \"-150 mm\"], \"diameter\": \"40 mm\"}]"));
            doc.select("leg");
            doc.select("hinge");
            FieldBox name = shown("kiln.fittings[0].name");
            FieldBox next = shown("kiln.fittings[1].diameter");
            next.control(true);
            ((TextField) name.control(false)).setText("back hinge");
            name.take();
            assertThat(stage.getScene().getFocusOwner()).isSameAs(next.control(false));
            ((TextField) next.control(false)).setText("50 mm");
            next.take();
            assertThat(doc.text().get("kiln.fittings[1].diameter")).contains("50 mm");
            assertThat(doc.text().get("kiln.fittings[0].name")).contains("back hinge");
            assertThat(shown("kiln.fittings[0].name")).isSameAs(name);
            assertThat(doc.selected()).isEqualTo("back hinge");
            assertThat(view.lookupAll(".group-toggle").stream().map(n -> ((Button) n).getText()))
                    .contains("▾ back hinge", "▾ leg");
        });
    }

    private FieldBox shown(String path) {
        view.applyCss();
        view.layout();
        return view.lookupAll(".text-field").stream()
                .map(WindowTest::box)
                .filter(b -> b != null && b.model().path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static FieldBox box(javafx.scene.Node n) {
        for (javafx.scene.Node x = n; x != null; x = x.getParent()) {
            if (x instanceof FieldBox b) {
                return b;
            }
        }
        return null;
    }

    @Test
    void keysNudgeDuplicateMirrorAndDelete() {
        Toolkit.run(() -> {
            String name = doc.design().ports().get(0).name();
            doc.select(name);
            board().requestFocus();
            double x = doc.shapes().geometry().holes().get(0).centre().x();
            board().fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.RIGHT, false, false, false, false));
            assertThat(doc.shapes().geometry().holes().get(0).centre().x()).isGreaterThan(x);
            int n = doc.design().ports().size();
            board().press("mirror");
            assertThat(doc.design().ports()).hasSize(n + 1);
            board().press("delete");
            assertThat(doc.design().ports()).hasSize(n);
            board().press("new");
            assertThat(doc.design().ports()).hasSize(n + 1);
            board().press("turn");
            assertThat(board().picture()).isEqualTo(Picture.FLOOR_COLD);
        });
    }

    @Test
    void savedFilesReopenAsTheyWere() {
        Path file = folder.resolve("kiln.json");
        Toolkit.run(() -> {
            doc.edit("title", t -> t.setText("title", "Saved kiln"));
            assertThat(doc.unsaved()).isTrue();
            assertThat(shell.files().saveTo(file)).isTrue();
            assertThat(doc.unsaved()).isFalse();
            String text = doc.text().toText();
            assertThat(shell.files().open(file)).isTrue();
            assertThat(doc.text().toText()).isEqualTo(text);
            assertThat(shell.home().recent()).contains(file);
        });
    }

    @Test
    void aBrokenFileShowsItsReportAndNotAnEmptyWindow() throws Exception {
        Path file = folder.resolve("broken.json");
        Files.writeString(file, "{\n  \"portwright\": 1,\n  \"title\": \"x\",\n  \"kiln\": {\"height\": \"18\"},\n}\n");
        Toolkit.run(() -> {
            assertThat(shell.files().open(file)).isFalse();
            assertThat(shell.showsReport()).isTrue();
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
            assertThat(stage.getScene().getRoot().lookupAll(".broken-line")).isNotEmpty();
        });
    }

    private static Optional<Path> kept(HomeFolder home) throws IOException {
        Path folder = home.root().resolve("recovery");
        if (!Files.exists(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(p -> p.toString().endsWith(".design")).findFirst();
        }
    }

    @Test
    void unsavedWorkIsKeptAndOfferedAfterACrash() {
        HomeFolder home = shell.home();
        AtomicReference<String> text = new AtomicReference<>();
        Toolkit.run(() -> {
            doc.edit("title", t -> t.setText("title", "not saved"));
            text.set(doc.text().toText());
        });
        Toolkit.until(() -> kept(home).isPresent());
        assertThat(new Recovery(home, "other").left()).as("this program lives").isEmpty();
        Toolkit.run(() -> {
            try {
                Path mine = kept(home).orElseThrow();
                Files.move(mine, mine.resolveSibling("999999999-w.design"));
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            shell.files().offerLeftWork();
            assertThat(view.messages().getChildren()).isNotEmpty();
            assertThat(new Recovery(home, "other").left().get(0).text().toText())
                    .isEqualTo(text.get());
        });
    }

    @Test
    void aLogLetGoOverTheWindowLiesOverTheForecast() throws Exception {
        StringBuilder log = new StringBuilder("time h,temp °C\nno time,40\n");
        for (int i = 0; i <= 60; i++) {
            log.append(String.format(java.util.Locale.ROOT, "%.2f,%d%n", i / 12.0, 20 + 8 * i));
        }
        Path file = Files.writeString(folder.resolve("firing.csv"), log.toString());
        Toolkit.until(() -> !doc.checking());
        Toolkit.run(() -> shell.dropped(java.util.List.of(file)));
        assertThat(view.step()).isEqualTo(Step.FIRING);
        Toolkit.until(() -> view.lookupAll(".part-row").stream()
                .anyMatch(n -> n instanceof javafx.scene.control.ToggleButton b
                        && b.isSelected()
                        && "firing.csv".equals(b.getText())));
    }

    @Test
    void aFileChangedOnDiskIsNoticedAndTheAnswerIsDone() throws Exception {
        Path file = folder.resolve("kiln.json");
        Toolkit.run(() -> shell.files().saveTo(file));
        DesignText other = Starters.find("hexagon-27cm").orElseThrow();
        DesignFile.save(file, other);
        Toolkit.until(() -> !view.messages().getChildren().isEmpty());
        String mine = doc.text().toText();
        Toolkit.run(() -> answer("Keep mine"));
        assertThat(doc.text().toText()).isEqualTo(mine);
        DesignFile.save(file, other.setText("title", "theirs"));
        Toolkit.until(() -> !view.messages().getChildren().isEmpty());
        Toolkit.run(() -> answer("Take that one"));
        assertThat(doc.text().get("title")).contains("theirs");
        assertThat(doc.unsaved()).isFalse();
        Files.delete(file);
        Toolkit.until(() -> !view.messages().getChildren().isEmpty());
        Toolkit.run(() -> answer("Save"));
        assertThat(DesignFile.read(file).document().get("title")).contains("theirs");
    }

    private void answer(String words) {
        view.applyCss();
        view.layout();
        view.messages().lookupAll(".plain-button").stream()
                .filter(n -> n instanceof Button b && words.equals(b.getText()))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow()
                .fire();
        assertThat(view.messages().getChildren()).isEmpty();
    }

    @Test
    void brokenFilesOfEveryKindLeaveTheDesignAlone() throws Exception {
        String before = doc.text().toText();
        Map<String, byte[]> files = Map.of(
                "empty.json",
                new byte[0],
                "picture.json",
                new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2},
                "list.json",
                "[1, 2]".getBytes(StandardCharsets.UTF_8),
                "cut.json",
                before.substring(0, before.length() / 2).getBytes(StandardCharsets.UTF_8));
        for (var f : files.entrySet()) {
            Path path = Files.write(folder.resolve(f.getKey()), f.getValue());
            Toolkit.run(() -> {
                assertThat(shell.files().open(path)).as(f.getKey()).isFalse();
                assertThat(shell.showsReport()).as(f.getKey()).isTrue();
                assertThat(doc.text().toText()).isEqualTo(before);
            });
            assertThat(Files.readAllBytes(path)).isEqualTo(f.getValue());
        }
    }

    /** Edits as a hand makes them, by keys, mouse and a field of the real window, all the way back by Ctrl+Z; {@code UndoTest} does 200. */
    @Test
    void editsOfTheHandGoBackByteForByteAndForthAgain() {
        Random r = new Random(20);
        List<String> states = new ArrayList<>(List.of(doc.text().toText()));
        for (int tries = 0; states.size() <= HAND_EDITS && tries < 10 * HAND_EDITS; tries++) {
            Toolkit.run(() -> {
                int before = doc.undoStack().size();
                byHand(r);
                if (doc.undoStack().size() > before) {
                    states.add(doc.text().toText());
                }
            });
        }
        assertThat(states).hasSize(HAND_EDITS + 1);
        Toolkit.run(() -> board().requestFocus());
        for (int i = HAND_EDITS - 1; i >= 0; i--) {
            Toolkit.run(() -> key(KeyCode.Z, false, true));
            assertThat(doc.text().toText()).as("seed 20, undo to state " + i).isEqualTo(states.get(i));
        }
        for (int i = 1; i <= HAND_EDITS; i++) {
            Toolkit.run(() -> key(KeyCode.Z, true, true));
            assertThat(doc.text().toText()).as("seed 20, redo to state " + i).isEqualTo(states.get(i));
        }
    }

    private void byHand(Random r) {
        List<Hole> holes = doc.shapes().geometry().holes();
        board().requestFocus();
        int kind = r.nextInt(6);
        if (holes.isEmpty() || kind == 0 && holes.size() < 6) {
            board().press("new");
            return;
        }
        Hole h = holes.get(r.nextInt(holes.size()));
        board().show(Picture.of(h.face().on()));
        doc.select(null);
        doc.select(h.name());
        switch (kind) {
            case 1 -> board().press("delete");
            case 2 -> board().press("mirror");
            case 3 -> {
                Pt at = board().canvasPoint(h.face(), h.centre());
                drag(at, new Pt(at.x() + r.nextInt(40) - 20, at.y() + r.nextInt(40) - 20));
            }
            case 4 ->
                new FieldModel(doc, Parts.path(doc.text(), h.name()), diameter()).commit(20 + r.nextInt(30) + " mm");
            default -> key(KeyCode.values()[KeyCode.LEFT.ordinal() + r.nextInt(4)], r.nextBoolean(), false);
        }
    }

    private static FieldSpec diameter() {
        return Catalog.ports().fields().stream()
                .filter(f -> f.key().equals("diameter"))
                .findFirst()
                .orElseThrow();
    }
}
