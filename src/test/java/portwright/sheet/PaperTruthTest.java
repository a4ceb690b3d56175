package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.Changed;
import portwright.geometry.Circle;
import portwright.geometry.Face;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.Role;
import portwright.units.Quantity;

/** What stands on the paper, read back by another program's parser, against the design. Tolerance 0.05 mm everywhere. */
class PaperTruthTest {
    private static final double TOLERANCE_MM = 0.05;
    private static final double SAW_LINE_MM = 0.5;

    static Stream<Arguments> prints() {
        return Prints.all().stream()
                .flatMap(p -> Stream.of("a4", "letter", "a3")
                        .map(s -> Arguments.of(p.getFileName().toString(), p, s)));
    }

    private static List<PrintedPage> pages(byte[] pdf) throws IOException {
        List<PrintedPage> out = new ArrayList<>();
        try (PDDocument d = Loader.loadPDF(pdf)) {
            for (PDPage p : d.getPages()) {
                out.add(new PrintedPage(p));
            }
        }
        return out;
    }

    private static Map<String, List<PrintedPage>> byView(List<PrintedPage> pages) {
        Map<String, List<PrintedPage>> out = new LinkedHashMap<>();
        for (PrintedPage p : pages) {
            p.words.keySet().stream()
                    .filter(w -> w.contains(": ") && w.matches("(FLOOR|LID|WALL).*"))
                    .findFirst()
                    .ifPresent(
                            w -> out.computeIfAbsent(w, k -> new ArrayList<>()).add(p));
        }
        return out;
    }

    private static Face face(String title) {
        On on = title.startsWith("FLOOR") ? On.FLOOR : title.startsWith("LID") ? On.LID : On.WALL;
        boolean hot = title.contains("HOT FACE");
        return new Face(on, on == On.WALL ? Integer.parseInt(title.replaceAll("WALL (\\d+).*", "$1")) : 0, hot);
    }

    /** Centre of each match mark by its name: the diamond nearest to the words. */
    private static Map<String, Pt> marks(PrintedPage p) {
        List<Pt> diamonds = p.polygons.stream()
                .filter(q -> q.size() == 4
                        && Math.abs(q.get(0).x() - q.get(2).x()) < 1e-3
                        && Math.abs(q.get(1).y() - q.get(3).y()) < 1e-3
                        && Math.abs(q.get(0).y() - q.get(2).y()) < 6)
                .map(q -> new Pt(q.get(0).x(), q.get(1).y()))
                .toList();
        Map<String, Pt> out = new TreeMap<>();
        p.words.forEach((w, at) -> {
            if (w.matches("[FLW]\\d*U?-[A-Z]+\\d+·[A-Z]+\\d+ [ab]")) {
                Pt end = p.wordEnds.get(w);
                List<Pt> own = diamonds.stream()
                        .filter(d -> List.of(3.4, 2.6, -5.0).stream()
                                        .anyMatch(dy -> Math.abs(d.y() + dy - at.y()) < 0.02)
                                && (Math.abs(d.x() + 3.6 - at.x()) < 0.02 || Math.abs(d.x() - 3.6 - end.x()) < 0.02))
                        .toList();
                assertThat(own).as(w).hasSize(1);
                out.put(w, own.get(0));
            }
        });
        return out;
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("prints")
    void holesDistancesBarsAndSeamsAreTrue(String name, Path file, String paper) throws IOException {
        Design design = Prints.read(file);
        KilnGeometry kiln = KilnGeometry.of(design);
        List<PrintedPage> pages = pages(
                Prints.print(design, SheetOptions.plain(Paper.parse(paper))).pdf());
        Paper size = Paper.parse(paper);
        for (int i = 0; i < pages.size(); i++) {
            PrintedPage p = pages.get(i);
            String where = name + " page " + (i + 1);
            bars(p, 1, 1, where + " on " + paper);
            assertThat(p.images).as(where).isZero();
            assertThat(p.textSizes).as(where).allMatch(t -> t >= 2.79);
            p.keepsItsMargins(size, where);
        }
        Map<String, List<PrintedPage>> views = byView(pages);
        assertThat(views).isNotEmpty();
        views.forEach((title, sheets) -> view(kiln, face(title), title, sheets));
    }

    private static void bars(PrintedPage p, double sx, double sy, String where) {
        for (double length : new double[] {100, 101.6}) {
            assertThat(p.lines)
                    .as("%s: level bar of %s mm", where, length)
                    .anyMatch(l -> level(l) && Math.abs(l.length() - length * sx) < TOLERANCE_MM);
            assertThat(p.lines)
                    .as("%s: upright bar of %s mm", where, length)
                    .anyMatch(l -> upright(l) && Math.abs(l.length() - length * sy) < TOLERANCE_MM);
        }
    }

    private static boolean level(Segment l) {
        return Math.abs(l.a().y() - l.b().y()) < 1e-4;
    }

    private static boolean upright(Segment l) {
        return Math.abs(l.a().x() - l.b().x()) < 1e-4;
    }

    private static void view(KilnGeometry kiln, Face face, String title, List<PrintedPage> sheets) {
        List<Map<String, Pt>> marks = sheets.stream().map(PaperTruthTest::marks).toList();
        Pt[] shift = new Pt[sheets.size()];
        shift[0] = new Pt(0, 0);
        Deque<Integer> todo = new ArrayDeque<>(List.of(0));
        while (!todo.isEmpty()) {
            int i = todo.poll();
            for (int j = 0; j < shift.length; j++) {
                for (Map.Entry<String, Pt> m : marks.get(i).entrySet()) {
                    Pt other = marks.get(j).get(m.getKey());
                    if (j != i && other != null) {
                        Pt s = shift[i].plus(
                                m.getValue().x() - other.x(), m.getValue().y() - other.y());
                        if (shift[j] == null) {
                            shift[j] = s;
                            todo.add(j);
                        }
                        assertThat(shift[j].distance(s))
                                .as(title + " mark " + m.getKey())
                                .isLessThan(TOLERANCE_MM);
                    }
                }
            }
        }
        assertThat(shift).as(title + ": every sheet hangs on marks").doesNotContainNull();
        List<Hole> holes =
                kiln.holes().stream().filter(h -> h.face().samePart(face)).toList();
        List<Pt> dots = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            PrintedPage p = sheets.get(i);
            for (int c = 0; c < p.strokedCircles.size(); c++) {
                Circle circle = p.strokedCircles.get(c);
                boolean dot = p.filledCircles.stream()
                        .anyMatch(f ->
                                Math.abs(f.radius() - 1.5) < 0.01 && f.centre().distance(circle.centre()) < 1e-3);
                if (!dot || Math.abs(p.circleLineWidths.get(c) - SAW_LINE_MM) > 1e-3) {
                    continue;
                }
                dots.add(circle.centre().plus(shift[i].x(), shift[i].y()));
                assertThat(holes).as(title).anyMatch(h -> Math.abs(h.diameter() - 2 * circle.radius()) < TOLERANCE_MM);
            }
        }
        List<Pt> centres = List.copyOf(dots);
        for (int i = 0; i < sheets.size(); i++) {
            PrintedPage p = sheets.get(i);
            for (int c = 0; c < p.strokedCircles.size(); c++) {
                Circle circle = p.strokedCircles.get(c);
                Pt at = circle.centre().plus(shift[i].x(), shift[i].y());
                if (Math.abs(p.circleLineWidths.get(c) - SAW_LINE_MM) < 1e-3
                        && centres.stream().anyMatch(d -> d.distance(at) < 5)) {
                    dots.add(at);
                }
            }
        }
        List<Pt> found = unique(dots);
        assertThat(found).as(title + ": one place for every hole").hasSameSizeAs(holes);
        for (Hole a : holes) {
            Pt wa = wanted(face, a);
            boolean all = found.stream()
                    .anyMatch(fa -> holes.stream()
                            .allMatch(b -> found.stream().anyMatch(fb -> {
                                Pt wb = wanted(face, b);
                                return Math.hypot(
                                                fb.x() - fa.x() - (wb.x() - wa.x()),
                                                fb.y() - fa.y() - (wb.y() - wa.y()))
                                        < TOLERANCE_MM;
                            })));
            assertThat(all)
                    .as(title + ": " + a.name() + " stands right to all others")
                    .isTrue();
        }
        rimAndDatum(kiln, face, title, sheets, shift, found);
    }

    /** The printed rim lies about the printed holes as in the design, and the schedule's two measures start at its edges. */
    private static void rimAndDatum(
            KilnGeometry kiln, Face face, String title, List<PrintedPage> sheets, Pt[] shift, List<Pt> found) {
        List<Pt> rim = (face.on() == On.WALL
                        ? panel(kiln, face)
                        : kiln.slab(face.on()).points())
                .stream().map(p -> face.mirrored() ? new Pt(-p.x(), p.y()) : p).toList();
        List<Hole> holes =
                kiln.holes().stream().filter(h -> h.face().samePart(face)).toList();
        Pt first = wanted(face, holes.get(0));
        List<List<Pt>> printed = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            Pt s = shift[i];
            sheets.get(i).polygons.stream()
                    .map(q -> q.stream().map(p -> p.plus(s.x(), s.y())).toList())
                    .forEach(printed::add);
        }
        List<Pt> whole = found.stream()
                .flatMap(f -> printed.stream()
                        .filter(q -> q.size() == rim.size()
                                && rim.stream()
                                        .allMatch(r -> q.stream()
                                                .anyMatch(p -> Math.hypot(
                                                                p.x() - f.x() - (r.x() - first.x()),
                                                                p.y() - f.y() - (r.y() - first.y()))
                                                        < TOLERANCE_MM))))
                .findFirst()
                .orElse(null);
        assertThat(whole).as(title + ": rim about the holes").isNotNull();
        double left = whole.stream().mapToDouble(Pt::x).min().orElseThrow();
        double right = whole.stream().mapToDouble(Pt::x).max().orElseThrow();
        double top = whole.stream().mapToDouble(Pt::y).max().orElseThrow();
        double bottom = whole.stream().mapToDouble(Pt::y).min().orElseThrow();
        HoleSchedule.of(kiln).stream()
                .filter(r -> r.note().hole().face().samePart(face))
                .filter(r -> !r.wall() || face.hot()) // a wall's measures start at its inside corner
                .forEach(r -> {
                    double x = face.mirrored() ? right - r.fromLeftMm() : left + r.fromLeftMm();
                    double y = r.wall() ? bottom + r.fromOtherMm() : top - r.fromOtherMm();
                    assertThat(found)
                            .as(title + ": " + r.note().hole().name() + " by the tape measures")
                            .anyMatch(f -> Math.abs(f.x() - x) < TOLERANCE_MM && Math.abs(f.y() - y) < TOLERANCE_MM);
                });
    }

    private static List<Pt> panel(KilnGeometry kiln, Face face) {
        Panel p = kiln.panel(face.panel());
        double depth = face.hot() ? 0 : p.thickness();
        return List.of(
                new Pt(p.uMin(depth), 0),
                new Pt(p.uMax(depth), 0),
                new Pt(p.uMax(depth), kiln.height()),
                new Pt(p.uMin(depth), kiln.height()));
    }

    private static List<Pt> unique(List<Pt> points) {
        List<Pt> out = new ArrayList<>();
        for (Pt p : points) {
            if (out.stream().noneMatch(q -> q.distance(p) < TOLERANCE_MM)) {
                out.add(p);
            }
        }
        return out;
    }

    private static Pt wanted(Face face, Hole h) {
        return face.mirrored() ? new Pt(-h.centre().x(), h.centre().y()) : h.centre();
    }

    @Test
    void printerCorrectionStretchesBarsAndHolesAlike() throws IOException {
        Design design = Prints.read(Prints.club());
        SheetOptions o =
                new SheetOptions(Paper.parse("a4"), SheetOptions.Part.FLOOR, SheetOptions.Side.HOT, 1.006, 1, false);
        for (PrintedPage p : pages(Prints.print(design, o).pdf())) {
            bars(p, 1.006, 1, "corrected print");
            assertThat(p.extent[2]).isLessThanOrEqualTo(210 - 12);
        }
    }

    /** Thirteen wide holes whose shadows leave no free seam: some hole is cut, and rejoins across the match marks. */
    @Test
    void holesCutByASeamRejoin() throws IOException {
        Design d = Prints.read(Prints.club());
        List<Port> ports = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            ports.add(new Port(
                    "hole " + i,
                    Role.INLET,
                    On.FLOOR,
                    null,
                    new Place.Cartesian(Quantity.ofMm(-240 + 40 * i), Quantity.ofMm(i % 2 == 0 ? 50 : -50)),
                    Quantity.ofMm(64)));
        }
        Design wide = Changed.of(d).ports(ports).design();
        for (String paper : List.of("a4", "letter", "a3")) {
            SheetBook.Print print = Prints.print(
                    wide,
                    new SheetOptions(Paper.parse(paper), SheetOptions.Part.FLOOR, SheetOptions.Side.BOTH, 1, 1, false));
            assertThat(print.remarks()).anyMatch(r -> r.contains("falls on the seam"));
            byView(pages(print.pdf()))
                    .forEach((title, sheets) -> view(KilnGeometry.of(wide), face(title), title, sheets));
        }
    }

    @Test
    void oneSheetWhenThePartFits() throws IOException {
        Design design = Prints.read(Prints.club());
        SheetOptions o =
                new SheetOptions(Paper.parse("900x900mm"), SheetOptions.Part.FLOOR, SheetOptions.Side.HOT, 1, 1, false);
        Map<String, List<PrintedPage>> views =
                byView(pages(Prints.print(design, o).pdf()));
        assertThat(views.values()).singleElement().satisfies(v -> assertThat(v).hasSize(1));
        assertThat(views.values().iterator().next().get(0).words.keySet())
                .contains("F-A1")
                .noneMatch(w -> w.contains("on this line"));
    }

    /** Circles and bars of a page as another program draws them, where it is installed. */
    static Stream<Arguments> onePaperEach() {
        List<String> papers = List.of("a4", "letter", "a3");
        List<Path> all = Prints.all();
        return java.util.stream.IntStream.range(0, all.size())
                .mapToObj(i -> Arguments.of(all.get(i).getFileName().toString(), all.get(i), papers.get(i % 3)));
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("prints")
    @org.junit.jupiter.api.Tag("slow")
    void anotherProgramSeesTheSameOnEveryPaper(String name, Path file, String paper, @TempDir Path folder)
            throws IOException, InterruptedException {
        anotherProgramSeesTheSame(name, file, paper, folder);
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("onePaperEach")
    void anotherProgramSeesTheSame(String name, Path file, String paper, @TempDir Path folder)
            throws IOException, InterruptedException {
        Assumptions.assumeTrue(
                Stream.of(System.getenv("PATH").split(":")).anyMatch(d -> Files.isExecutable(Path.of(d, "pdftocairo"))),
                "pdftocairo is not here");
        Design design = Prints.read(file);
        byte[] pdf =
                Prints.print(design, SheetOptions.plain(Paper.parse(paper))).pdf();
        Path in = folder.resolve("in.pdf");
        Files.write(in, pdf);
        List<PrintedPage> pages = pages(pdf);
        int looked = 0;
        for (int i = 0; i < pages.size(); i++) {
            PrintedPage p = pages.get(i);
            if (i > 0 && p.filledCircles.stream().noneMatch(f -> Math.abs(f.radius() - 1.5) < 0.01)
                    || p.words.keySet().stream().noneMatch(w -> w.contains("print at 100 %"))) {
                continue;
            }
            looked++;
            Path svg = folder.resolve("p" + i + ".svg");
            Process run = new ProcessBuilder(
                            "pdftocairo",
                            "-svg",
                            "-noshrink",
                            "-nocenter",
                            "-f",
                            String.valueOf(i + 1),
                            "-l",
                            String.valueOf(i + 1),
                            in.toString(),
                            svg.toString())
                    .redirectErrorStream(true)
                    .start();
            run.getInputStream().readAllBytes();
            assertThat(run.waitFor()).isZero();
            List<Circle> seen =
                    svgCircles(Files.readString(svg), Paper.parse(paper).heightMm());
            List<Segment> bars = svgLines(Files.readString(svg));
            for (double length : new double[] {100, 101.6}) {
                assertThat(bars).anyMatch(l -> level(l) && Math.abs(l.length() - length) < TOLERANCE_MM);
                assertThat(bars).anyMatch(l -> upright(l) && Math.abs(l.length() - length) < TOLERANCE_MM);
            }
            for (Circle c : p.strokedCircles) {
                boolean awl = p.filledCircles.stream()
                        .anyMatch(f ->
                                Math.abs(f.radius() - 1.5) < 0.01 && f.centre().distance(c.centre()) < 1e-3);
                if (awl) {
                    assertThat(seen).anySatisfy(s -> {
                        assertThat(s.centre().distance(c.centre())).isLessThan(TOLERANCE_MM);
                        assertThat(2 * s.radius()).isCloseTo(2 * c.radius(), offset(TOLERANCE_MM));
                    });
                }
            }
        }
        assertThat(looked).isPositive();
    }

    /** Single straight strokes, mm. */
    private static List<Segment> svgLines(String svg) {
        List<Segment> out = new ArrayList<>();
        double mm = 25.4 / 72;
        Matcher m = PATH.matcher(svg);
        while (m.find()) {
            String d = attribute(m.group(), "d");
            double[] n = d == null || !d.strip().matches("M [^A-Z]+ L [^A-Z]+") ? new double[0] : numbers(d);
            if (n.length == 4) {
                String transform = attribute(m.group(), "transform");
                double[] t = transform != null && transform.startsWith("matrix")
                        ? numbers(transform)
                        : new double[] {1, 0, 0, 1, 0, 0};
                out.add(new Segment(
                        new Pt(mm * (t[0] * n[0] + t[2] * n[1]), mm * (t[1] * n[0] + t[3] * n[1])),
                        new Pt(mm * (t[0] * n[2] + t[2] * n[3]), mm * (t[1] * n[2] + t[3] * n[3]))));
            }
        }
        return out;
    }

    private static final Pattern PATH = Pattern.compile("<path[^>]*?>");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?");

    private static List<Circle> svgCircles(String svg, double heightMm) {
        List<Circle> out = new ArrayList<>();
        Matcher m = PATH.matcher(svg);
        while (m.find()) {
            String tag = m.group();
            String d = attribute(tag, "d");
            if (d == null || d.chars().filter(c -> c == 'C').count() != 4) {
                continue;
            }
            double[] t = {1, 0, 0, 1, 0, 0};
            String transform = attribute(tag, "transform");
            if (transform != null && transform.startsWith("matrix")) {
                t = numbers(transform);
            }
            double[] n = numbers(d);
            double x0 = 1e9;
            double x1 = -1e9;
            double y0 = 1e9;
            double y1 = -1e9;
            for (int i = 0; i + 1 < n.length; i = i == 0 ? 6 : i + 6) {
                double x = t[0] * n[i] + t[2] * n[i + 1] + t[4];
                double y = t[1] * n[i] + t[3] * n[i + 1] + t[5];
                x0 = Math.min(x0, x);
                x1 = Math.max(x1, x);
                y0 = Math.min(y0, y);
                y1 = Math.max(y1, y);
            }
            double mm = 25.4 / 72;
            out.add(new Circle(new Pt((x0 + x1) / 2 * mm, heightMm - (y0 + y1) / 2 * mm), (x1 - x0) / 2 * mm));
        }
        return out;
    }

    private static String attribute(String tag, String name) {
        Matcher m = Pattern.compile(" " + name + "=\"([^\"]*)\"").matcher(tag);
        return m.find() ? m.group(1) : null;
    }

    private static double[] numbers(String s) {
        return NUMBER.matcher(s)
                .results()
                .mapToDouble(r -> Double.parseDouble(r.group()))
                .toArray();
    }
}
