package portwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import portwright.file.AtomicFile;

/** Writes what a command was asked for, whole, or ends the command with one sentence. */
final class Output {
    private Output() {}

    /**
     * Refuses, before any work, to write over a file that the command reads, or into a folder that is not there.
     *
     * @param out null where nothing is to be written
     */
    static void ready(Path out, Path... read) {
        Path folder = out == null ? null : out.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new UserError(
                    Cli.FAULT,
                    out + ": not written, there is no folder " + folder + ". Make it first, or write to another one.");
        }
        for (Path r : read) {
            if (out != null && same(out, r)) {
                throw UserError.option(
                        out + ": this command reads that file, and it would be lost. Write to another one.");
            }
        }
    }

    private static boolean same(Path a, Path b) {
        try {
            return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
        } catch (IOException e) {
            return a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize());
        }
    }

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
