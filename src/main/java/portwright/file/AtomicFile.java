package portwright.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one writer of files: whole or not at all. The bytes go into a temporary file in the same folder, are forced to the disk, and take the
 * old file's place in one step. A write that fails removes its temporary file; one that is killed leaves {@code .portwright-PID-….tmp} ({@link Maker}), which
 * the next write in that folder removes.
 */
public final class AtomicFile {
    private static final Pattern TEMPORARY = Pattern.compile("\\.portwright-(\\d+-(?:at\\d+-)?[0-9a-f-]{36})\\.tmp");
    private static final int MOST_LINKS = 40;

    private AtomicFile() {}

    /**
     * Writes the bytes. Permissions of an old file stay; a symbolic link stays and its target is replaced.
     *
     * @throws IOException with a sentence for the user when it cannot be written; the old file, if any, is whole and no temporary file is left
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        try (Staged staged = stage(file, bytes)) {
            staged.place();
        }
    }

    /**
     * Puts the bytes beside the file, on the disk but not in its place yet; as {@link #write} else. Several files of one set are staged before
     * the first is placed.
     *
     * @throws IOException with a sentence for the user when it cannot be written; no temporary file is left then
     */
    public static Staged stage(Path file, byte[] bytes) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : followed(file.toAbsolutePath(), 0);
        Path folder = target.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IOException("there is no folder " + folder);
        }
        if (Files.isDirectory(target)) {
            throw new IOException(file + " is a folder");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new IOException(file + " is a device or pipe; write to a file");
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new IOException(file + " is write-protected");
        }
        sweep(folder);
        Staged staged = new Staged(folder.resolve(".portwright-" + Maker.me() + UUID.randomUUID() + ".tmp"), target);
        boolean whole = false;
        try {
            fill(staged.temp, bytes);
            keepPermissions(target, staged.temp);
            whole = true;
            return staged;
        } catch (FileSystemException e) {
            throw new IOException(reason(e, folder), e);
        } finally {
            if (!whole) {
                staged.close();
            }
        }
    }

    /** Bytes that wait beside their file; closed without being placed they are gone. */
    public static final class Staged implements AutoCloseable {
        private final Path temp;
        private final Path target;

        private Staged(Path temp, Path target) {
            this.temp = temp;
            this.target = target;
        }

        /** Takes the old file's place in one step. */
        public void place() throws IOException {
            try {
                move(temp, target);
            } catch (FileSystemException e) {
                throw new IOException(reason(e, target.getParent()), e);
            }
            forceFolder(target.getParent());
        }

        @Override
        public void close() throws IOException {
            Files.deleteIfExists(temp);
        }
    }

    private static String reason(FileSystemException e, Path folder) {
        if (e instanceof AccessDeniedException) {
            return "no permission to write in " + folder;
        }
        return e.getReason() != null ? e.getReason() : folder + " takes no file";
    }

    private static void fill(Path temp, byte[] bytes) throws IOException {
        try (FileChannel out = FileChannel.open(temp, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                out.write(rest);
            }
            out.force(true);
        }
    }

    /** Removes what writes of killed programs left in the folder. */
    private static void sweep(Path folder) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".portwright-*.tmp")) {
            for (Path p : left) {
                Matcher m = TEMPORARY.matcher(p.getFileName().toString());
                if (m.matches() && !Maker.alive(m.group(1))) {
                    Files.deleteIfExists(p);
                }
            }
        } catch (IOException notPossibleHere) {
            return;
        }
    }

    /** Where a dangling link leads. */
    private static Path followed(Path file, int steps) throws IOException {
        if (!Files.isSymbolicLink(file)) {
            return file;
        }
        if (steps > MOST_LINKS) {
            throw new IOException(file + " is a link that leads round in a circle");
        }
        return followed(file.resolveSibling(Files.readSymbolicLink(file)), steps + 1);
    }

    private static void keepPermissions(Path target, Path temp) throws IOException {
        PosixFileAttributeView made = Files.getFileAttributeView(temp, PosixFileAttributeView.class);
        if (made != null && Files.exists(target)) {
            made.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    private static void move(Path temp, Path target) throws IOException {
        try {
            Files.move(temp, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temp, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Makes the new name last through a power cut where the system allows it. */
    private static void forceFolder(Path folder) {
        try (FileChannel c = FileChannel.open(folder, StandardOpenOption.READ)) {
            c.force(true);
        } catch (IOException notPossibleHere) {
            return;
        }
    }
}
