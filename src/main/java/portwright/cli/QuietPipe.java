package portwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/**
 * Standard output whose reader may leave, as {@code head} does once it has its lines: that is no fault, the rest is dropped without a word and
 * the command ends with the status of its own work. Every other trouble, such as a full disk, stays one.
 */
public final class QuietPipe extends FilterOutputStream {
    private static final Path STANDARD_OUT = Path.of("/proc/self/fd/1");

    private final BooleanSupplier pipe;
    private boolean left;

    /** @param pipe whether it goes to a pipe, which nothing but its reader can close; asked only in trouble */
    QuietPipe(OutputStream out, BooleanSupplier pipe) {
        super(out);
        this.pipe = pipe;
    }

    /** That of this process. */
    public static OutputStream standardOut() {
        return new QuietPipe(new FileOutputStream(FileDescriptor.out), QuietPipe::toPipe);
    }

    /** Where the system tells it: its own words for the trouble may be in any language. */
    private static boolean toPipe() {
        try {
            String to = Files.readSymbolicLink(STANDARD_OUT).toString();
            return to.startsWith("pipe:") || to.startsWith("socket:");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] b, int off, int len) throws IOException {
        if (!left) {
            try {
                out.write(b, off, len);
            } catch (IOException e) {
                leave(e);
            }
        }
    }

    @Override
    public void flush() throws IOException {
        if (!left) {
            try {
                out.flush();
            } catch (IOException e) {
                leave(e);
            }
        }
    }

    private void leave(IOException e) throws IOException {
        String words = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        left = words.contains("pipe") || pipe.getAsBoolean();
        if (!left) {
            throw e;
        }
    }
}
