package portwright.app.doc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.file.DesignText;
import portwright.file.ReadResult;

/**
 * A copy of unsaved work, written while it is being done. A copy whose program is gone is what a crash left behind.
 * First line: the design's file, empty for a design that has none; then the design.
 */
public final class Recovery {
    private static final String FOLDER = "recovery";
    private static final String END = ".design";

    /** What a crash left behind. */
    public record Left(Path copy, Path file, DesignText text) {
        /** The design's own file in words. */
        public String words() {
            return file == null
                    ? "a design that was never saved"
                    : file.getFileName().toString();
        }
    }

    private final HomeFolder home;
    private final Path mine;

    public Recovery(HomeFolder home, String window) {
        this.home = home;
        Path folder = home.folder(FOLDER);
        this.mine =
                folder == null ? null : folder.resolve(ProcessHandle.current().pid() + "-" + window + END);
    }

    /** Writes the copy whole or not at all. */
    public boolean keep(DesignText text, Path file) {
        if (mine == null) {
            return false;
        }
        try {
            Path temp = mine.resolveSibling(mine.getFileName() + ".tmp");
            Files.writeString(
                    temp, (file == null ? "" : file.toAbsolutePath()) + "\n" + text.toText(), StandardCharsets.UTF_8);
            Files.move(temp, mine, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** The work is saved or given up: the copy goes. */
    public void drop() {
        if (mine != null) {
            delete(mine);
        }
    }

    /** Copies of programs that are gone. */
    public List<Left> left() {
        List<Left> out = new ArrayList<>();
        for (Path p : home.list(FOLDER)) {
            String name = p.getFileName().toString();
            if (name.endsWith(END) && !alive(name)) {
                read(p).ifPresent(out::add);
            }
        }
        return out;
    }

    private static boolean alive(String name) {
        int cut = name.indexOf('-');
        try {
            return ProcessHandle.of(Long.parseLong(name.substring(0, Math.max(0, cut))))
                    .filter(ProcessHandle::isAlive)
                    .isPresent();
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static Optional<Left> read(Path p) {
        try {
            String all = Files.readString(p, StandardCharsets.UTF_8);
            int cut = all.indexOf('\n');
            ReadResult r = cut < 0 ? null : DesignText.read(all.substring(cut + 1));
            if (r == null || r.document() == null) {
                delete(p);
                return Optional.empty();
            }
            String file = all.substring(0, cut);
            return Optional.of(new Left(p, file.isEmpty() ? null : Path.of(file), r.document()));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Forgets a copy that somebody answered. */
    public static void delete(Path copy) {
        try {
            Files.deleteIfExists(copy);
        } catch (IOException stays) {
            copy.toFile().deleteOnExit();
        }
    }
}
