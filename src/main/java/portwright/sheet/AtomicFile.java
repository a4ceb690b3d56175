package portwright.sheet;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all: a temporary file beside it, flushed to the disk, then renamed. */
public final class AtomicFile {
    private AtomicFile() {}

    /** Writes the bytes; after a failure the old file, if any, stands untouched and no other file is left. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path target = file.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IOException("There is no folder " + folder + ".");
        }
        if (Files.isDirectory(target)) {
            throw new IOException(target + " is a folder.");
        }
        Path temp = folder.resolve(".portwright-" + UUID.randomUUID() + ".tmp");
        try {
            try (FileChannel out = FileChannel.open(temp, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                ByteBuffer b = ByteBuffer.wrap(bytes);
                while (b.hasRemaining()) {
                    out.write(b);
                }
                out.force(true);
            }
            try {
                Files.move(temp, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(temp, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(temp);
        }
    }
}
