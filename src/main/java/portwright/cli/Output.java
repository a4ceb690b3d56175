package portwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import portwright.file.AtomicFile;
import portwright.units.PlainSigns;

/** Writes what a command was asked for, whole, or ends the command with one sentence. */
final class Output {
    private Output() {}

    /**
     * Refuses, before any work, a place that cannot take a paper, a table or a drawing: a file that the command reads, any other design, a
     * folder, or a folder that is not there.
     *
     * @param out null where nothing is to be written
     * @param like how such a file is called, such as {@code FILE.pdf}
     */
    static void paper(Path out, String like, Path... read) {
        if (out == null) {
            return;
        }
        ready(out, like, read);
        noDesign(out, like);
    }

    /** Refuses to write what is no design where one stands or would by its name. */
    static void noDesign(Path out, String like) {
        if (OldFile.design(out)) {
            throw UserError.option(out
                    + (Files.exists(out)
                            ? ": that is a design, and it would be lost."
                            : ": that is the name of a design, and this is none.")
                    + " Write to " + like + " instead.");
        }
    }

    /**
     * Refuses, before any work, a place that cannot take a new design: a file that is there already, a folder, or a folder that is not there.
     *
     * @param out null where nothing is to be written
     */
    static void design(Path out, Path... read) {
        if (out == null) {
            return;
        }
        ready(out, "NEW.json", read);
        OldFile.stands(out, null);
    }

    /** Refuses a place that nothing can be written to, or a file that the command reads. */
    static void ready(Path out, String like, Path... read) {
        if (out.toString().isEmpty()) {
            throw UserError.option("the name of the file to write is empty. Write one, such as " + like + ".");
        }
        inFolder(out);
        if (Files.isDirectory(out)) {
            throw UserError.option(
                    out + ": not written, that is a folder. Write a file in it, such as " + out.resolve(like) + ".");
        }
        if (Files.exists(out) && !Files.isRegularFile(out)) {
            throw new UserError(
                    Cli.FAULT, out + ": not written, that is a device or pipe. Write to a file, such as " + like + ".");
        }
        for (Path r : read) {
            if (same(out, r)) {
                throw UserError.option(
                        out + ": this command reads that file, and it would be lost. Write to another one.");
            }
        }
    }

    private static void inFolder(Path out) {
        Path folder = out.toAbsolutePath().getParent();
        if (folder == null) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new UserError(
                    Cli.FAULT,
                    out + ": not written, there is no folder " + folder + ". Make it first, or write to another one.");
        }
        if (!Files.isSymbolicLink(out) && !Files.isWritable(folder)) {
            throw new UserError(
                    Cli.FAULT,
                    out + ": not written (no permission to write in " + folder + "). Write to another folder.");
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
        if (folder == null) {
            return;
        }
        if (folder.toString().isEmpty()) {
            throw UserError.option("the name of the folder is empty. Write one, or . for this one.");
        }
        if (Files.isDirectory(folder)) {
            return;
        }
        if (Files.exists(folder)) {
            throw UserError.option(folder + ": that is a file, and a folder is wanted. Write the name of a folder.");
        }
        inFolder(folder);
    }

    /** Makes the folder where it is missing, and tells whether it was. */
    private static boolean made(Path folder) {
        if (folder == null || Files.isDirectory(folder)) {
            return false;
        }
        try {
            Files.createDirectory(folder);
            return true;
        } catch (IOException e) {
            throw new UserError(Cli.FAULT, folder + ": this folder cannot be made" + why(e) + ". Nothing was written.");
        }
    }

    /**
     * Writes a set: all on the disk first, then all in place, so that a full disk leaves the old set.
     *
     * @param folder made where it is missing, and taken away again where nothing could be written; null for none
     */
    static void writeAll(Path folder, Map<Path, String> files) {
        boolean made = made(folder);
        Map<Path, AtomicFile.Staged> staged = new LinkedHashMap<>();
        List<Path> placed = new ArrayList<>();
        Path at = null;
        try {
            for (Map.Entry<Path, String> f : files.entrySet()) {
                at = f.getKey();
                staged.put(at, AtomicFile.stage(at, f.getValue().getBytes(StandardCharsets.UTF_8)));
            }
            for (Map.Entry<Path, AtomicFile.Staged> f : staged.entrySet()) {
                at = f.getKey();
                f.getValue().place();
                placed.add(at);
            }
        } catch (IOException e) {
            throw new UserError(Cli.FAULT, at + ": not written (" + e.getMessage() + "). " + left(files, placed));
        } finally {
            staged.values().forEach(Output::drop);
            if (made && placed.isEmpty()) {
                folder.toFile().delete();
            }
        }
    }

    private static void drop(AtomicFile.Staged staged) {
        try {
            staged.close();
        } catch (IOException leftForTheNextWrite) {
            return;
        }
    }

    private static String left(Map<Path, String> files, List<Path> placed) {
        return placed.isEmpty()
                ? files.size() == 1
                        ? stands(files.keySet().iterator().next())
                        : "None of the " + files.size() + " files was written; what stood there stands as it was."
                : "The set is not whole: new are "
                        + placed.stream().map(Path::toString).collect(Collectors.joining(", "))
                        + "; do not use it with the others.";
    }

    private static String stands(Path file) {
        return Files.isRegularFile(file) ? "The old file stands as it was." : "No file was left there.";
    }

    /** A path as it may be shown. */
    static String name(Path path) {
        return PlainSigns.shown(path.toString());
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
            throw new UserError(Cli.FAULT, file + ": not written (" + e.getMessage() + "). " + stands(file));
        }
    }

    static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
