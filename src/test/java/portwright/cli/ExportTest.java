package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import portwright.file.DesignText;
import portwright.file.Starters;

/** The files for plotters, cutters and spreadsheets, measured as the one who gets them would. Two inlets of 1 1/8 in. */
class ExportTest {
    private static final double MM_PER_INCH = 25.4;
    /** How far the starter's back inlet lies to the right of the front one and behind it, in. */
    private static final double ACROSS_IN = -2 * (7 / 32.0);

    private static final double ALONG_IN = 2 * (2 + 5 / 8.0);

    @TempDir
    Path folder;

    @Test
    void aCutterFindsTheHolesAndNothingElseAtFullSize() throws Exception {
        export("--svg", folder.toString(), "--part", "floor");
        for (String name : List.of("floor-hot.svg", "floor-cold.svg")) {
            Element svg = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(folder.resolve(name).toFile())
                    .getDocumentElement();
            String[] box = svg.getAttribute("viewBox").split(" ", -1);
            assertThat(svg.getAttribute("width")).as("a unit is a millimetre").isEqualTo(box[2] + "mm");
            assertThat(svg.getAttribute("height")).isEqualTo(box[3] + "mm");
            List<Element> holes = new ArrayList<>();
            NodeList circles = svg.getElementsByTagName("circle");
            for (int i = 0; i < circles.getLength(); i++) {
                Element c = (Element) circles.item(i);
                if (c.getAttribute("class").equals("saw-circle")) {
                    holes.add(c);
                }
            }
            assertThat(holes).as(name).hasSize(2);
            for (Element hole : holes) {
                assertThat(number(hole, "r")).isCloseTo(1.125 * MM_PER_INCH / 2, within(1e-4));
            }
            assertThat(Math.hypot(
                            number(holes.get(0), "cx") - number(holes.get(1), "cx"),
                            number(holes.get(0), "cy") - number(holes.get(1), "cy")))
                    .isCloseTo(Math.hypot(ACROSS_IN, ALONG_IN) * MM_PER_INCH, within(2e-4));
        }
    }

    @Test
    void theScheduleMeasuresTheSameDistance() throws Exception {
        Path csv = folder.resolve("holes.csv");
        export("--csv", csv.toString());
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines).hasSize(4);
        List<String> head = List.of(lines.get(0).split(",", -1));
        int left = head.indexOf("from_left_mm");
        assertThat(Double.parseDouble(lines.get(2).split(",", -1)[left])
                        - Double.parseDouble(lines.get(1).split(",", -1)[left]))
                .isCloseTo(ACROSS_IN * MM_PER_INCH, within(0.01));
    }

    /** 1 7/8 in is 47.625 mm, 1/64 in 0.396875 mm; a spreadsheet gets them whole. */
    @Test
    void noLengthLosesItsLastFigures() throws Exception {
        Path csv = folder.resolve("holes.csv");
        Path design = withPort("name", "inlet A", "diameter", "1 1/64 in");
        assertThat(run("export", design.toString(), "--csv", csv.toString()).exit())
                .isZero();
        assertThat(Files.readAllLines(csv).get(1).split(",", -1)[4]).isEqualTo("25.796875");
    }

    @Test
    void aNameCannotSteerASpreadsheet() throws Exception {
        Path csv = folder.resolve("holes.csv");
        Path design = withPort("name", "\u202Etelni\u202C A", "diameter", "1 1/8 in");
        assertThat(run("export", design.toString(), "--csv", csv.toString()).exit())
                .isZero();
        assertThat(Files.readAllLines(csv).get(1)).startsWith("1,\uFFFDtelni\uFFFD A,");
    }

    @Test
    void signsThatTheTypeFaceLacksAreTold() throws Exception {
        Path design = withPort("name", "\u7AAF \uD83D\uDD25", "diameter", "1 1/8 in");
        String d = design.toString();
        for (String[] args : new String[][] {
            {"export", d, "--svg", folder.toString(), "--part", "floor"},
            {"card", d, "-o", folder.resolve("c.pdf").toString(), "--despite-stops"},
            {"sheet", d, "-o", folder.resolve("s.pdf").toString(), "--part", "floor", "--face", "hot"}
        }) {
            Run r = run(args);
            assertThat(r.exit()).as(args[0] + r.err()).isZero();
            assertThat(r.out()).as(args[0]).contains("not in the type face", "U+7AAF", "U+1F525");
        }
    }

    @Test
    void theFolderIsMadeAndItsParentIsNot() throws Exception {
        Path made = folder.resolve("cut");
        export("--svg", made.toString(), "--part", "floor", "--face", "hot");
        assertThat(made.resolve("floor-hot.svg")).isRegularFile();
        Path nowhere = folder.resolve("no").resolve("cut");
        Run r = run("export", STARTER, "--svg", nowhere.toString());
        assertThat(r.exit()).isEqualTo(Cli.FAULT);
        assertThat(r.err()).contains("there is no folder " + folder.resolve("no"));
        assertThat(folder.resolve("no")).doesNotExist();
        Path file = Files.writeString(folder.resolve("file"), "mine");
        r = run("export", STARTER, "--svg", file.toString());
        assertThat(r.exit()).isEqualTo(Cli.MISUSE);
        assertThat(r.err()).contains(file + ": that is a file, and a folder is wanted");
    }

    @Test
    void aStoppedDesignIsRefusedInTrueWordsAndLeavesNoFolder() throws Exception {
        Path design = withPort("name", "inlet A", "diameter", "9 in");
        Path cut = folder.resolve("cut");
        for (String[] what : new String[][] {
            {"--svg", cut.toString()}, {"--csv", folder.resolve("h.csv").toString()}
        }) {
            Run r = run("export", design.toString(), what[0], what[1]);
            assertThat(r.exit()).isEqualTo(Cli.STOP);
            assertThat(r.err())
                    .contains("Not exported: ", "forbid")
                    .contains("sheet --despite-stops")
                    .doesNotContain("add --despite-stops");
            assertThat(Path.of(what[1])).doesNotExist();
        }
    }

    @Test
    void twoThingsDoNotGoToOneFile() throws Exception {
        String one = folder.resolve("one").toString();
        Run r = run(
                "export",
                STARTER,
                "--csv",
                one,
                "--md",
                folder.resolve(".").resolve("one").toString());
        assertThat(r.exit()).isEqualTo(Cli.MISUSE);
        assertThat(r.err()).contains("two things would go to that one file");
        assertThat(Path.of(one)).doesNotExist();
    }

    /** Which of two thermocouples is the lower one is not told where one has no place. */
    @Test
    void aCardOfThermocouplesWithoutPlaces() throws Exception {
        String one =
                "{\"kind\": \"thermocouple\", \"name\": \"tc %d\", \"on\": \"wall\", \"panel\": 1, \"diameter\": \"8 mm\"}";
        DesignText text = Starters.find("octagon-17").orElseThrow();
        text = text.set("kiln.fittings", "[" + one.formatted(1) + ", " + one.formatted(2) + "]");
        Path design = Files.writeString(folder.resolve("design.json"), text.toText());
        Run r = run("card", design.toString(), "-o", folder.resolve("c.pdf").toString(), "--despite-stops");
        assertThat(r.err()).isEmpty();
        assertThat(r.exit()).isZero();
    }

    private static final String STARTER = "templates/octagon-17.json";

    /** The starter with two fields of its first port changed, and of the burner that stands there. */
    private Path withPort(String field, String value, String other, String otherValue) throws Exception {
        DesignText text = Starters.find("octagon-17").orElseThrow();
        String name = text.get("ports[0].name").orElseThrow();
        text = text.setText("ports[0]." + field, value).setText("ports[0]." + other, otherValue);
        for (int i = 0; text.get("burners[" + i + "].port").isPresent(); i++) {
            if (text.get("burners[" + i + "].port").get().equals(name)) {
                text = text.setText(
                        "burners[" + i + "].port", text.get("ports[0].name").get());
            }
        }
        return Files.writeString(folder.resolve("design.json"), text.toText());
    }

    private record Run(int exit, String out, String err) {}

    private static Run run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Cli.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Run(exit, out.toString(), err.toString());
    }

    private static double number(Element e, String name) {
        return Double.parseDouble(e.getAttribute(name));
    }

    private static void export(String... what) {
        List<String> args = new ArrayList<>(List.of("export", STARTER));
        args.addAll(List.of(what));
        StringWriter err = new StringWriter();
        assertThat(Cli.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args.toArray(String[]::new)))
                .as(err.toString())
                .isZero();
    }
}
