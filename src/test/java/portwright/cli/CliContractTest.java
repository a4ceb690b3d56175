package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.Starters;

/** The command line as scripts rely on it: exit status, where text goes, the fields of its JSON. */
class CliContractTest {
    private static final Path EXAMPLE = Path.of("src/test/resources/designs/contract-example.json");

    @TempDir
    Path folder;

    private record Run(int exit, String out, String err) {
        /** Results on one side, messages on the other; no number that is none, no trace. */
        Run clean() {
            for (String s : List.of(out, err)) {
                assertThat(s)
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContain("Exception")
                        .doesNotContain("\tat ");
            }
            return this;
        }
    }

    private static Run run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Cli.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Run(exit, out.toString(), err.toString()).clean();
    }

    private static DesignText example() throws IOException {
        return DesignFile.read(EXAMPLE).document();
    }

    private String file(String name, DesignText d) throws IOException {
        return Files.writeString(folder.resolve(name), d.toText()).toString();
    }

    /** One inlet drilled into the wall. */
    private String stopped() throws IOException {
        return file("stopped.json", example().set("ports[0].at", "[\"-8 in\", \"0 in\"]"));
    }

    private static Set<String> names(JsonNode o) {
        Set<String> out = new TreeSet<>();
        o.fieldNames().forEachRemaining(out::add);
        return out;
    }

    @Test
    void checkAnswersZeroOrOneWithTheResultOnOut() throws IOException {
        DesignText strongHood = example().setText("room.hood.flow", "1300 m3/h").setText("room.hood.diameter", "1.2 m");
        Run good = run("check", file("good.json", strongHood));
        assertThat(good.exit()).isZero();
        assertThat(good.out()).isNotBlank();
        assertThat(good.err()).isEmpty();
        Run stop = run("check", stopped());
        assertThat(stop.exit()).isEqualTo(1);
        assertThat(stop.out()).contains("inlet A");
        assertThat(stop.err()).isEmpty();
    }

    @Test
    void checkJsonHoldsTheFieldsOfTheContract() throws IOException {
        for (String design : List.of(
                EXAMPLE.toString(),
                stopped(),
                file(
                        "bare.json",
                        example()
                                .remove("room")
                                .remove("supply")
                                .remove("burners")
                                .remove("firing")
                                .remove("kiln.elements")))) {
            Run r = run("check", design, "--json");
            JsonNode root = new ObjectMapper().readTree(r.out());
            assertThat(names(root))
                    .contains("portwright", "title", "verdict", "findings", "notChecked", "assumed", "figures");
            assertThat(root.get("portwright").asInt()).isEqualTo(1);
            for (String purpose : List.of("drilling", "lighting")) {
                assertThat(root.get("verdict").get(purpose).asText()).isIn("stop", "incomplete", "caution", "clear");
            }
            boolean stop = false;
            for (JsonNode f : root.get("findings")) {
                assertThat(names(f))
                        .contains(
                                "rule",
                                "severity",
                                "forbids",
                                "parts",
                                "measured",
                                "limit",
                                "message",
                                "remedy",
                                "source",
                                "limitSetByUser");
                assertThat(f.get("severity").asText()).isIn("stop", "caution", "note");
                assertThat(f.get("forbids").isNull()
                                || Set.of("drilling", "lighting")
                                        .contains(f.get("forbids").asText()))
                        .isTrue();
                assertThat(names(f.get("source"))).contains("title", "place", "standing");
                assertThat(f.get("source").get("standing").asText())
                        .isIn("published", "practice", "memory", "judgement");
                for (String m : List.of("measured", "limit")) {
                    assertThat(f.get(m).isNull() || names(f.get(m)).containsAll(Set.of("value", "unit")))
                            .isTrue();
                }
                stop |= f.get("severity").asText().equals("stop");
            }
            assertThat(r.exit()).isEqualTo(stop ? 1 : 0);
            root.get("notChecked").forEach(n -> assertThat(names(n)).contains("rule", "needs", "forbids"));
            root.get("assumed").forEach(a -> assertThat(names(a)).contains("field", "value", "why"));
            assertThat(names(root.get("figures")))
                    .contains(
                            "inletAreaMm2",
                            "flueAreaMm2",
                            "flueToInletRatio",
                            "weakestFloorSectionShare",
                            "weakestLidSectionShare",
                            "chamberVolumeL",
                            "heatNetKw",
                            "gasKgPerH",
                            "gasWattsPerLitre",
                            "cylinderHours",
                            "freshAirM3PerH");
        }
    }

    @Test
    void limitsOfTheOwnerAreMarked() throws IOException {
        String design = file("own.json", example().set("limits", "{\"element-clearance\": \"200 mm\"}"));
        JsonNode root =
                new ObjectMapper().readTree(run("check", design, "--json").out());
        List<Boolean> set = new ArrayList<>();
        root.get("findings").forEach(f -> {
            if (f.get("rule").asText().equals("element-clearance")) {
                set.add(f.get("limitSetByUser").asBoolean());
            }
        });
        assertThat(set).isNotEmpty().containsOnly(true);
    }

    /** Also where nothing is found by them. */
    @Test
    void ownLimitsAreNamedInTheResult() throws IOException {
        String design = file(
                "stricter.json",
                example().set("limits", "{\"inside-chamber\": \"5 mm\", \"flue-inlet-ratio\": {\"stop\": 0.9}}"));
        JsonNode own = new ObjectMapper()
                .readTree(run("check", design, "--json").out())
                .get("ownLimits");
        assertThat(own).hasSize(2);
        assertThat(own.get(0).toString())
                .isEqualTo("{\"rule\":\"inside-chamber\",\"limit\":\"stop\",\"value\":\"5 mm\",\"ruleBook\":\"0 mm\"}");
        assertThat(own.get(1).toString())
                .isEqualTo("{\"rule\":\"flue-inlet-ratio\",\"limit\":\"stop\",\"value\":\"0.9\",\"ruleBook\":\"0.8\"}");
        assertThat(run("check", design).out())
                .contains("Your own limits (2)", "inside-chamber, stop: 5 mm (rule book 0 mm)");
        String none = file("none.json", example().remove("limits"));
        assertThat(new ObjectMapper()
                        .readTree(run("check", none, "--json").out())
                        .get("ownLimits"))
                .isEmpty();
    }

    /** Whose word comes first stands in every result, also for programs. */
    private static void localCodes(JsonNode o) {
        assertThat(o.isObject()).isTrue();
        assertThat(o.path("localCodes").asText()).startsWith("Local codes and licensed gas and electrical work");
    }

    @Test
    void burnAndForecastAnswerJson() throws IOException {
        JsonNode burn = new ObjectMapper()
                .readTree(run(
                                "burn",
                                EXAMPLE.toString(),
                                "--at",
                                "1100 °C",
                                "--damper",
                                "80 %",
                                "--damper",
                                "0 %",
                                "--json")
                        .out());
        assertThat(burn.isArray()).isTrue();
        assertThat(burn).hasSize(2);
        burn.forEach(CliContractTest::localCodes);
        Run f = run(
                "forecast",
                EXAMPLE.toString(),
                "--json",
                "--csv",
                folder.resolve("f.csv").toString());
        assertThat(f.exit()).isLessThanOrEqualTo(1);
        localCodes(new ObjectMapper().readTree(f.out()));
        localCodes(new ObjectMapper()
                .readTree(run("check", EXAMPLE.toString(), "--json").out()));
        assertThat(Files.readString(folder.resolve("f.csv")))
                .startsWith("hours,")
                .doesNotContain("NaN");
        String none = file("none.json", example().remove("firing"));
        assertThat(run("forecast", none).exit()).isEqualTo(2);
    }

    @Test
    void sheetAndCardRefuseAndLeaveNothing() throws IOException {
        Path pdf = folder.resolve("out.pdf");
        Run sheet = run("sheet", stopped(), "-o", pdf.toString());
        assertThat(sheet.exit()).isEqualTo(1);
        assertThat(sheet.out()).isEmpty();
        assertThat(sheet.err()).isNotBlank();
        assertThat(pdf).doesNotExist();
        assertThat(run("sheet", file("blind.json", example().remove("kiln.elements")), "-o", pdf.toString())
                        .exit())
                .isEqualTo(1);
        assertThat(pdf).doesNotExist();
        Run card = run("card", file("dark.json", example().remove("room")), "-o", pdf.toString());
        assertThat(card.exit()).isEqualTo(1);
        assertThat(pdf).doesNotExist();
        assertThat(run("sheet", stopped(), "-o", pdf.toString(), "--despite-stops", "--part", "floor", "--face", "hot")
                        .exit())
                .isZero();
        assertThat(Files.size(pdf)).isGreaterThan(1000);
        try (var left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString())
                            .filter(n -> !n.endsWith(".json") && !n.equals("out.pdf")))
                    .isEmpty();
        }
    }

    @Test
    void sheetAndCardAreWritten() {
        Path pdf = folder.resolve("good.pdf");
        Run sheet =
                run("sheet", EXAMPLE.toString(), "-o", pdf.toString(), "--paper", "900x900mm", "--scale-x", "1.002");
        assertThat(sheet.exit()).as(sheet.err()).isZero();
        assertThat(sheet.err()).isEmpty();
        assertThat(pdf).exists();
    }

    /** Both faces of everything on small paper is more than anyone tapes together: the command says how to get by with less. */
    @Test
    void manySheetsComeWithAWayToFewer() {
        String pdf = folder.resolve("many.pdf").toString();
        assertThat(run("sheet", EXAMPLE.toString(), "-o", pdf).out())
                .contains(
                        "Fewer sheets: only the sides that you drill from (--face drilled: floor from below, lid from above)");
        assertThat(run("sheet", EXAMPLE.toString(), "-o", pdf, "--part", "floor", "--face", "cold")
                        .out())
                .doesNotContain("Fewer sheets");
    }

    @Test
    void wrongUseIsTwo() throws IOException {
        String pdf = folder.resolve("x.pdf").toString();
        String good = EXAMPLE.toString();
        String text = Files.writeString(folder.resolve("text.json"), "{\"portwright\": 1")
                .toString();
        String bytes = Files.write(folder.resolve("bytes.json"), new byte[] {0, (byte) 0xff, (byte) 0xfe, 7})
                .toString();
        for (String[] args : new String[][] {
            {"check"},
            {"check", good, "--jsno"},
            {"chekc", good},
            {"check", folder.resolve("none.json").toString()},
            {"check", folder.toString()},
            {"check", text},
            {"check", bytes},
            {"sheet", good},
            {"sheet", good, "-o", pdf, "--paper", "b52"},
            {"sheet", good, "-o", pdf, "--part", "roof"},
            {"sheet", good, "-o", pdf, "--face", "warm"},
            {"sheet", good, "-o", pdf, "--scale-x", "1.2"},
            {"sheet", good, "-o", pdf, "--scale-y", "NaN_"},
            {"card", good, "-o", pdf, "--paper", "1x1mm"},
            {"burn", good},
            {"burn", good, "--at", "hot"},
            {"burn", good, "--at", "1100 °C", "--damper", "120 %"},
            {"new", "no-such-kiln", "-o", pdf},
            {"new"},
            {"forecast", text},
            {"burn", text, "--at", "1100 °C"},
            {"sheet", text, "-o", pdf},
            {"card", text, "-o", pdf}
        }) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int exit = Cli.run(new PrintWriter(out), new PrintWriter(err), args);
            assertThat(exit).as(String.join(" ", args) + ": " + err).isEqualTo(2);
            assertThat(out.toString()).as(String.join(" ", args)).isEmpty();
            assertThat(err.toString()).isNotBlank().doesNotContain("\tat ");
        }
        assertThat(Path.of(pdf)).doesNotExist();
    }

    @Test
    void unwritablePlaceIsThree() {
        String nowhere = folder.resolve("no/such/folder/out").toString();
        for (String[] args : new String[][] {
            {"sheet", EXAMPLE.toString(), "-o", nowhere + ".pdf", "--part", "lid", "--face", "hot"},
            {"new", "octagon-17", "-o", nowhere + ".json"},
            {"forecast", EXAMPLE.toString(), "--csv", nowhere + ".csv"},
            {"export", EXAMPLE.toString(), "--md", nowhere + ".md"},
            {"export", EXAMPLE.toString(), "--svg", nowhere}
        }) {
            Run r = run(args);
            assertThat(r.exit()).as(String.join(" ", args)).isEqualTo(3);
            assertThat(r.out()).isEmpty();
            assertThat(r.err()).contains(nowhere);
        }
    }

    /** An empty list means none; whatever a command then says, the program does not fail. */
    @Test
    void emptyListsAreNoFault() throws IOException {
        DesignText full = example();
        List<String> lists = new ArrayList<>();
        lists(full, "", lists);
        assertThat(lists)
                .contains(
                        "ports",
                        "shelves",
                        "burners",
                        "kiln.elements",
                        "kiln.fittings",
                        "firing.steps",
                        "room.openings");
        for (String path : lists) {
            String design = file("empty.json", full.set(path, "[]"));
            for (String[] args : new String[][] {{"check", design, "--json"}, {"burn", design, "--at", "1000 °C"}}) {
                Run r = run(args);
                assertThat(r.exit())
                        .as(path + " empty: " + args[0] + ": " + r.err())
                        .isBetween(0, 2);
            }
            if (!path.contains("[")) {
                assertThat(run("forecast", design).exit()).as(path).isBetween(0, 2);
                assertThat(run("sheet", design, "-o", folder.resolve("e.pdf").toString(), "--paper", "1200x1200mm")
                                .exit())
                        .as(path)
                        .isBetween(0, 2);
                assertThat(run("card", design, "-o", folder.resolve("c.pdf").toString())
                                .exit())
                        .as(path)
                        .isBetween(0, 2);
            }
        }
    }

    /** An inlet in the lid and a flue in the floor are odd, and no fault of the program. */
    @Test
    void portsInTheOtherSlabAreNoFault() throws IOException {
        for (String name : Starters.names()) {
            DesignText d = Starters.find(name).orElseThrow();
            for (int i = 0; i < d.size("ports"); i++) {
                String on = d.get("ports[" + i + "].on").orElse("");
                if (!on.equals("wall")) {
                    String other = on.equals("lid") ? "floor" : "lid";
                    Run r = run("check", file("odd.json", d.setText("ports[" + i + "].on", other)), "--json");
                    assertThat(r.exit())
                            .as(name + " port " + i + ": " + r.err())
                            .isBetween(0, 2);
                }
            }
        }
    }

    private static void lists(DesignText d, String path, List<String> out) {
        if (d.getJson(path).orElse("").startsWith("[")) {
            out.add(path);
        }
        for (String n : d.fields(path)) {
            lists(d, path.isEmpty() ? n : path + "." + n, out);
        }
        if (d.fields(path).isEmpty()) {
            for (int i = 0; i < d.size(path); i++) {
                lists(d, path + "[" + i + "]", out);
            }
        }
    }
}
