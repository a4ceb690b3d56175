package portwright.calc.firing.log;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a log from the disk. */
public final class LogFile {
    private static final int MOST_BYTES = 10_000_000;

    /** Three and a half days at one second. */
    private static final int MOST_LINES = 300_000;

    private LogFile() {}

    /**
     * The log in a file.
     *
     * @throws LogException when there is no such file, it cannot be read, or it is no log; the message does not name the file
     */
    public static FiringLog read(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new LogException("a folder, not a log");
            }
            byte[] bytes;
            try (InputStream in = Files.newInputStream(file)) {
                bytes = in.readNBytes(MOST_BYTES + 1);
            }
            if (bytes.length > MOST_BYTES) {
                throw new LogException(
                        "larger than 10 MB. That is no log of one firing; write one row in ten seconds, or the columns alone that are read");
            }
            if (lines(bytes) > MOST_LINES) {
                throw new LogException("more than " + MOST_LINES
                        + " lines. That is no log of one firing; write one row in ten seconds");
            }
            return LogParser.parse(bytes);
        } catch (NoSuchFileException e) {
            throw new LogException("there is no such file");
        } catch (AccessDeniedException e) {
            throw new LogException("cannot be read (no permission)");
        } catch (FileSystemException e) {
            throw new LogException("cannot be read (" + (e.getReason() == null ? "no such file" : e.getReason()) + ")");
        } catch (IOException e) {
            throw new LogException("cannot be read (" + e.getMessage() + ")");
        }
    }

    private static int lines(byte[] bytes) {
        int n = 0;
        for (int i = 0; i < bytes.length; i++) {
            boolean pair = bytes[i] == '\r' && i + 1 < bytes.length && bytes[i + 1] == '\n';
            n += bytes[i] == '\n' || bytes[i] == '\r' && !pair ? 1 : 0;
        }
        return n;
    }
}
