package portwright.app.doc;

import portwright.file.DesignText;

/**
 * One step of the undo stack.
 *
 * @param back what goes back beside the text
 * @param again what is done again beside the text
 */
public record Edit(String name, DesignText before, DesignText after, Runnable back, Runnable again) {
    /** A step that changes the text alone. */
    public Edit(String name, DesignText before, DesignText after) {
        this(name, before, after, Edit::nothing, Edit::nothing);
    }

    private static void nothing() {}
}
