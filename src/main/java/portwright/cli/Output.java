package portwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
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
        if (out != null) {
            inFolder(out);
        }
        for (Path r : read) {
            if (out != null && same(out, r)) {
                throw UserError.option(
                        out + ": this command reads that file, and it would be lost. Write to another one.");
            }
        }
    }

    private static void inFolder(Path out) {
        Path folder = out.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new UserError(
                    Cli.FAULT,
                    out + ": not written, there is no folder " + folder + ". Make it first, or write to another one.");
        }
    }

    /** Refuses to write two things to one file. */
    static void apart(Path one, Path other) {
        if (one != null && other != null && same(one, other)) {
            throw UserError.option(other + ": two things would go to that one file. Write them to two.");
        }
    }

    /**
     * Refuses, before any work, what can be no folder.
     *
     * @param folder null where none is wanted
     */
    static void folderReady(Path folder) {
        if (folder == null || Files.isDirectory(folder)) {
            return;
        }
        if (Files.exists(folder)) {
            throw UserError.option(folder + ": that is a file, and a folder is wanted. Write the name of a folder.");
        }
        inFolder(folder);
    }

    /** Makes the folder where it is missing. */
    static void makeFolder(Path folder) {
        if (Files.isDirectory(folder)) {
            return;
        }
        try {
            Files.createDirectory(folder);
        } catch (IOException e) {
            throw new UserError(Cli.FAULT, folder + ": this folder cannot be made" + why(e) + ". Nothing was written.");
        }
    }

    private static String why(IOException e) {
        return e instanceof AccessDeniedException ? " (no permission)" : "";
    }

    private static boolean same(Path a, Path b) {
        try {
            return Files.exists(a) && Files.exists(b)
                    ? Files.isSameFile(a, b)
                    : a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize());
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
                    file + ": not written (" + e.getMessage() + "). "
                            + (Files.isRegularFile(file)
                                    ? "The old file stands as it was."
                                    : "No file was left there."));
        }
    }

    static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
