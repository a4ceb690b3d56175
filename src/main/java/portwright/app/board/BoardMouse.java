package portwright.app.board;

import java.util.Optional;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import portwright.app.doc.Document;
import portwright.app.doc.Hits;
import portwright.app.doc.Lengths;
import portwright.app.doc.Moves;
import portwright.app.doc.Parts;
import portwright.app.doc.Snap;
import portwright.app.doc.View;
import portwright.file.DesignText;
import portwright.geometry.Face;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.On;

/** The pointer on the board: select, drag a part, drag paper, zoom at the pointer, measure. */
final class BoardMouse {
    private static final double CATCH_PX = 8;

    private final Board board;
    private final Document doc;
    private Hits.Hit held;
    /** From the pointer to the centre of what it holds, mm in the picture. */
    private Pt grip;

    private DesignText before;
    private String path;
    private double lastX;
    private double lastY;
    private boolean moved;
    /** Where the hand that holds a part was told last, px. */
    private Pt told;

    private final OncePerFrame moves;

    BoardMouse(Board board, Document doc) {
        this.board = board;
        this.moves = new OncePerFrame(board);
        this.doc = doc;
    }

    void install() {
        board.setOnMousePressed(this::press);
        board.setOnMouseDragged(this::drag);
        board.setOnMouseReleased(this::release);
        board.setOnMouseMoved(this::hover);
        board.setOnMouseExited(e -> leave());
        board.setOnScroll(this::scroll);
        board.setOnZoom(e -> board.view(board.view().zoomed(e.getZoomFactor(), e.getX(), e.getY())));
    }

    /** Forgets where the pointer is, until it moves again. */
    void leave() {
        if (board.marks().hoverAt != null) {
            board.marks().hovered = null;
            board.marks().hoverAt = null;
            board.marks().reach = null;
            board.redraw();
        }
    }

    private void scroll(ScrollEvent e) {
        if (e.getDeltaY() != 0) {
            board.view(board.view().zoomed(Math.pow(1.0018, e.getDeltaY()), e.getX(), e.getY()));
        }
        e.consume();
    }

    private Optional<Hits.Hit> at(double x, double y) {
        View v = board.view();
        return Hits.at(board.plot(), v.toMm(x, y), CATCH_PX / v.scale());
    }

    private void press(MouseEvent e) {
        board.requestFocus();
        lastX = e.getX();
        lastY = e.getY();
        moved = false;
        held = null;
        told = null;
        if (board.marks().measuring) {
            measure(e);
            return;
        }
        Optional<Hits.Hit> hit = e.getButton() == MouseButton.PRIMARY ? at(e.getX(), e.getY()) : Optional.empty();
        Optional<StopPainter.Flag> flag = board.marks().flags.stream()
                .filter(f -> f.box().contains(new Pt(e.getX(), e.getY())))
                .findFirst();
        if (flag.isPresent()
                && e.getButton() == MouseButton.PRIMARY
                && hit.stream().noneMatch(Hits.Hit::movable)) {
            board.marks().onFlag.accept(flag.get().finding());
        } else if (hit.isPresent()) {
            doc.select(hit.get().name());
            path = Parts.path(doc.text(), hit.get().name());
            if (hit.get().movable() && path != null) {
                held = hit.get();
                before = doc.text();
                Pt p = board.view().toMm(e.getX(), e.getY());
                Pt c = board.plot().toPicture(held.face(), centre());
                grip = new Pt(c.x() - p.x(), c.y() - p.y());
            }
        } else if (e.getButton() == MouseButton.PRIMARY && e.getClickCount() == 1) {
            doc.select(null);
        }
    }

    private Pt centre() {
        for (Hole h : board.plot().kiln().holes()) {
            if (h.name().equals(held.name())) {
                return h.centre();
            }
        }
        return board.plot().kiln().fittings().stream()
                .filter(f -> f.name().equals(held.name()))
                .map(f -> new Pt(f.fitting().at().xMm(), f.fitting().at().yMm()))
                .findFirst()
                .orElse(new Pt(0, 0));
    }

    private void drag(MouseEvent e) {
        if (board.marks().measuring) {
            return;
        }
        if (held == null) {
            board.view(board.view().moved(e.getX() - lastX, e.getY() - lastY));
            lastX = e.getX();
            lastY = e.getY();
            return;
        }
        if (!moved && Math.hypot(e.getX() - lastX, e.getY() - lastY) < 3) {
            return;
        }
        moved = true;
        double x = e.getX();
        double y = e.getY();
        told = new Pt(x, y);
        boolean free = e.isAltDown();
        moves.move(() -> dragTo(x, y, free));
    }

    private void dragTo(double x, double y, boolean free) {
        Pt picture = board.view().toMm(x, y).plus(grip.x(), grip.y());
        Face face = held.face().on() == On.WALL ? board.plot().faceAt(picture) : held.face();
        Pt q = board.plot().toPart(face, picture);
        Pt p = new Pt(Lengths.grain(q.x(), board.units(), free), Lengths.grain(q.y(), board.units(), free));
        board.marks().caught = null;
        board.marks().dragged = held.name();
        if (board.marks().snap && !free) {
            Optional<Snap.Catch> c = Snap.of(
                    board.plot().kiln(),
                    face,
                    held.name(),
                    q,
                    CATCH_PX / board.view().scale(),
                    board.units());
            if (c.isPresent()) {
                p = before.has(path + ".at.radius") ? c.get().at() : c.get().round();
                board.marks().caught = c.get().words();
            }
        }
        DesignText there = face.on() == On.WALL ? Moves.toPanel(before, path, face.panel()) : before;
        doc.preview(Moves.to(there, path, p));
    }

    /** A quick hand lets go farther on than it was told of last: the part ends where it lets go. */
    private void release(MouseEvent e) {
        if (held != null && !new Pt(e.getX(), e.getY()).equals(told)) {
            drag(e);
        }
        if (held != null && moved) {
            moves.flush();
            String name = held.name();
            held = null;
            board.marks().dragged = null;
            doc.commitPreview("move " + name, before);
            board.redraw();
        }
        held = null;
    }

    private void hover(MouseEvent e) {
        String name = at(e.getX(), e.getY()).map(Hits.Hit::name).orElse(null);
        boolean changed = name != null || board.marks().hovered != null || board.marks().measuring;
        board.marks().hovered = name;
        board.marks().hoverAt = new Pt(e.getX(), e.getY());
        boolean open = board.marks().from != null && board.marks().to == null;
        board.marks().reach = open ? end(e) : null;
        if (name != null) {
            board.pointed();
        }
        if (changed) {
            board.redraw();
        }
    }

    private void measure(MouseEvent e) {
        board.marks().tap(end(e));
        board.redraw();
        board.onChanged();
    }

    /** The middle of the hole under the pointer, else the point itself. */
    private Marks.End end(MouseEvent e) {
        Optional<Hits.Hit> hit = at(e.getX(), e.getY());
        for (Hole h : board.plot().kiln().holes()) {
            if (hit.isPresent() && h.name().equals(hit.get().name())) {
                return new Marks.End(board.plot().toPicture(h.face(), h.centre()), h.diameter() / 2);
            }
        }
        return new Marks.End(board.view().toMm(e.getX(), e.getY()), 0);
    }

    /** Puts a part back that is being dragged; false when none is. */
    boolean escape() {
        if (held == null || !moved) {
            return false;
        }
        moves.drop();
        held = null;
        board.marks().dragged = null;
        doc.dropPreview(before);
        return true;
    }
}
