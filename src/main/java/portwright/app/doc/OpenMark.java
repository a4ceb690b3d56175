package portwright.app.doc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import portwright.file.Maker;

/** Tells windows of one another: a small mark of its own for each window while it has a file open. */
public final class OpenMark {
    private static final String FOLDER = "open";

    private final HomeFolder home;
    private final String me;
    private Path mark;

    public OpenMark(HomeFolder home, String window) {
        this.home = home;
        this.me = Maker.me() + window;
    }

    /** Takes the file; answers whether another living window has it open. Marks first and looks then, so that of two at once both are told. */
    public boolean take(Path file) {
        leave();
        Path folder = home.folder(FOLDER);
        if (folder == null) {
            return false;
        }
        String key = Integer.toHexString(real(file).toString().hashCode()) + ".";
        Path p = folder.resolve(key + me);
        try {
            Files.writeString(p, real(file) + "\n", StandardCharsets.UTF_8);
            mark = p;
        } catch (IOException othersAreStillSeen) {
            mark = null;
        }
        boolean other = false;
        for (Path q : home.list(FOLDER)) {
            String name = q.getFileName().toString();
            if (name.startsWith(key) && !name.equals(key + me)) {
                boolean lives = Maker.alive(name.substring(key.length()));
                other |= lives;
                if (!lives) {
                    Recovery.delete(q);
                }
            }
        }
        return other;
    }

    /** The file itself, whatever links lead to it. */
    static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }

    /** Lets the file go. */
    public void leave() {
        if (mark != null) {
            Recovery.delete(mark);
            mark = null;
        }
    }
}
