package portwright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.TreeMap;

/**
 * Runs mutants in a process of its own, whose heap is the memory that a command may take, and prints a line for each that fails, then sums.
 * Time is processor time of the thread that works: other work on the machine takes none of it.
 */
public final class MutantRun {
    /** What a command may take, ms of the processor; a promise of the program, not a measure of its speed. */
    static final long LIMIT_MS = 2000;

    /** The same of {@code propose}, a search that tells how far it is. */
    static final long PROPOSE_LIMIT_MS = 30_000;

    /** A case that has taken so much more is not waited for. */
    private static final int GIVEN_UP = 3;

    private static final int TRIES = 3;
    private static final long LOOK_MS = 100;
    private static final int QUOTED = 700;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Path folder;
    private final Path keep;
    private final int slower;
    private final MutantCases cases;
    private final Map<String, Long> slowest = new TreeMap<>();
    private final Map<String, Long> spent = new TreeMap<>();
    private final Map<String, Integer> exits = new TreeMap<>();

    private record Outcome(int exit, long ms, String out, String err, String behind) {}

    private MutantRun(Path folder, Path keep, int slower) throws IOException {
        this.folder = folder;
        this.keep = keep;
        this.slower = slower;
        cases = new MutantCases(folder);
    }

    /**
     * Arguments: first case, the one after the last, folder to work in, folder for the files of cases that fail, how many times slower than the machine
     * of the results page this one may be.
     */
    public static void main(String[] args) throws Exception {
        PrintStream say = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        MutantRun run = new MutantRun(Path.of(args[2]), Path.of(args[3]), Integer.parseInt(args[4]));
        for (int i = Integer.parseInt(args[0]); i < Integer.parseInt(args[1]); i++) {
            MutantCases.Case c = run.cases.write(i);
            String fault = run.fault(c);
            if (fault != null) {
                say.println("FAIL " + c.what() + " -> " + fault.replace('\n', ' ') + " Files: " + run.kept(c));
            }
        }
        run.exits.forEach((k, n) -> say.println("EXIT " + k + " " + n));
        run.slowest.forEach(
                (k, ms) -> say.println("TIME " + k + " most " + ms + " ms, in all " + run.spent.get(k) + " ms"));
        System.exit(0);
    }

    private long limitMs(String command) {
        return slower * (command.equals("propose") ? PROPOSE_LIMIT_MS : LIMIT_MS);
    }

    /** What is wrong with a case; null where nothing is. */
    private String fault(MutantCases.Case c) throws Exception {
        String command = c.args()[0];
        Outcome o = outcome(c);
        for (int again = 1; o != null && again < TRIES && o.ms > limitMs(command); again++) {
            Outcome warm = outcome(c);
            o = warm == null || warm.ms < o.ms ? warm : o;
        }
        if (o == null) {
            return "not done after " + GIVEN_UP * limitMs(command) + " ms of the processor.";
        }
        slowest.merge(command, o.ms, Math::max);
        spent.merge(command, o.ms, Long::sum);
        exits.merge(command + " " + o.exit, 1, Integer::sum);
        if (o.ms > limitMs(command)) {
            return "takes " + o.ms + " ms of the processor, warm.";
        }
        String said = o.out + "\n" + o.err + "\n" + o.behind;
        if (o.exit < 0
                || o.exit > 2
                || said.contains("\tat ")
                || said.contains("Exception")
                || o.exit == 2 && o.err.isBlank()
                || numberThatIsNone(c, o)) {
            return o.exit + ": " + said.substring(0, Math.min(QUOTED, said.length()));
        }
        return null;
    }

    /** Null where it was given up. */
    private Outcome outcome(MutantCases.Case c) throws InterruptedException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        ByteArrayOutputStream behind = new ByteArrayOutputStream();
        PrintStream before = System.err;
        System.setErr(new PrintStream(behind, true, StandardCharsets.UTF_8));
        int[] exit = {-1};
        long[] cpu = {0};
        Thread t = new Thread(
                () -> {
                    try {
                        exit[0] = Cli.run(new PrintWriter(out), new PrintWriter(err), c.args());
                    } catch (OutOfMemoryError | StackOverflowError e) {
                        err.write(e.toString());
                    }
                    cpu[0] = THREADS.getCurrentThreadCpuTime();
                },
                "mutant");
        t.setDaemon(true);
        t.start();
        long most = GIVEN_UP * limitMs(c.args()[0]) * 1_000_000;
        while (t.isAlive()) {
            t.join(LOOK_MS);
            if (THREADS.getThreadCpuTime(t.getId()) > most) {
                return null;
            }
        }
        System.setErr(before);
        return new Outcome(
                exit[0], cpu[0] / 1_000_000, out.toString(), err.toString(), behind.toString(StandardCharsets.UTF_8));
    }

    /** A message may quote what was given; nothing else may hold the words. */
    private boolean numberThatIsNone(MutantCases.Case c, Outcome o) throws IOException {
        String command = c.args()[0];
        String all = o.out;
        if (command.equals("export") && o.exit == 0) {
            all += Files.readString(folder.resolve("out.csv")) + Files.readString(folder.resolve("out.md"));
        } else if ((command.equals("forecast") || command.equals("record")) && o.exit == 0 && c.asks("--csv")) {
            all += Files.readString(folder.resolve("out.csv"));
        }
        if (c.asks("--json") && o.exit < 2) {
            new ObjectMapper().readTree(o.out);
        }
        return !c.given().contains("NaN") && all.contains("NaN")
                || !c.given().contains("Infinity") && all.contains("Infinity");
    }

    /** Where the files of a case that fails are kept, for the one who mends. */
    private Path kept(MutantCases.Case c) throws IOException {
        Path place = Files.createDirectories(keep.resolve(String.valueOf(c.number())));
        for (Path p : c.files()) {
            Files.copy(p, place.resolve(p.getFileName()), StandardCopyOption.REPLACE_EXISTING);
        }
        return place;
    }
}
