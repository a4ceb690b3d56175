package portwright.app.doc;

import portwright.file.DesignText;

/** One step of the undo stack. */
public record Edit(String name, DesignText before, DesignText after) {}
