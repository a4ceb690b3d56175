package portwright.app.doc;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import portwright.file.DesignText;

/** Undo and redo without limit, with names. Edits of one run (same key, no pause between) grow into one step. */
public final class UndoStack {
    private static final String NUDGE = "nudge ";

    private final Deque<Edit> done = new ArrayDeque<>();
    private final Deque<Edit> undone = new ArrayDeque<>();
    private String runKey;
    /** How many edits the last step of a run holds. */
    private int run;

    /** Adds a step; a step with the key of the one before it replaces that one's outcome. A null key never joins. */
    public void push(Edit edit, String key) {
        undone.clear();
        if (key != null && key.equals(runKey) && !done.isEmpty()) {
            Edit last = done.pop();
            run++;
            done.push(new Edit(many(edit.name()), last.before(), edit.after()));
        } else {
            run = 1;
            done.push(edit);
        }
        runKey = key;
    }

    /** Tells how many nudges one step takes back; other runs keep their name. */
    private String many(String name) {
        return name.startsWith(NUDGE) ? run + " nudges of " + name.substring(NUDGE.length()) : name;
    }

    /** Ends a run: the next edit is a step of its own. */
    public void endRun() {
        runKey = null;
    }

    /** Takes the last step back and answers what was before it. */
    public Optional<DesignText> undo() {
        endRun();
        if (done.isEmpty()) {
            return Optional.empty();
        }
        Edit e = done.pop();
        undone.push(e);
        e.back().run();
        return Optional.of(e.before());
    }

    /** Does the step again that was taken back last. */
    public Optional<DesignText> redo() {
        endRun();
        if (undone.isEmpty()) {
            return Optional.empty();
        }
        Edit e = undone.pop();
        done.push(e);
        e.again().run();
        return Optional.of(e.after());
    }

    /** Name of the step that undo takes back; null when there is none. */
    public String undoName() {
        return done.isEmpty() ? null : done.peek().name();
    }

    /** The step that undo takes back; empty when there is none. */
    public Optional<Edit> last() {
        return Optional.ofNullable(done.peek());
    }

    /** Name of the step that redo does again; null when there is none. */
    public String redoName() {
        return undone.isEmpty() ? null : undone.peek().name();
    }

    public int size() {
        return done.size();
    }
}
