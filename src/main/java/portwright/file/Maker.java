package portwright.file;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The running program that made a file, told by the file's name: its process number and when it started, {@code PID-atMILLIS-…}. A number
 * alone is given again to another program, after a restart of the computer above all. {@code PID-…} where the start is unknown.
 */
public final class Maker {
    private static final Pattern NAME = Pattern.compile("(\\d{1,18})-(?:at(\\d{1,18})-)?.*");

    /** The system tells a start from the clock, which may be set while a program runs; a number is not given again this soon. */
    private static final long CLOCK_MILLIS = 30_000;

    private Maker() {}

    /** How the names of this program's files begin. */
    public static String me() {
        ProcessHandle p = ProcessHandle.current();
        return p.pid() + "-" + start(p).map(t -> "at" + t.toEpochMilli() + "-").orElse("");
    }

    /** Whether the program that made a file of the name still runs; another that got its number since does not count. */
    public static boolean alive(String name) {
        Matcher m = NAME.matcher(name);
        return m.matches()
                && ProcessHandle.of(Long.parseLong(m.group(1)))
                        .filter(ProcessHandle::isAlive)
                        .filter(p -> m.group(2) == null || startedAt(p, Long.parseLong(m.group(2))))
                        .isPresent();
    }

    private static boolean startedAt(ProcessHandle p, long millis) {
        return start(p).map(t -> Math.abs(t.toEpochMilli() - millis) <= CLOCK_MILLIS)
                .orElse(true);
    }

    private static Optional<Instant> start(ProcessHandle p) {
        return p.info().startInstant();
    }
}
