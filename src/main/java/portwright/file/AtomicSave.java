package portwright.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/** Writes a file whole or not at all. */
final class AtomicSave {
    private AtomicSave() {}

    /** Sees the bytes just before they are forced to disk; a test makes it fail there. */
    interface BeforeForce {
        void run(byte[] bytes) throws IOException;
    }

    static void write(Path file, byte[] bytes) throws IOException {
        write(file, bytes, written -> {});
    }

    static void write(Path file, byte[] bytes, BeforeForce before) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : followed(file.toAbsolutePath(), 0);
        if (Files.isDirectory(target)) {
            throw new IOException(file + " is a folder");
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new IOException(file + " is write-protected");
        }
        Path folder = target.getParent();
        Path temp = Files.createTempFile(folder, "." + target.getFileName() + "-", ".tmp");
        try {
            try (FileChannel out = FileChannel.open(temp, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    out.write(rest);
                }
                before.run(bytes);
                out.force(true);
            }
            permissions(target, temp);
            move(temp, target);
        } finally {
            Files.deleteIfExists(temp);
        }
        forceFolder(folder);
    }

    /** Where a dangling link leads. */
    private static Path followed(Path file, int steps) throws IOException {
        if (!Files.isSymbolicLink(file)) {
            return file;
        }
        if (steps > 40) {
            throw new IOException(file + " is a link that leads round in a circle");
        }
        return followed(file.resolveSibling(Files.readSymbolicLink(file)), steps + 1);
    }

    private static void permissions(Path target, Path temp) throws IOException {
        PosixFileAttributeView made = Files.getFileAttributeView(temp, PosixFileAttributeView.class);
        if (made == null) {
            return;
        }
        if (Files.exists(target)) {
            made.setPermissions(Files.getPosixFilePermissions(target));
        } else {
            made.setPermissions(PosixFilePermissions.fromString("rw-r--r--"));
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
