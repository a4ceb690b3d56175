package portwright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;

/** Design files on disk. */
public final class DesignFile {
    /** Largest file that is read. */
    public static final int MAX_BYTES = 5_000_000;

    static final String TOO_LARGE = "The file is larger than 5 MB. That is no design; a large one has 50 kB.";

    private DesignFile() {}

    /**
     * What a file looked like when it was read, to notice that somebody else changed it.
     *
     * @param time last modification
     * @param bytes size
     * @param hash of the content
     */
    public record Stamp(FileTime time, long bytes, int hash) {}

    /**
     * Reads a design with all its errors. Wrong content is answered as problems.
     *
     * @throws IOException when the file cannot be opened or read
     */
    public static ReadResult read(Path file) throws IOException {
        List<Problem> problems = new ArrayList<>();
        String text = Encoding.text(bytes(file, problems), problems);
        return text == null ? new ReadResult(null, null, problems) : DesignText.read(text);
    }

    private static byte[] bytes(Path file, List<Problem> problems) throws IOException {
        if (Files.isDirectory(file)) {
            throw new IOException("a folder, not a file");
        }
        try (var in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MAX_BYTES + 1);
            if (bytes.length > MAX_BYTES) {
                problems.add(new Problem(0, 0, "", TOO_LARGE));
                return null;
            }
            return bytes;
        }
    }

    /** The state of the file now; null when it is not there. */
    public static Stamp stamp(Path file) throws IOException {
        if (!Files.exists(file)) {
            return null;
        }
        byte[] bytes;
        try (var in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MAX_BYTES + 1);
        }
        return new Stamp(Files.getLastModifiedTime(file), Files.size(file), java.util.Arrays.hashCode(bytes));
    }

    /** Whether the file's content differs from what the stamp saw (a gone file counts as changed). */
    public static boolean changed(Path file, Stamp since) throws IOException {
        if (!Files.exists(file)) {
            return since != null;
        }
        if (since == null) {
            return true;
        }
        if (Files.size(file) == since.bytes() && Files.getLastModifiedTime(file).equals(since.time())) {
            return false;
        }
        Stamp now = stamp(file);
        return now == null || now.bytes() != since.bytes() || now.hash() != since.hash();
    }

    /**
     * Saves the whole document or nothing, in canonical form. Permissions stay, a symbolic link stays and its target is replaced.
     *
     * @throws IOException when it cannot be written; the old file is whole and no temporary file is left
     */
    public static void save(Path file, DesignText document) throws IOException {
        AtomicFile.write(file, document.toText().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
