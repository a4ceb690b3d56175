package portwright.app.board;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import portwright.app.doc.Copies;
import portwright.app.doc.Document;
import portwright.app.doc.FreePlace;
import portwright.app.doc.Moves;
import portwright.app.doc.Parts;
import portwright.app.doc.Picture;
import portwright.app.doc.Templates;
import portwright.file.DesignText;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.UnitSystem;

/** The keys of the board; its letters also act while the focus is elsewhere and nobody types. Plain letters change what is seen, never the design: that takes Ctrl. */
final class BoardKeys {
    private static final Set<KeyCode> LETTERS =
            EnumSet.of(KeyCode.S, KeyCode.M, KeyCode.R, KeyCode.T, KeyCode.F, KeyCode.PERIOD, KeyCode.COMMA);

    private final Board board;
    private final Document doc;

    BoardKeys(Board board, Document doc) {
        this.board = board;
        this.doc = doc;
    }

    void install() {
        board.setOnKeyPressed(this::key);
    }

    /** Acts on a letter that was pressed elsewhere in the window and takes the keys, so that arrows and Escape go on from it; false when it is none of the board's. */
    boolean letter(KeyEvent e) {
        boolean mine = !e.isShortcutDown() && !e.isControlDown() && LETTERS.contains(e.getCode());
        if (mine) {
            board.requestFocus();
            key(e);
        }
        return mine;
    }

    /** Acts on Ctrl with a letter that changes the design, and takes the keys; false when it is none of the board's. */
    boolean chord(KeyEvent e) {
        // AltGr, which types letters of its own, counts as Ctrl with Alt
        String what = e.isAltDown() ? null : chorded(e.getCode(), e.isShiftDown());
        if (what != null) {
            // first, so that what is being typed counts
            board.requestFocus();
            act(what);
        }
        return what != null;
    }

    private static String chorded(KeyCode c, boolean shift) {
        return switch (c) {
            case N -> shift ? "new" : null;
            case D -> shift ? null : "duplicate";
            case I -> shift ? "mirror-y" : "mirror";
            case E -> shift ? null : "spread";
            default -> null;
        };
    }

    private void key(KeyEvent e) {
        if (e.isShortcutDown() || e.isControlDown()) {
            return;
        }
        if (!board.marks().measuring) {
            board.keyed();
        }
        switch (e.getCode()) {
            case LEFT -> nudge(-1, 0, e);
            case RIGHT -> nudge(1, 0, e);
            case UP -> nudge(0, 1, e);
            case DOWN -> nudge(0, -1, e);
            case PLUS, ADD, EQUALS -> zoom(1.2);
            case MINUS, SUBTRACT -> zoom(1 / 1.2);
            case TAB -> {
                if (board.marks().measuring && !e.isShiftDown()) {
                    board.marks().centreToCentre = !board.marks().centreToCentre;
                    board.redraw();
                    board.onChanged();
                } else {
                    return;
                }
            }
            case ESCAPE -> act("escape");
            case DELETE -> act("delete");
            default -> {
                if (!LETTERS.contains(e.getCode())) {
                    return;
                }
                act(letter(e.getCode()));
            }
        }
        e.consume();
    }

    private static String letter(KeyCode c) {
        return switch (c) {
            case S -> "snap";
            case M -> "measure";
            case R -> "region";
            case T -> "turn";
            case PERIOD -> "next";
            case COMMA -> "previous";
            default -> "fit";
        };
    }

    private void zoom(double f) {
        board.view(board.view().zoomed(f, board.getWidth() / 2, board.getHeight() / 2));
    }

    void act(String what) {
        board.marks().refused = "";
        switch (what) {
            case "snap" -> {
                board.marks().snap = !board.marks().snap;
                board.redraw();
            }
            case "measure" -> board.measuring(!board.marks().measuring);
            case "region" -> {
                board.marks().region = !board.marks().region;
                board.redraw();
            }
            case "turn" -> board.show(board.picture().turned());
            case "fit" -> board.fit();
            case "escape" -> {
                if (board.dropDrag()) {
                    return;
                }
                if (board.marks().measuring) {
                    board.measuring(false);
                } else {
                    doc.select(null);
                    board.redraw();
                }
            }
            case "next" -> step(1);
            case "previous" -> step(-1);
            case "new" -> add();
            case "delete" -> delete();
            case "duplicate" -> copy(null);
            case "mirror" -> copy("x");
            case "mirror-y" -> copy("y");
            case "spread" -> spread();
            default -> throw new IllegalArgumentException(what);
        }
        board.onChanged();
    }

    /** Selects the next part in the picture: ports, fittings, elements, shelves. */
    private void step(int by) {
        List<String> names = new ArrayList<>();
        for (Hole h : board.plot().kiln().holes()) {
            if (board.plot().shows(h.face())) {
                names.add(h.name());
            }
        }
        for (FittingShape f : board.plot().kiln().fittings()) {
            if (board.plot().shows(f.face())) {
                names.add(f.name());
            }
        }
        for (GrooveSolid g : board.plot().kiln().grooves()) {
            if (board.plot().shows(g.face()) && !names.contains(g.name())) {
                names.add(g.name());
            }
        }
        if (board.picture() == Picture.FLOOR_HOT) {
            board.plot().kiln().shelves().forEach(s -> names.add(s.name()));
        }
        if (!names.isEmpty()) {
            int i = names.indexOf(doc.selected());
            doc.select(names.get(i < 0 ? 0 : Math.floorMod(i + by, names.size())));
        }
    }

    /** Whether the chosen part lies somewhere and can be put elsewhere. */
    boolean movable() {
        return chosen() != null;
    }

    private record Spot(String path, Face face, Pt at, Role role) {}

    private Spot chosen() {
        String path = doc.selected() == null ? null : Parts.path(doc.text(), doc.selected());
        if (path == null || !doc.text().has(path + ".at")) {
            return null;
        }
        for (Hole h : doc.shapes().geometry().holes()) {
            if (h.name().equals(doc.selected())) {
                return new Spot(path, h.face(), h.centre(), h.port().role());
            }
        }
        for (FittingShape f : doc.shapes().geometry().fittings()) {
            if (f.name().equals(doc.selected())) {
                return new Spot(
                        path,
                        f.face(),
                        new Pt(f.fitting().at().xMm(), f.fitting().at().yMm()),
                        null);
            }
        }
        return null;
    }

    private void nudge(int dx, int dy, KeyEvent e) {
        Spot s = chosen();
        if (s == null) {
            board.view(board.view().moved(-dx * 40, dy * 40));
            return;
        }
        boolean inch = board.units() == UnitSystem.INCH;
        double step = e.isAltDown() ? 0.1 : e.isShiftDown() ? inch ? 12.7 : 10 : inch ? 25.4 / 16 : 1;
        double sx = board.picture().mirrored() ? -dx : dx;
        doc.edit(
                "nudge " + doc.selected(),
                "nudge " + s.path(),
                t -> Moves.by(t, s.path(), s.at(), sx * step, dy * step));
    }

    private void add() {
        Picture pic = board.picture();
        On on = pic == Picture.SECTION ? On.FLOOR : pic.face().on();
        String role = on == On.LID ? "flue" : "inlet";
        String name = Templates.free(doc.text(), role);
        if (doc.edit("add " + name, t -> FreePlace.add(doc, role, on, name)).isEmpty()) {
            doc.select(name);
        }
    }

    private void delete() {
        String name = doc.selected();
        String path = name == null ? null : Parts.path(doc.text(), name);
        if (path != null
                && doc.edit("delete " + name, t -> Moves.delete(t, path)).isEmpty()) {
            board.marks().hovered = null;
            doc.select(null);
        }
    }

    private void copy(String axis) {
        Spot s = chosen();
        if (s == null) {
            board.marks().refused = Copies.unplaced(doc, axis == null);
            return;
        }
        double off = board.units() == UnitSystem.INCH ? 50.8 : 50;
        Pt to = axis == null
                ? s.at().plus(s.at().x() > 0 ? -off : off, 0)
                : axis.equals("y") || Math.abs(s.at().x()) < 0.05
                        ? new Pt(s.at().x(), -s.at().y())
                        : new Pt(-s.at().x(), s.at().y());
        String name = Copies.nextName(doc.text(), doc.selected());
        String verb = axis == null ? "duplicate " : "mirror ";
        if (doc.edit(verb + doc.selected(), t -> Moves.copy(t, s.path(), name, to))
                .isEmpty()) {
            doc.select(name);
        }
    }

    private void spread() {
        Spot s = chosen();
        if (s == null || s.role() == null || s.face().on() == On.WALL) {
            board.marks().refused = "Holes are spread on a circle in floor or lid: choose one there.";
            return;
        }
        DesignText text = doc.text();
        List<String> paths = new ArrayList<>();
        paths.add(s.path());
        for (Hole h : doc.shapes().geometry().holes(s.face().on())) {
            String p = Parts.path(text, h.name());
            if (h.port().role() == s.role() && !p.equals(s.path())) {
                paths.add(p);
            }
        }
        if (paths.size() == 1) {
            board.marks().refused = doc.selected() + " is the only " + s.role().id() + " in the "
                    + s.face().on().id() + ": add another, then spread them.";
            return;
        }
        doc.edit("spread on a circle", t -> Moves.spread(t, paths, s.at()));
    }
}
