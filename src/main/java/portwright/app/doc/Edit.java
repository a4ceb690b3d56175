package portwright.app.doc;

import portwright.file.DesignText;

/**
 * One step of the undo stack.
 *
 * @param back what goes back beside the text
 * @param again what is done again beside the text
 */
public record Edit(String name, DesignText before, DesignText after, Runnable back, Runnable again) {
    private static final Runnable NOTHING = () -> {};

    /** A step that changes the text alone. */
    public Edit(String name, DesignText before, DesignText after) {
        this(name, before, after, NOTHING, NOTHING);
    }
}
