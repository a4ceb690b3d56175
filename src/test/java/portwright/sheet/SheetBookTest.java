package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.Kiln;
import portwright.source.Source;

class SheetBookTest {
    private final Design club = Prints.read(Prints.club());
    private final SheetOptions a4 = SheetOptions.plain(Paper.parse("a4"));

    private static CheckResult stopped(Design d) {
        Finding f = new Finding(
                "element-clearance",
                Severity.STOP,
                Forbids.DRILLING,
                List.of("inlet A", "E1"),
                null,
                null,
                "8.0 mm of brick between inlet A and groove E1; 25 mm wanted.",
                "Move inlet A 17 mm.",
                Source.practice("25 mm of sound brick"),
                false,
                List.of());
        return new CheckResult(d.title(), Verdict.STOP, Verdict.CLEAR, List.of(f, f), List.of(), List.of(), null);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument d = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(d);
        }
    }

    /** What the first sheet warns of is read whole, on the narrowest paper too. */
    @Test
    void theWarningsOfTheFirstSheetAreNotCutOff() throws IOException {
        Finding f = new Finding(
                "cylinder-boil-off",
                Severity.STOP,
                Forbids.LIGHTING,
                List.of(),
                null,
                null,
                "The cylinder freezes.",
                "Take a larger one.",
                Source.practice("boil-off"),
                false,
                List.of());
        CheckResult r =
                new CheckResult(club.title(), Verdict.CLEAR, Verdict.STOP, List.of(f), List.of(), List.of(), null);
        for (String paper : List.of("a4", "letter")) {
            SheetOptions p = SheetOptions.plain(Paper.parse(paper));
            SheetOptions o = new SheetOptions(p.paper(), p.part(), p.face(), p.scaleX(), p.scaleY(), false, 94);
            byte[] pdf = SheetBook.print(r, KilnGeometry.of(club), "k.json", o).pdf();
            assertThat(text(pdf).replaceAll("\\s+", " "))
                    .contains("94 values are still the starter's: measure your own kiln first.")
                    .contains("Read the cures before you drill: a hole cannot be moved afterwards.");
        }
    }

    /** Nothing in a design tells whether an element was forgotten: the first sheet asks for a count before drilling. */
    @Test
    void theFirstSheetAsksToCountTheElementRows() throws IOException {
        Design d = Prints.read(Path.of("templates/octagon-17.json"));
        String words = text(Prints.print(d, SheetOptions.plain(Paper.parse("a4")))
                        .pdf())
                .replaceAll("\\s+", " ");
        assertThat(words)
                .contains("Before you drill, open the kiln and count the element rows. Drawn here: floor none,"
                        + " lid none, walls " + d.kiln().elements().size() + ". Where you find more, draw them first");
    }

    /** A sheet in the middle of a slab on which no line falls is printed, says why, and stands in the plan of joining. */
    @Test
    void sheetsWithoutALineSayWhyTheyArePrinted() throws IOException {
        Design d = Prints.read(Path.of("templates/front-loader-18.json"));
        SheetBook.Print p = Prints.print(d, SheetOptions.plain(Paper.parse("a4")));
        String words = text(p.pdf()).replaceAll("\\s+", " ");
        assertThat(words.split("no line of the kiln between these trim lines", -1))
                .as("one sheet says so")
                .hasSize(2);
        assertThat(words).contains("No line of the kiln lies between the trim lines of W1U-D2: join it all the same");
        assertThat(p.layouts()).allSatisfy(l -> assertThat(l.tiles()).allMatch(t -> t.page() > 0));
    }

    /** Of the common papers letter leaves words the least room; the longest title of a starter stands whole on every sheet. */
    @Test
    void noWordOfAStarterIsCut() throws IOException {
        Design d = Prints.read(Path.of("templates/oval-23.json"));
        for (String paper : List.of("a4", "letter")) {
            String words = text(Prints.print(
                            d,
                            new SheetOptions(
                                    Paper.parse(paper), SheetOptions.Part.FLOOR, SheetOptions.Side.COLD, 1, 1, false))
                    .pdf());
            assertThat(words).as(paper).doesNotContain("…").contains("31 3/4 in");
        }
    }

    @Test
    void sameDesignSameBytes() {
        assertThat(Prints.print(club, a4).pdf())
                .isEqualTo(Prints.print(Prints.read(Prints.club()), a4).pdf());
    }

    /** Nine hundred millimetres of paper: the first sheet keeps together, so that it can be cut off and kept. */
    @Test
    void onLargePaperTheFirstSheetIsABlockToCutOff() throws IOException {
        byte[] pdf =
                Prints.print(club, SheetOptions.plain(Paper.parse("900x900mm"))).pdf();
        try (PDDocument d = Loader.loadPDF(pdf)) {
            PrintedPage first = new PrintedPage(d.getPage(0));
            assertThat(first.words).containsKey("cut off and keep with the kiln's papers");
            assertThat(first.extent[2]).isLessThanOrEqualTo(421);
            assertThat(first.extent[1]).isGreaterThanOrEqualTo(900 - 446);
            assertThat(first.extent[3]).isLessThanOrEqualTo(900 - 12);
        }
        try (PDDocument d = Loader.loadPDF(Prints.print(club, a4).pdf())) {
            assertThat(new PrintedPage(d.getPage(0)).words)
                    .doesNotContainKey("cut off and keep with the kiln's papers");
        }
    }

    @Test
    void viewersAreToldNotToScale() throws IOException {
        try (PDDocument d = Loader.loadPDF(Prints.print(club, a4).pdf())) {
            assertThat(d.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            assertThat(d.getPage(0).getMediaBox().getWidth()).isEqualTo((float) (210 * 72 / 25.4));
        }
    }

    @Test
    void everySheetCarriesTheMark() throws IOException {
        SheetBook.Print p = Prints.print(club, a4);
        String all = text(p.pdf());
        assertThat(all.split(ContentMark.of(club).words(), -1).length - 1).isGreaterThanOrEqualTo(p.sheets());
        assertThat(all)
                .contains(
                        "sheet 1 of " + p.sheets(),
                        "sheet " + p.sheets() + " of " + p.sheets(),
                        "MIRRORED",
                        "Local codes",
                        "Offer up the real burner");
    }

    @Test
    void aStopForbidsPaper() throws IOException {
        KilnGeometry kiln = KilnGeometry.of(club);
        assertThatThrownBy(() -> SheetBook.print(stopped(club), kiln, "k.json", a4))
                .isInstanceOf(SheetRefused.class)
                .hasMessageContaining("2 stops forbid drilling");
        SheetOptions despite =
                new SheetOptions(Paper.parse("a4"), SheetOptions.Part.ALL, SheetOptions.Side.BOTH, 1, 1, true);
        SheetBook.Print p = SheetBook.print(stopped(club), kiln, "k.json", despite);
        try (PDDocument d = Loader.loadPDF(p.pdf())) {
            for (var page : d.getPages()) {
                PrintedPage read = new PrintedPage(page);
                assertThat(read.words).containsKey("2 STOPS: DO NOT DRILL");
                assertThat(read.filledCircles).noneMatch(c -> Math.abs(c.radius() - 1.5) < 0.05);
            }
        }
    }

    @Test
    void unknownElementsForbidPaper() {
        var k = club.kiln();
        Design d = Changed.of(club)
                .kiln(new Kiln(
                        k.plan(),
                        k.height(),
                        k.wall(),
                        k.floor(),
                        k.lid(),
                        k.leakArea(),
                        null,
                        k.fittings(),
                        k.standHeight(),
                        k.power(),
                        k.lossFactor()))
                .design();
        assertThatThrownBy(() -> Prints.print(d, a4))
                .isInstanceOf(SheetRefused.class)
                .hasMessageContaining("kiln.elements");
    }

    @Test
    void correctionsBeyondOneAndAHalfPercentAreRefused() {
        assertThatThrownBy(() -> new SheetOptions(
                        Paper.parse("a4"), SheetOptions.Part.ALL, SheetOptions.Side.BOTH, 1.016, 1, false))
                .hasMessageContaining("1.5 %");
        assertThatThrownBy(() -> new SheetOptions(
                        Paper.parse("a4"), SheetOptions.Part.ALL, SheetOptions.Side.BOTH, 1, Double.NaN, false))
                .hasMessageContaining("--scale-y");
        assertThat(new SheetOptions(
                                Paper.parse("a4"), SheetOptions.Part.ALL, SheetOptions.Side.BOTH, 1.015, 0.985, false)
                        .corrected())
                .isTrue();
    }

    @Test
    void strangeTitlesPrint() throws IOException {
        String title = "窯 \uD83D\uDD25 \u202Eevil\u202C שלום <b> \u0000 " + "x".repeat(400);
        Design d = Changed.of(club).title(title).notes(null).design();
        SheetBook.Print p = Prints.print(d, a4);
        assertThat(p.remarks()).anyMatch(r -> r.contains("U+7AAF") && r.contains("U+1F525"));
        assertThat(text(p.pdf())).contains("Signs that the type face lacks");
    }

    @Test
    void scheduleFromTheBattens() {
        var rows = HoleSchedule.of(KilnGeometry.of(club));
        assertThat(rows.get(0).fromLeftMm())
                .isCloseTo((17 + 5) * 12.7 - 4 * 25.4, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(rows.get(0).bearingDeg()).isEqualTo(270);
        assertThat(HoleSchedule.csv(Prints.nothingFound(club), KilnGeometry.of(club))
                        .lines()
                        .toList())
                .hasSize(5)
                .element(1)
                .isEqualTo(
                        "1,inlet A,inlet,floor,34.925,1 3/8 in,34.925,53.925,177.8,279.4,\"outer left and outer back edge of the floor, seen from above\",101.6,270,"
                                + "Offer up the real parts first; local codes and licensed practice come first.");
        assertThatThrownBy(() -> HoleSchedule.csv(stopped(club), KilnGeometry.of(club)))
                .isInstanceOf(SheetRefused.class)
                .hasMessageContaining("2 stops forbid drilling");
    }

    /** With sixteen holes fewer rows stand on the first sheet, and the words on the plans keep clear of each other. */
    @Test
    void manyHolesLeaveThePlansReadable() throws IOException {
        TestKiln k = TestKiln.polygon(10, "23 in");
        for (int i = 0; i < 8; i++) {
            double turn = Math.toRadians(45 * i);
            k.inlet("inlet " + i, 120 * Math.sin(turn), 120 * Math.cos(turn), 25);
            k.flue("flue " + i, 100 * Math.sin(turn), 100 * Math.cos(turn), 25);
        }
        try (PDDocument d = Loader.loadPDF(Prints.print(k.build(), a4).pdf())) {
            PrintedPage first = new PrintedPage(d.getPage(0));
            assertThat(first.wordEnds.get("LEFT").x())
                    .isLessThan(first.words.get("RIGHT").x());
            assertThat(first.words.get("BACK").y() - first.words.get("LEFT").y())
                    .isGreaterThan(3.4);
            assertThat(first.words.get("LEFT").y() - first.words.get("FRONT").y())
                    .isGreaterThan(3.4);
        }
    }
}
