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

    private static double number(Element e, String name) {
        return Double.parseDouble(e.getAttribute(name));
    }

    private static void export(String... what) {
        List<String> args = new ArrayList<>(List.of("export", "templates/octagon-17.json"));
        args.addAll(List.of(what));
        StringWriter err = new StringWriter();
        assertThat(Cli.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args.toArray(String[]::new)))
                .as(err.toString())
                .isZero();
    }
}
