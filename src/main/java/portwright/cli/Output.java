package portwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import portwright.file.AtomicFile;

/** Writes what a command was asked for, whole, or ends the command with one sentence. */
final class Output {
    private Output() {}

    static void write(Path file, byte[] bytes) {
        try {
            AtomicFile.write(file, bytes);
        } catch (IOException e) {
            throw new UserError(
                    Cli.FAULT,
                    file + ": not written (" + e.getMessage() + "). No half file was left; an old one stands.");
        }
    }

    static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
