package portwright.app.doc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.file.AtomicFile;
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
            String all = (file == null ? "" : file.toAbsolutePath()) + "\n" + text.toText();
            AtomicFile.write(mine, all.getBytes(StandardCharsets.UTF_8));
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
            if (name.endsWith(END) && !HomeFolder.alive(name)) {
                read(p).ifPresent(out::add);
            }
        }
        return out;
    }

    private static Optional<Left> read(Path p) {
        try {
            String all = Files.readString(p, StandardCharsets.UTF_8);
            int cut = all.indexOf('\n');
            ReadResult r = cut < 0 ? null : DesignText.read(all.substring(cut + 1));
            if (r == null || r.document() == null) {
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
