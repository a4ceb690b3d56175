package portwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file system in memory of 64 kB, mounted for one test. Needs the right to mount. */
public final class SmallDisk implements AutoCloseable {
    private final Path at;

    private SmallDisk(Path at) {
        this.at = at;
    }

    /** Mounts it; null where this process may not mount. */
    public static SmallDisk mount(Path at) throws IOException {
        Files.createDirectories(at);
        return run("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", at.toString()) ? new SmallDisk(at) : null;
    }

    public Path folder() {
        return at;
    }

    /** Uses up all space but about the given bytes. */
    public void fill(int leave) throws IOException {
        long free = Files.getFileStore(at).getUsableSpace();
        Files.write(at.resolve("ballast"), new byte[(int) Math.max(0, free - leave)]);
    }

    /** From now on nothing can be written. */
    public void readOnly() throws IOException {
        if (!run("mount", "-o", "remount,ro", at.toString())) {
            throw new IOException("cannot remount " + at);
        }
    }

    @Override
    public void close() throws IOException {
        if (!run("umount", at.toString())) {
            throw new IOException("cannot unmount " + at);
        }
    }

    private static boolean run(String... command) throws IOException {
        try {
            Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
            p.inputReader().lines().forEach(l -> {});
            return p.waitFor() == 0;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        } catch (IOException noSuchCommand) {
            return false;
        }
    }
}
