package portwright.app.doc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells windows of one another: a small mark while a window has a file open. */
public final class OpenMark {
    private final HomeFolder home;
    private final String me;
    private Path mark;

    public OpenMark(HomeFolder home, String window) {
        this.home = home;
        this.me = ProcessHandle.current().pid() + "-" + window;
    }

    /** Takes the file; answers whether another living window has it open. */
    public boolean take(Path file) {
        leave();
        Path folder = home.folder("open");
        if (folder == null) {
            return false;
        }
        Path p = folder.resolve(
                Integer.toHexString(file.toAbsolutePath().normalize().toString().hashCode()) + ".txt");
        boolean other = false;
        try {
            if (Files.exists(p)) {
                String who = Files.readString(p, StandardCharsets.UTF_8).strip();
                other = !who.equals(me) && alive(who);
            }
            if (!other) {
                Files.writeString(p, me, StandardCharsets.UTF_8);
                mark = p;
            }
        } catch (IOException e) {
            return other;
        }
        return other;
    }

    private static boolean alive(String who) {
        try {
            return ProcessHandle.of(Long.parseLong(who.substring(0, who.indexOf('-'))))
                    .filter(ProcessHandle::isAlive)
                    .isPresent();
        } catch (RuntimeException e) {
            return false;
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
