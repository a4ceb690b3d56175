package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import portwright.check.CheckResult;
import portwright.check.Severity;
import portwright.file.DesignText;
import portwright.file.Problem;
import portwright.file.ReadResult;
import portwright.model.Design;
import portwright.review.Review;

/**
 * The open design: its text, its undo stack, what the rule book says of it, and what is selected. An edit that would make the
 * design unreadable is not taken: the last good state stays.
 */
public final class Document {
    /** What changed, for the views. */
    public enum Change {
        DESIGN,
        CHECK,
        SELECTION,
        SAVED,
        /** What is to be said of a field: it cannot be read, it is still a starter's. */
        ENTRY
    }

    private final CheckDesk desk;
    private final List<Consumer<Change>> listeners = new ArrayList<>();
    private UndoStack undo = new UndoStack();
    private DesignText text;
    private DesignText saved;
    private Design design;
    private CheckDesk.Answer quick;
    private CheckDesk.Answer full;
    private String fault;
    private String selected;
    private List<String> highlighted = List.of();
    private boolean dragging;
    private boolean stopped;
    private final Unread unread = new Unread(() -> tell(Change.ENTRY));
    private final Borrowed borrowed = new Borrowed(this::text, () -> tell(Change.ENTRY));

    /** Opens a document that reads well. */
    public Document(DesignText text, Design design, CheckDesk desk) {
        this.desk = desk;
        this.text = text;
        this.saved = text;
        this.design = design;
        this.quick = desk.quick(design);
    }

    /** Puts another design in the place of this one, with an empty undo stack. */
    public void replace(DesignText newText, Design newDesign, boolean unsaved) {
        undo = new UndoStack();
        unread.clear();
        borrowed.none();
        text = newText;
        design = newDesign;
        saved = unsaved ? null : newText;
        selected = null;
        highlighted = List.of();
        full = null;
        recheck(true);
        tell(Change.DESIGN);
        tell(Change.SELECTION);
        tell(Change.SAVED);
    }

    public void listen(Consumer<Change> l) {
        listeners.add(l);
    }

    private void tell(Change c) {
        for (Consumer<Change> l : List.copyOf(listeners)) {
            l.accept(c);
        }
    }

    public DesignText text() {
        return text;
    }

    public Design design() {
        return design;
    }

    /** What fields hold that cannot be read. */
    public Unread unread() {
        return unread;
    }

    /** Which values are still those of the starter that the design was made from. */
    public Borrowed borrowed() {
        return borrowed;
    }

    public UndoStack undoStack() {
        return undo;
    }

    /** Tries an edit as a step of its own. Answers what is wrong; empty when it was taken. */
    public List<Problem> edit(String name, UnaryOperator<DesignText> change) {
        return edit(name, null, change);
    }

    /** Tries an edit that joins the one before it when the keys agree (nudging by arrow keys). */
    public List<Problem> edit(String name, String runKey, UnaryOperator<DesignText> change) {
        DesignText next = change.apply(text);
        if (next.equals(text)) {
            return List.of();
        }
        ReadResult r = next.read();
        if (!r.ok()) {
            return r.problems();
        }
        undo.push(new Edit(name, text, next), runKey);
        take(next, r.design(), true);
        return List.of();
    }

    /** Shows a state while the hand still drags: shapes are checked at once, nothing else, no undo step. */
    public boolean preview(DesignText next) {
        ReadResult r = next.read();
        if (!r.ok()) {
            return false;
        }
        dragging = true;
        desk.cancel();
        take(next, r.design(), false);
        return true;
    }

    /** Ends a preview that began at {@code before} with one undo step. */
    public void commitPreview(String name, DesignText before) {
        dragging = false;
        if (text != before) {
            undo.push(new Edit(name, before, text), null);
        }
        recheck(true);
        tell(Change.DESIGN);
    }

    /** Ends a preview and puts back what was before it. */
    public void dropPreview(DesignText before) {
        dragging = false;
        take(before, before.read().design(), true);
    }

    private void take(DesignText next, Design d, boolean deep) {
        String name = Parts.followed(text, next, selected);
        boolean renamed = !Objects.equals(name, selected);
        selected = name;
        unread.follow(text, next);
        text = next;
        design = d;
        recheck(deep);
        tell(Change.DESIGN);
        if (renamed) {
            highlighted = List.of();
            tell(Change.SELECTION);
        }
    }

    public boolean undo() {
        return undo.undo().map(this::back).orElse(false);
    }

    public boolean redo() {
        return undo.redo().map(this::back).orElse(false);
    }

    private boolean back(DesignText to) {
        take(to, to.read().design(), true);
        return true;
    }

    private void recheck(boolean deep) {
        quick = desk.quick(design);
        if (deep) {
            fault = null;
            stopped = false;
            desk.full(design, a -> {
                if (a.fault() == null) {
                    full = a;
                }
                fault = a.fault();
                tell(Change.CHECK);
            });
        }
    }

    /** The worst that the shapes of a text would say of a part; null for nothing. */
    Severity worst(DesignText next, String part) {
        return desk.worst(next.read().design(), part);
    }

    /** Starts the full check. */
    public void start() {
        recheck(true);
        tell(Change.CHECK);
    }

    /** The shapes of the design as it stands. */
    public Review shapes() {
        return quick.review();
    }

    /** The last full review; may belong to the design before the last edit while {@link #checking()}. */
    public Review review() {
        return full == null ? quick.review() : full.review();
    }

    /** Figures and curves of the last full review. */
    public Extras extras() {
        return full == null ? Extras.NONE : full.extras();
    }

    /** Whether the full answer for this design is not there: still on its way, or called off. */
    public boolean checking() {
        return dragging || stopped || desk.busy();
    }

    /** Calls the full check off: what it would answer stays unchecked until the next edit or {@link #start()}. */
    public void stopCheck() {
        if (desk.busy()) {
            desk.cancel();
            stopped = true;
            tell(Change.CHECK);
        }
    }

    /** Whether the full check of this design was called off. */
    public boolean stopped() {
        return stopped;
    }

    /** Whether gas, room and firing have not been checked even once. */
    public boolean waiting() {
        return checking() && review().fire() == null;
    }

    /** Whether the hand drags a part. */
    public boolean dragging() {
        return dragging;
    }

    /** A fault of the full check in words; null when there is none. */
    public String fault() {
        return fault;
    }

    /** Shapes as they stand, the rest as last computed. */
    public CheckResult result() {
        if (full == null) {
            return quick.result();
        }
        return checking() ? Merge.of(quick.result(), full.result()) : full.result();
    }

    public String selected() {
        return selected;
    }

    /** Selects a part by name; null for none. */
    public void select(String part) {
        if (part == null ? selected != null : !part.equals(selected)) {
            selected = part;
            undo.endRun();
        }
        highlighted = List.of();
        tell(Change.SELECTION);
    }

    /** Parts that a chosen finding is about. */
    public List<String> highlighted() {
        return highlighted;
    }

    public void highlight(List<String> parts) {
        highlighted = List.copyOf(parts);
        tell(Change.SELECTION);
    }

    /** Whether the text differs from what was saved last. */
    public boolean unsaved() {
        return !text.equals(saved);
    }

    /** The text now on disk. */
    public void markSaved(DesignText onDisk) {
        saved = onDisk;
        tell(Change.SAVED);
    }
}
