package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.check.Severity;
import portwright.drawing.Box;
import portwright.drawing.CheckBar;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;

/** One full-size sheet: head, drawing area with trim lines and match marks, check bars, foot. */
final class TilePage {
    private static final TextStyle HEAD = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 5.2, Ink.INK, false);
    private static final TextStyle TILE_NAME = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 8, Ink.INK, false);
    private static final TextStyle FOOT = new TextStyle(TextStyle.Face.SANS, 13, 3.2, Ink.INK, false);
    private static final double NAME_BOX = 22;

    private final Job job;
    private final View view;
    private final Tile tile;
    private final Frame frame;
    private final Page page;
    private final Fonts fonts;
    private final Pen plain;
    private final PdfPen model;
    private final TileSeams seams;

    private TilePage(Job job, View view, Tile tile, Fonts fonts) {
        this.job = job;
        this.view = view;
        this.tile = tile;
        this.fonts = fonts;
        frame = new Frame(job.paper());
        page = new Page(job.paper().widthMm(), job.paper().heightMm());
        plain = PdfPen.onPage(page, fonts);
        Box area = frame.area();
        double sx = job.options().scaleX();
        double sy = job.options().scaleY();
        model = new PdfPen(
                page,
                fonts,
                area.minX() - sx * tile.window().minX(),
                area.minY() - sy * tile.window().minY(),
                sx,
                sy);
        seams = new TileSeams(view, tile, model);
    }

    static Page of(Job job, View view, Tile tile, int number, int total, Fonts fonts) {
        TilePage t = new TilePage(job, view, tile, fonts);
        t.drawing();
        t.head();
        t.band();
        t.foot(number, total);
        if (job.stops() > 0) {
            Strike.through(t.plain, t.frame.inside(), Strike.stops(job.stops(), "DO NOT DRILL"));
        }
        return t.page;
    }

    private void drawing() {
        Box area = frame.area();
        Box window = tile.window();
        page.clip(area.minX(), area.minY(), area.width(), area.height());
        List<Box> taken = new ArrayList<>();
        List<Runnable> later = new ArrayList<>();
        seams.lines();
        seams.words(taken, later);
        tapes(taken, later);
        view.painter().paint(model, window.grown(-1), taken);
        later.forEach(Runnable::run);
        page.unclip();
        plain.polyline(area.corners(), true, LineStyle.FRAME, Ink.INK);
    }

    /** BACK, RIGHT, FRONT, LEFT in boxes at the four sides. */
    private void tapes(List<Box> taken, List<Runnable> later) {
        List<String> words = view.sides(job.kiln().panels().size());
        Box w = tile.window();
        double h = TextStyle.TAPE.mm();
        double[] inset = {inset(0, -1), inset(1, 0), inset(0, 1), inset(-1, 0)};
        for (int side = 0; side < 4; side++) {
            String arrow = side == 2 ? " ↓" : " ↑";
            String text = words.get(side) + arrow;
            double half = model.textWidth(text, TextStyle.TAPE) / 2 + 4;
            boolean level = side % 2 == 0;
            Box box = null;
            for (double share : new double[] {0.5, 0.4, 0.6, 0.32, 0.68, 0.25, 0.75}) {
                double x = level
                        ? w.minX() + share * w.width()
                        : side == 1 ? w.maxX() - inset[1] - h : w.minX() + inset[3] + h;
                double y = level
                        ? (side == 0 ? w.maxY() - inset[0] - h : w.minY() + inset[2] + h)
                        : w.minY() + share * w.height();
                double bw = level ? half : h * 0.85;
                double bh = level ? h * 0.85 : half;
                Box b = new Box(x - bw, y - bh, x + bw, y + bh);
                if (clear(b, taken)) {
                    box = b;
                    break;
                }
            }
            if (box == null) {
                continue;
            }
            taken.add(box.grown(1.5));
            Box b = box;
            double angle = side == 1 ? -Math.PI / 2 : side == 3 ? Math.PI / 2 : 0;
            double drop = h * 0.36;
            Pt at = b.centre().plus(side == 1 ? -drop : side == 3 ? drop : 0, level ? -drop : 0);
            later.add(() -> {
                model.fill(b.corners(), Ink.PAPER, 1);
                model.polyline(b.corners(), true, LineStyle.BOX);
                model.text(text, at, Pen.Align.CENTRE, angle, TextStyle.TAPE);
            });
        }
    }

    /** How far the trim line and its words reach into the window on one side, mm. */
    private double inset(int dc, int dr) {
        if (seams.neighbour(dc, dr) == null) {
            return 4;
        }
        Box w = tile.window();
        Tiling t = view.tiling();
        if (dc != 0) {
            return dc > 0 ? w.maxX() - t.seamX(tile.column()) + 6.5 : t.seamX(tile.column() - 1) - w.minX() + 2.5;
        }
        return dr > 0 ? t.seamY(tile.row()) - w.minY() + 2.5 : w.maxY() - t.seamY(tile.row() - 1) + 2.5;
    }

    private boolean clear(Box b, List<Box> taken) {
        return taken.stream().noneMatch(b::touches)
                && view.painter().sawCircles().stream()
                        .noneMatch(c -> b.grown(c.radius() + 13).contains(c.centre()));
    }

    private void head() {
        Box in = frame.inside();
        double top = in.maxY();
        Tiling t = view.tiling();
        double mapCell = Math.min(3.6, Math.min(26.0 / t.columnCount(), (Frame.HEAD - 1.5) / t.rowCount()));
        double mapW = mapCell * t.columnCount();
        double mapX = in.maxX() - NAME_BOX - 2.5 - mapW;
        for (Tile c : t.all()) {
            double x = mapX + c.column() * mapCell;
            double y = top - (c.row() + 1) * mapCell;
            Box cell = new Box(x, y, x + mapCell, y + mapCell);
            if (c == tile) {
                plain.fill(cell.corners(), Ink.INK, 1);
            } else if (c.blank()) {
                plain.line(new Pt(x, y), new Pt(x + mapCell, y + mapCell), LineStyle.DIMENSION);
            }
            plain.polyline(cell.corners(), true, LineStyle.DIMENSION);
        }
        Box name = new Box(in.maxX() - NAME_BOX, top - Frame.HEAD + 1.2, in.maxX(), top);
        plain.polyline(name.grown(-0.25).corners(), true, LineStyle.CHAMBER_WALL);
        TextStyle style = TILE_NAME;
        if (plain.textWidth(tile.name(), style) > NAME_BOX - 3) {
            style = style.size(style.px(), style.mm() * (NAME_BOX - 3) / plain.textWidth(tile.name(), style));
        }
        plain.text(tile.name(), name.centre().plus(0, -style.mm() * 0.36), Pen.Align.CENTRE, 0, style);
        boolean mirrored = view.face().mirrored();
        double room = mapX - 3 - in.minX();
        Box strip = new Box(in.minX(), name.minY(), in.minX() + room, top);
        if (mirrored) {
            plain.fill(strip.corners(), Ink.INK, 1);
        }
        TextStyle h = HEAD;
        double wide = room - (mirrored ? 6 : 0);
        if (plain.textWidth(view.title(), h) > wide) {
            h = h.size(h.px(), h.mm() * wide / plain.textWidth(view.title(), h));
        }
        plain.text(
                view.title(),
                new Pt(in.minX() + (mirrored ? 3 : 0), strip.centre().y() - h.mm() * 0.36),
                Pen.Align.LEFT,
                0,
                mirrored ? h.withInk(Ink.PAPER) : h);
    }

    private PdfPen barPen(double x, double y) {
        return new PdfPen(
                page, fonts, x, y, job.options().scaleX(), job.options().scaleY());
    }

    private void band() {
        Box area = frame.area();
        CheckBar.down(barPen(area.maxX() + 3.3, area.maxY() - 6), new Pt(0, 0));
        double from = area.maxY() - 6 - CheckBar.INCH_LENGTH_MM * job.options().scaleY() - 10;
        double room = from - frame.inside().minY();
        String one = job.kiln().design().title() + " · content " + job.mark().words() + " · full size 1 : 1";
        plain.text(
                Words.fit(plain, one, room, TextStyle.BAR),
                new Pt(area.maxX() + 5.8, from),
                Pen.Align.LEFT,
                -Math.PI / 2,
                TextStyle.BAR);
        String two = "Measure both bars before use."
                + (job.options().corrected() ? " Printer " + job.options().correctionWords() + "." : "");
        plain.text(
                Words.fit(plain, two, room, TextStyle.BAR),
                new Pt(area.maxX() + 1.8, from),
                Pen.Align.LEFT,
                -Math.PI / 2,
                TextStyle.BAR);
    }

    private void foot(int number, int total) {
        Box in = frame.inside();
        CheckBar.across(barPen(in.minX() + 2, in.minY() + 5.4), new Pt(0, 0));
        double x = in.minX() + 2 + CheckBar.INCH_LENGTH_MM * job.options().scaleX() + 12;
        double y = in.minY() + Frame.FOOT - 4.6;
        plain.text("sheet " + number + " of " + total, new Pt(x, y), Pen.Align.LEFT, 0, TextStyle.BOLD);
        plain.text("print at 100 %", new Pt(x, y - 4.6), Pen.Align.LEFT, 0, FOOT);
        double right = in.maxX();
        Signs.severity(plain, Severity.CAUTION, new Pt(right - 5.3, in.minY() + 7.2), 9);
        plain.text("offer up the", new Pt(right - 12, y), Pen.Align.RIGHT, 0, FOOT);
        plain.text("real burner first", new Pt(right - 12, y - 4.2), Pen.Align.RIGHT, 0, FOOT);
        plain.text(Words.fit(plain, job.fileName(), right - 12 - x, FOOT), new Pt(x, y - 9), Pen.Align.LEFT, 0, FOOT);
    }
}
