package portwright.calc.firing.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a log from the disk. */
public final class LogFile {
    private static final long MOST_BYTES = 100_000_000;

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
            if (Files.size(file) > MOST_BYTES) {
                throw new LogException("larger than 100 MB. That is no log of one firing");
            }
            return LogParser.parse(Files.readAllBytes(file));
        } catch (NoSuchFileException e) {
            throw new LogException("there is no such file");
        } catch (IOException e) {
            throw new LogException("cannot be read (" + e.getMessage() + ")");
        }
    }
}
