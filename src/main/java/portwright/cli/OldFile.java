package portwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/** What stands already where a command is to write. */
final class OldFile {
    /** So far into a file the field that every design begins with is looked for, bytes. */
    private static final int LOOK = 1 << 16;

    private static final Pattern DESIGN = Pattern.compile("(?s)\\A\\uFEFF?\\s*\\{.*\"portwright\"\\s*:.*");

    private OldFile() {}

    /** Whether the place is a design's, by its name or by what stands there. */
    static boolean design(Path file) {
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
            return true;
        }
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return DESIGN.matcher(new String(in.readNBytes(LOOK), StandardCharsets.UTF_8))
                    .matches();
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    /**
     * Refuses to write a design over a file that is not empty.
     *
     * @param bytes what is to be written, where it is known: the same again does no harm; else null
     */
    static void stands(Path file, byte[] bytes) {
        try {
            if (Files.isRegularFile(file)
                    && Files.size(file) > 0
                    && !(bytes != null
                            && Files.size(file) == bytes.length
                            && Arrays.equals(Files.readAllBytes(file), bytes))) {
                throw new UserError(
                        Cli.MISUSE,
                        file + ": there is a file of that name already. Nothing was changed. Write to another name.");
            }
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private static UserError unreadable(Path file, IOException e) {
        return new UserError(
                Cli.MISUSE, file + ": the file that stands there cannot be read (" + e.getMessage() + ").");
    }
}
