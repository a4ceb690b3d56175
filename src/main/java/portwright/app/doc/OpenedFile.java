package portwright.app.doc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import portwright.file.DesignFile;
import portwright.file.Starters;

/** Which file the design on the board belongs to, and what that file looked like when it was last read or written. */
public final class OpenedFile {
    private Path path;
    private DesignFile.Stamp stamp;
    private String savedAt;
    private String example;

    /** The design has no file; {@code starter} names the example it is, or is null. */
    public void none(String starter) {
        path = null;
        stamp = null;
        savedAt = null;
        example = starter;
    }

    /** The design was read from a file just now. */
    public void read(Path from) {
        none(null);
        path = from;
        look();
    }

    /** The design was written to a file just now; {@code at} is the time of day in words. */
    public void written(Path to, String at) {
        read(to);
        savedAt = at;
    }

    /** Takes the file on disk, as it is now, for known. */
    public void look() {
        try {
            stamp = DesignFile.stamp(path);
        } catch (IOException e) {
            stamp = null;
        }
    }

    /** Null for a design that has no file. */
    public Path path() {
        return path;
    }

    /** Whether the design is an untitled starter. */
    public boolean isExample() {
        return example != null;
    }

    /** Whether somebody else changed or removed the file since it was last looked at. */
    public boolean changedOnDisk() {
        try {
            return path != null && DesignFile.changed(path, stamp);
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether the file is there at all. */
    public boolean onDisk() {
        return path != null && Files.exists(path);
    }

    /** File and state for the line under the title; under a title of its own a starter is no example any more. */
    public String words(boolean unsaved, String title) {
        if (path == null) {
            return isExample() && title.equals(Starters.title(example)) ? "example, not saved" : "not saved yet";
        }
        return path.getFileName() + (unsaved ? " · changed" : savedAt == null ? " · saved" : " · saved " + savedAt);
    }
}
