package portwright.app.doc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import portwright.file.AtomicFile;
import portwright.file.DesignText;
import portwright.file.Maker;
import portwright.file.ReadResult;

/**
 * A copy of unsaved work, written while it is being done. A copy whose program is gone is what a crash left behind.
 * First line: the design's file, empty for a design that has none, and after a tab the starter it was made from; then the design.
 */
public final class Recovery {
    private static final String FOLDER = "recovery";
    private static final String END = ".design";
    private static final String CUT = "\t";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    /**
     * What a crash left behind.
     *
     * @param file null for a design that was never saved
     * @param starter that it was made from; empty for none
     */
    public record Left(Path copy, Path file, String starter, DesignText text) {
        /** The design's own file in words. */
        public String words() {
            return file == null
                    ? "a design that was never saved"
                    : file.getFileName().toString();
        }

        /** The kiln's title; empty where it has none. */
        public String title() {
            return text.get("title").orElse("");
        }

        /** When it was worked on last, in words: {@code today at 14:32}; empty where the copy does not tell. */
        public String when() {
            try {
                LocalDateTime t =
                        LocalDateTime.ofInstant(Files.getLastModifiedTime(copy).toInstant(), ZoneId.systemDefault());
                String day = t.toLocalDate().equals(LocalDate.now()) ? "today" : "on " + t.format(DAY);
                return day + " at " + t.format(CLOCK);
            } catch (IOException e) {
                return "";
            }
        }
    }

    private final HomeFolder home;
    private final Path mine;

    public Recovery(HomeFolder home, String window) {
        this.home = home;
        Path folder = home.folder(FOLDER);
        this.mine = folder == null ? null : folder.resolve(Maker.me() + window + END);
    }

    /** Writes the copy whole or not at all; {@code starter} null for a design that was made from none. */
    public boolean keep(DesignText text, Path file, String starter) {
        if (mine == null) {
            return false;
        }
        try {
            String all = (file == null ? "" : file.toAbsolutePath())
                    + (starter == null ? "" : CUT + starter)
                    + "\n"
                    + text.toText();
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
            if (name.endsWith(END) && !Maker.alive(name)) {
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
            String line = all.substring(0, cut);
            int tab = line.lastIndexOf(CUT);
            String file = tab < 0 ? line : line.substring(0, tab);
            String starter = tab < 0 ? "" : line.substring(tab + 1);
            return Optional.of(new Left(p, file.isEmpty() ? null : Path.of(file), starter, r.document()));
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
