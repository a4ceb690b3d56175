package portwright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import portwright.check.CheckResult;
import portwright.drawing.Box;
import portwright.drawing.CheckBar;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.units.Format;

/** One face of a part as a full-size SVG for plotters and cutters: 1 unit is 1 mm. */
public final class SvgExport {
    private static final double MARGIN = 12;
    private static final double HEAD = 14;
    private static final double FOOT = 28;
    private static final TextStyle OPEN = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 4.2, Ink.INK, false);

    private SvgExport() {}

    /**
     * The drawings of one export.
     *
     * @param files texts by file name, for example {@code floor-hot.svg}
     * @param remarks what whoever asked for them should know: signs substituted
     */
    public record Drawings(Map<String, String> files, List<String> remarks) {}

    /**
     * All faces asked for.
     *
     * @throws SheetRefused like the drilling template
     */
    public static Drawings all(CheckResult result, KilnGeometry kiln, SheetOptions.Part part, SheetOptions.Side side) {
        SheetBook.refuseExport(result, kiln);
        Map<String, String> out = new LinkedHashMap<>();
        SheetOptions options = new SheetOptions(Paper.parse("a4"), part, side, 1, 1, false);
        PartLook look = PartLook.full(SheetBook.keepOut(kiln));
        SortedSet<Integer> missing = new TreeSet<>();
        String open = Unproven.sentence(result);
        for (Face f : SheetBook.faces(kiln, options)) {
            String name =
                    f.on().id() + (f.on() == On.WALL ? "-" + f.panel() : "") + (f.hot() ? "-hot" : "-cold") + ".svg";
            out.put(name, one(new View(new PartPainter(kiln, f, result.findings(), look), null), kiln, open, missing));
        }
        if (out.isEmpty()) {
            throw new SheetRefused("Nothing to draw: no port is placed in that part.");
        }
        return new Drawings(out, Fonts.remarks(missing));
    }

    /** What was not checked, as it stands over the drawing's caution; none where all was. */
    private static List<String> lines(String open, double width) {
        if (open.isEmpty()) {
            return List.of();
        }
        try (PDDocument document = new PDDocument()) {
            Pen pen = new SvgPen(new StringBuilder(), new Fonts(document), 0, 0);
            return Words.wrap(pen, open, width, OPEN);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String one(View view, KilnGeometry kiln, String open, SortedSet<Integer> missing) {
        Box b = view.painter().bounds();
        double width = Math.max(b.width(), CheckBar.INCH_LENGTH_MM + 20) + 2 * MARGIN;
        List<String> lines = lines(open, width - 2 * MARGIN);
        double foot = FOOT + lines.size() * OPEN.mm() * Words.LEADING;
        double height = b.height() + 2 * MARGIN + HEAD + foot;
        StringBuilder s = new StringBuilder(
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
                        + Format.plain(width, 4) + "mm\" height=\"" + Format.plain(height, 4) + "mm\" viewBox=\"0 0 "
                        + Format.plain(width, 4) + " " + Format.plain(height, 4) + "\">\n");
        s.append("<title>")
                .append(SvgPen.escape(kiln.design().title()))
                .append(": ")
                .append(view.words())
                .append(", full size</title>\n");
        if (!open.isEmpty()) {
            s.append("<desc>").append(SvgPen.escape(open)).append("</desc>\n");
        }
        try (PDDocument document = new PDDocument()) {
            Fonts fonts = new Fonts(document);
            Pen page = new SvgPen(s, fonts, 0, height);
            Box head = new Box(MARGIN, height - MARGIN - 10, width - MARGIN, height - MARGIN);
            boolean mirrored = view.face().mirrored();
            TextStyle style = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 5.2, mirrored ? Ink.PAPER : Ink.INK, false);
            if (mirrored) {
                page.fill(head.corners(), Ink.INK, 1);
            }
            page.text(view.title(), new Pt(MARGIN + 3, head.centre().y() - 1.9), Pen.Align.LEFT, 0, style);
            SvgPen model = new SvgPen(s, fonts, width / 2 - b.centre().x(), MARGIN + HEAD + b.maxY());
            view.painter().paint(model, b);
            List<String> sides = view.sides(kiln.panels().size());
            Box rim = Box.around(view.painter().rim());
            TextStyle tape = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 4.6, Ink.INK, true);
            model.text(sides.get(0), new Pt(rim.centre().x(), rim.maxY() - 9), Pen.Align.CENTRE, 0, tape);
            model.text(
                    sides.get(1), new Pt(rim.maxX() - 9, rim.centre().y() + 14), Pen.Align.CENTRE, -Math.PI / 2, tape);
            model.text(sides.get(2), new Pt(rim.centre().x(), rim.minY() + 6), Pen.Align.CENTRE, 0, tape);
            model.text(
                    sides.get(3), new Pt(rim.minX() + 9, rim.centre().y() + 14), Pen.Align.CENTRE, Math.PI / 2, tape);
            CheckBar.across(page, new Pt(MARGIN + 2, MARGIN + foot - FOOT + 12));
            CheckBar.down(new SvgPen(s, fonts, width - MARGIN - 5, MARGIN + HEAD), new Pt(0, 0));
            page.line(
                    new Pt(MARGIN, MARGIN + foot - 6), new Pt(width - MARGIN, MARGIN + foot - 6), LineStyle.DIMENSION);
            page.text(
                    "content " + ContentMark.of(kiln.design()).words()
                            + " · full size 1 : 1 · measure both bars · offer up the real burner first · local codes come before this drawing",
                    new Pt(MARGIN, MARGIN + 2),
                    Pen.Align.LEFT,
                    0,
                    TextStyle.BAR);
            Words.flow(page, lines, MARGIN, MARGIN + foot - FOOT + 6, OPEN);
            missing.addAll(fonts.missing());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return s.append("</svg>\n").toString();
    }
}
