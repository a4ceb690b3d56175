package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.data.LimitTable;
import portwright.drawing.Box;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.layout.DrillOutlook;
import portwright.model.On;

/** A whole drilling template: first sheet, full-size sheets, last sheets. */
public final class SheetBook {
    private static final String KEEP_OUT_RULE = "element-clearance";
    private static final double KEEP_OUT_MM = 25;

    private SheetBook() {}

    /**
     * A finished print.
     *
     * @param pdf the file's bytes
     * @param sheets number of pages
     * @param remarks what the printer of it should know: blank sheets left out, seams through holes, signs substituted
     * @param pictures every page in order, for the screen
     * @param layouts how each face falls on its sheets
     */
    public record Print(
            byte[] pdf, int sheets, List<String> remarks, List<PagePicture> pictures, List<Layout> layouts) {}

    /**
     * How one face falls on sheets.
     *
     * @param painter of the face, whose picture the windows are boxes of
     * @param words the face in running text
     * @param tiles its sheets
     * @param remarks sentences on the face as a whole: holes that a trim line cuts, sheets left out
     */
    public record Layout(PartPainter painter, String words, List<LaidTile> tiles, List<String> remarks) {}

    /**
     * One sheet of a face.
     *
     * @param window what is drawn on it, mm
     * @param kept what is left of it between its trim lines, mm; those of a face lie side by side without overlap
     * @param page from 0, −1 for a blank one that is not printed
     * @param holes sentences on the holes of this sheet: whole on it, or cut off by its edge and whole on another
     */
    public record LaidTile(String name, Box window, Box kept, int page, List<String> holes) {}

    /**
     * Makes the PDF. The same design, file name and options give the same bytes.
     *
     * @throws SheetRefused when a stop forbids drilling, the elements are unknown, whole or in part, or there is nothing to print
     */
    public static Print print(CheckResult result, KilnGeometry kiln, String fileName, SheetOptions options) {
        refuse(result, kiln, options.despiteStops());
        long stops = result.stops(Forbids.DRILLING);
        ContentMark mark = ContentMark.of(kiln.design());
        PartLook look = new PartLook(false, stops == 0, keepOut(kiln));
        Frame frame = new Frame(options.paper());
        List<View> views = faces(kiln, options).stream()
                .map(f -> View.of(new PartPainter(kiln, f, result.findings(), look), frame, options))
                .toList();
        if (views.isEmpty()) {
            throw new SheetRefused("Nothing to print: no port is placed in "
                    + switch (options.part()) {
                        case FLOOR -> "the floor.";
                        case LID -> "the lid.";
                        case WALL -> "a wall.";
                        case ALL -> "any part.";
                    });
        }
        Job job = new Job(result, kiln, fileName, options, mark, look, views, DrillOutlook.of(kiln.design(), result));
        int tiles = views.stream().mapToInt(v -> v.tiling().printed().size()).sum();
        try (PdfFile file = new PdfFile(result.title(), mark)) {
            FirstPage.of(job, 1, file.fonts());
            LastPages last = LastPages.of(job, file.fonts());
            int total = 1 + tiles + last.size();
            List<PagePicture> pictures = new ArrayList<>();
            List<Layout> layouts = new ArrayList<>();
            add(file, FirstPage.of(job, total, file.fonts()), pictures);
            int number = 2;
            for (View v : views) {
                List<LaidTile> laid = new ArrayList<>();
                for (Tile t : v.tiling().all()) {
                    laid.add(new LaidTile(
                            t.cell(), t.window(), t.kept(), t.blank() ? -1 : pictures.size(), v.holesOn(t)));
                    if (!t.blank()) {
                        add(file, TilePage.of(job, v, t, number++, total, file.fonts()), pictures);
                    }
                }
                layouts.add(new Layout(v.painter(), v.words(), laid, v.remarks()));
            }
            last.numbered(number, total).forEach(p -> add(file, p, pictures));
            return new Print(
                    file.bytes(), total, remarks(job, file.fonts()), List.copyOf(pictures), List.copyOf(layouts));
        }
    }

    private static void add(PdfFile file, Page page, List<PagePicture> pictures) {
        file.add(page);
        pictures.add(page.picture());
    }

    /** Ends with {@link SheetRefused} where nobody may drill from paper. */
    private static void refuse(CheckResult result, KilnGeometry kiln, boolean despiteStops) {
        refuse(
                result,
                kiln,
                despiteStops,
                "Not printed",
                "Mend the design",
                ", or add --despite-stops for struck-through sheets to look at",
                ".");
    }

    /** The same of what a cutter or a spreadsheet gets, which nothing can strike through. */
    static void refuseExport(CheckResult result, KilnGeometry kiln) {
        refuse(
                result,
                kiln,
                false,
                "Not exported",
                "Mend the design.",
                " The findings alone: export --md; struck-through sheets to look at: sheet --despite-stops.",
                "");
    }

    private static void refuse(
            CheckResult result,
            KilnGeometry kiln,
            boolean despiteStops,
            String not,
            String mend,
            String besides,
            String end) {
        long stops = result.stops(Forbids.DRILLING);
        UnknownElements.refuse(not, result, kiln.design());
        if (stops > 0 && !despiteStops) {
            throw new SheetRefused(
                    not + ": " + stops + (stops == 1 ? " stop forbids" : " stops forbid") + " drilling. " + mend,
                    besides,
                    end);
        }
    }

    static double keepOut(KilnGeometry kiln) {
        LimitTable table = LimitTable.load();
        return table.find(KEEP_OUT_RULE, "limit").isPresent()
                ? new LimitsInForce(table, kiln.design()).value(KEEP_OUT_RULE, "limit")
                : KEEP_OUT_MM;
    }

    static List<Face> faces(KilnGeometry kiln, SheetOptions options) {
        List<Face> out = new ArrayList<>();
        for (On on : List.of(On.FLOOR, On.LID)) {
            boolean asked = options.part().name().equals(on.name());
            if (asked
                    || options.part() == SheetOptions.Part.ALL
                            && !kiln.holes(on).isEmpty()) {
                options.face().hot(on).forEach(hot -> out.add(new Face(on, 0, hot)));
            }
        }
        if (options.part() == SheetOptions.Part.WALL || options.part() == SheetOptions.Part.ALL) {
            kiln.holes(On.WALL).stream()
                    .map(h -> h.face().panel())
                    .distinct()
                    .sorted()
                    .forEach(p -> options.face().hot(On.WALL).forEach(hot -> out.add(new Face(On.WALL, p, hot))));
        }
        return out;
    }

    private static List<String> remarks(Job job, Fonts fonts) {
        List<String> out = new ArrayList<>();
        for (View v : job.views()) {
            out.addAll(v.remarks());
        }
        out.addAll(fonts.remarks());
        return out;
    }
}
