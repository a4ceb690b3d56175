package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.review.RecordBench;

/** Starter designs and firing logs changed along their structure: every command ends with 0, 1 or 2 and a sentence, and no number is none. */
class MutantsTest {
    private static final long SEED = 20260802L;
    private static final Duration HARD_END = Duration.ofSeconds(60);

    @TempDir
    Path folder;

    private final List<String> failures = new ArrayList<>();
    private final Map<String, Long> slowest = new TreeMap<>();
    private final Map<String, Long> spent = new TreeMap<>();
    private final Map<String, Integer> exits = new TreeMap<>();

    @Test
    void twoThousand() throws Exception {
        run(0, 2000);
        assertThat(failures).isEmpty();
        assertThat(exits.getOrDefault("check 0", 0) + exits.getOrDefault("check 1", 0))
                .as("many mutants are still designs: " + exits)
                .isGreaterThan(80);
    }

    @Test
    @Tag("slow")
    void aHundredThousand() throws Exception {
        run(2000, 102_000);
        System.out.println(exits + "\nslowest, processor ms: " + slowest + "\nin all, processor ms: " + spent);
        assertThat(failures).isEmpty();
    }

    /** Cases by number, each with a seed of its own. */
    void run(int from, int to) throws Exception {
        List<String> designs = new ArrayList<>();
        try (Stream<Path> all = Files.list(Path.of("templates"))) {
            for (Path p :
                    all.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                designs.add(Files.readString(p));
            }
        }
        designs.add(RecordBench.text().toText());
        String log = RecordBench.healthyCsv(1.12, 5e-4);
        Path logFile = Files.writeString(folder.resolve("log.csv"), log);
        Path goodDesign = Files.writeString(
                folder.resolve("good.json"), RecordBench.text().toText());
        PrintStream error = System.err;
        try {
            for (int i = from; i < to; i++) {
                Random random = new Random(SEED * 1_000_003 + i);
                Path design = folder.resolve("mutant.json");
                String text = DesignMutant.of(designs.get(random.nextInt(designs.size())), random);
                Files.writeString(design, text.replace("\uD800", "\\ud800"), StandardCharsets.UTF_8);
                String[] args = command(i, random, design.toString(), logFile.toString());
                String given = text;
                if (args[0].equals("record") && random.nextBoolean()) {
                    args[1] = Files.writeString(folder.resolve("mutant.csv"), LogMutant.of(log, random))
                            .toString();
                    given += Files.readString(Path.of(args[1]));
                    args[2] = random.nextInt(4) == 0 ? args[2] : goodDesign.toString();
                }
                one(i, given, text, args);
            }
        } finally {
            System.setErr(error);
        }
    }

    private String[] command(int i, Random random, String design, String log) {
        String out = folder.resolve("out").toString();
        String part = List.of("floor", "lid", "wall").get(random.nextInt(3));
        int n = i % 100;
        if (n < 20) {
            return new String[] {"check", design, "--json"};
        } else if (n < 28) {
            return new String[] {"check", design};
        } else if (n < 58) {
            String at = List.of("1100 °C", "20 °C", "700 °C", "1300 °C").get(random.nextInt(4));
            return n < 46
                    ? new String[] {"burn", design, "--at", at, "--json", "--damper", "30 %"}
                    : new String[] {"burn", design, "--at", at};
        } else if (n < 72) {
            return n < 66
                    ? new String[] {"forecast", design, "--json", "--csv", out + ".csv"}
                    : new String[] {"forecast", design};
        } else if (n < 80) {
            return new String[] {
                "export", design, "--svg", folder.toString(), "--csv", out + ".csv", "--md", out + ".md"
            };
        } else if (n < 83) {
            return new String[] {"sheet", design, "-o", out + ".pdf", "--part", part, "--face", "hot", "--despite-stops"
            };
        } else if (n < 90) {
            return new String[] {"card", design, "-o", out + ".pdf", "--despite-stops"};
        } else if (n < 99) {
            return n < 95
                    ? new String[] {"record", log, design, "--json", "--csv", out + ".csv"}
                    : new String[] {"record", log, design};
        }
        return new String[] {"propose", design, "--inlets", "2", "--flues", "1", "-o", out + ".json"};
    }

    private void one(int i, String given, String text, String[] args) throws Exception {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        ByteArrayOutputStream behind = new ByteArrayOutputStream();
        System.setErr(new PrintStream(behind, true, StandardCharsets.UTF_8));
        int[] exit = {-1};
        long[] cpu = {0};
        Thread t = new Thread(
                () -> {
                    exit[0] = Cli.run(new PrintWriter(out), new PrintWriter(err), args);
                    cpu[0] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                },
                "mutant");
        t.setDaemon(true);
        t.start();
        t.join(HARD_END.toMillis());
        long ms = cpu[0] / 1_000_000;
        String what = "case " + i + ": " + String.join(" ", args);
        if (t.isAlive()) {
            failures.add(what + " runs after " + HARD_END);
            keep(i, text);
            return;
        }
        slowest.merge(args[0], ms, Math::max);
        spent.merge(args[0], ms, Long::sum);
        exits.merge(args[0] + " " + exit[0], 1, Integer::sum);
        String said = out + "\n" + err + "\n" + behind.toString(StandardCharsets.UTF_8);
        if (exit[0] < 0
                || exit[0] > 2
                || said.contains("\tat ")
                || said.contains("Exception")
                || exit[0] == 2 && err.toString().isBlank()
                || numberThatIsNone(given, args, exit[0], out.toString())) {
            failures.add(what + " -> " + exit[0] + ": " + said.substring(0, Math.min(700, said.length())));
            keep(i, text);
        }
    }

    /** A message may quote what was given; nothing else may hold the words. */
    private boolean numberThatIsNone(String given, String[] args, int exit, String out) throws IOException {
        String all = out;
        if (args[0].equals("export") && exit == 0) {
            all += Files.readString(folder.resolve("out.csv")) + Files.readString(folder.resolve("out.md"));
        } else if ((args[0].equals("forecast") || args[0].equals("record"))
                && exit == 0
                && List.of(args).contains("--csv")) {
            all += Files.readString(folder.resolve("out.csv"));
        }
        if (List.of(args).contains("--json") && exit < 2) {
            new ObjectMapper().readTree(out);
        }
        return !given.contains("NaN") && all.contains("NaN") || !given.contains("Infinity") && all.contains("Infinity");
    }

    /** For the one who mends: the design of a failed case. */
    private void keep(int i, String text) throws IOException {
        String place = System.getProperty("portwright.mutants");
        if (place != null) {
            Files.createDirectories(Path.of(place));
            Files.writeString(Path.of(place, i + ".json"), text.replace("\uD800", "\\ud800"));
            if (Files.exists(folder.resolve("mutant.csv"))) {
                Files.copy(
                        folder.resolve("mutant.csv"),
                        Path.of(place, i + ".csv"),
                        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
