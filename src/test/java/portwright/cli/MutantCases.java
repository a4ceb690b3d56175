package portwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import portwright.review.RecordBench;

/**
 * Cases by number, each with a seed of its own: a mutated design, often a mutated log, and a command. Below nought stand crowds: one list of
 * a starter filled to the most that the file may hold, all in one place, with each of the commands that draw or judge them.
 */
final class MutantCases {
    private static final long SEED = 20260802L;

    /** First crowd; {@link #FEW_CROWDS} the first of those with ports alone of one starter. */
    static final int ALL_CROWDS = -8 * 7 * 4;

    static final int FEW_CROWDS = -4;

    private static final List<String> LISTS = List.of(
            "/ports", "/kiln/fittings", "/kiln/elements", "/shelves", "/burners", "/firing/steps", "/room/openings");
    private static final List<String> CROWD_COMMANDS = List.of("check", "sheet", "card", "export");
    private static final int MOST_PORTS = 40;
    private static final int MOST_ITEMS = 100;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path folder;
    private final List<String> designs = new ArrayList<>();
    private final String log = RecordBench.healthyCsv(1.12, 5e-4);
    private final Path logFile;
    private final Path goodDesign;

    /**
     * One case.
     *
     * @param given all that the command reads, for what a message may quote
     * @param files the mutated files
     */
    record Case(int number, String[] args, String given, List<Path> files) {
        String what() {
            return "case " + number + " (seed " + seed(number) + "): " + String.join(" ", args);
        }

        boolean asks(String option) {
            return Arrays.asList(args).contains(option);
        }
    }

    MutantCases(Path folder) throws IOException {
        this.folder = folder;
        try (Stream<Path> all = Files.list(Path.of("templates"))) {
            for (Path p :
                    all.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                designs.add(Files.readString(p));
            }
        }
        String good = RecordBench.text().toText();
        designs.add(good);
        logFile = Files.writeString(folder.resolve("log.csv"), log);
        goodDesign = Files.writeString(folder.resolve("good.json"), good);
    }

    private static long seed(int number) {
        return SEED * 1_000_003 + number;
    }

    /** Writes the case's files. */
    Case write(int number) throws IOException {
        if (number < 0) {
            return crowd(number);
        }
        Random random = new Random(seed(number));
        String text = DesignMutant.of(designs.get(random.nextInt(designs.size())), random);
        Path design = Files.writeString(
                folder.resolve("mutant.json"), text.replace("\uD800", "\\ud800"), StandardCharsets.UTF_8);
        String[] args = command(number, random, design.toString());
        String given = text;
        List<Path> files = new ArrayList<>(List.of(design));
        if (args[0].equals("record") && random.nextBoolean()) {
            Path mutant = Files.writeString(folder.resolve("mutant.csv"), LogMutant.of(log, random));
            args[1] = mutant.toString();
            given += Files.readString(mutant);
            args[2] = random.nextInt(4) == 0 ? args[2] : goodDesign.toString();
            files.add(mutant);
        }
        return new Case(number, args, given, files);
    }

    private Case crowd(int number) throws IOException {
        int n = -1 - number;
        String command = CROWD_COMMANDS.get(n % CROWD_COMMANDS.size());
        String list = LISTS.get(n / CROWD_COMMANDS.size() % LISTS.size());
        JsonNode root = JSON.readTree(designs.get(n / CROWD_COMMANDS.size() / LISTS.size()));
        if (root.at(list) instanceof ArrayNode items && !items.isEmpty()) {
            int most = list.equals("/ports") ? MOST_PORTS : MOST_ITEMS;
            for (int k = 1; items.size() < most; k++) {
                JsonNode copy = items.get(0).deepCopy();
                if (copy instanceof ObjectNode o && o.has("name")) {
                    o.put("name", o.get("name").asText() + " " + k);
                }
                items.add(copy);
            }
        }
        String text = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
        Path design = Files.writeString(folder.resolve("crowd.json"), text);
        String out = folder.resolve("out").toString();
        String[] args = command.equals("check")
                ? new String[] {command, design.toString()}
                : command.equals("export")
                        ? new String[] {command, design.toString(), "--csv", out + ".csv", "--md", out + ".md"}
                        : new String[] {command, design.toString(), "-o", out + ".pdf", "--despite-stops"};
        return new Case(number, args, text, List.of(design));
    }

    private String[] command(int i, Random random, String design) {
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
                    ? new String[] {"record", logFile.toString(), design, "--json", "--csv", out + ".csv"}
                    : new String[] {"record", logFile.toString(), design};
        }
        return new String[] {"propose", design, "--inlets", "2", "--flues", "1", "-o", out + i + ".json"};
    }
}
