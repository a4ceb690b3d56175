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
import portwright.drawing.Traces;
import portwright.drawing.Words;
import portwright.geometry.Circle;
import portwright.geometry.Pt;
import portwright.model.On;

/** One full-size sheet: head, drawing area with trim lines and match marks, check bars, foot. */
final class TilePage {
    private static final String FULL = " · full size 1 : 1";
    private static final TextStyle HEAD = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 5.2, Ink.INK, false);
    private static final TextStyle TILE_NAME = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 8, Ink.INK, false);
    private static final TextStyle FOOT = new TextStyle(TextStyle.Face.SANS, 13, 3.2, Ink.INK, false);
    /** What takes the file name's place where not all was checked; the name then stands in the band. */
    private static final TextStyle OPEN = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.2, Ink.INK, false);

    private static final String BARE =
            "no line of the kiln between these trim lines: the sheet holds those round it in place";

    private static final double NAME_BOX = 22;
    /** Height of the foot's warning sign above the lower margin, with some air, mm: words in the band end above it. */
    private static final double SIGN_ROOM = 13;

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
        Traces traces = new Traces(model, window);
        seams.lines(traces);
        view.painter().lines(traces, window);
        Places places = new Places(traces);
        view.painter()
                .cutCircles()
                .forEach(c -> places.shun(
                        around(c, 2), around(c, Math.max(13, job.look().keepOutMm() + 1))));
        List<Runnable> later = new ArrayList<>(seams.words(places));
        later.addAll(new Tapes(model, window, new double[] {inset(0, -1), inset(1, 0), inset(0, 1), inset(-1, 0)})
                .lay(view.sides(job.kiln().panels().size(), window), places));
        seams.lines(model);
        view.painter().paint(model, window.grown(-1), places.taken());
        later.forEach(Runnable::run);
        if (view.bare(tile, model)) {
            bare(places);
        }
        page.unclip();
        plain.polyline(area.corners(), true, LineStyle.FRAME, Ink.INK);
    }

    /** An empty sheet looks like a fault of the printer: it says that it is none. */
    private void bare(Places places) {
        double half = model.textWidth(BARE, FOOT) / 2;
        Pt middle = tile.window().centre();
        List<Box> boxes = new ArrayList<>();
        for (double off = 0; off < tile.window().height() / 3; off += FOOT.mm()) {
            for (int side = -1; side <= 1; side += 2) {
                double y = middle.y() + side * off;
                boxes.add(new Box(middle.x() - half, y - 1, middle.x() + half, y + FOOT.mm()));
            }
        }
        Box box = places.first(boxes);
        if (box != null) {
            model.text(BARE, new Pt(middle.x(), box.minY() + 1), Pen.Align.CENTRE, 0, FOOT);
        }
    }

    private static Box around(Circle c, double room) {
        return new Box(
                        c.centre().x(),
                        c.centre().y(),
                        c.centre().x(),
                        c.centre().y())
                .grown(c.radius() + room);
    }

    /** How far the trim line and its words reach into the window on one side, mm. */
    private double inset(int dc, int dr) {
        if (seams.neighbour(dc, dr) == null) {
            return 4;
        }
        Box w = tile.window();
        Tiling t = view.tiling();
        if (dc != 0) {
            return dc > 0 ? w.maxX() - t.seamX(tile.column()) + 2.5 : t.seamX(tile.column() - 1) - w.minX() + 2.5;
        }
        return dr > 0 ? t.seamY(tile.row()) - w.minY() + 2.5 : w.maxY() - t.seamY(tile.row() - 1) + 2.5;
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
        double room = from - frame.inside().minY() - SIGN_ROOM;
        String which = job.kiln().design().title() + " · content " + job.mark().words();
        boolean whole = plain.textWidth(which + FULL, TextStyle.BAR) <= room;
        String one = whole ? which + FULL : which;
        plain.text(
                Words.fit(plain, one, room, TextStyle.BAR),
                new Pt(area.maxX() + 5.8, from),
                Pen.Align.LEFT,
                -Math.PI / 2,
                TextStyle.BAR);
        String two = (job.options().corrected()
                        ? "Measure both bars. Printer " + job.options().correctionWords() + "."
                        : "Measure both bars before use." + (whole ? "" : " Full size 1 : 1."))
                + (Unproven.drilling(job.result()) ? " " + job.fileName() : "");
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
        boolean burners = view.painter().holes().stream().anyMatch(n -> n.hole().inlet());
        boolean wall = view.face().on() == On.WALL;
        plain.text(
                wall ? view.face().hot() ? "start the pilot" : "the pilot from inside" : "offer up the",
                new Pt(right - 12, y),
                Pen.Align.RIGHT,
                0,
                FOOT);
        plain.text(
                wall
                        ? view.face().hot() ? "on this side" : "rules, not this dot"
                        : "real " + (burners ? "burner" : "plate") + " first",
                new Pt(right - 12, y - 4.2),
                Pen.Align.RIGHT,
                0,
                FOOT);
        double room = right - 12 - x;
        if (Unproven.drilling(job.result())) {
            double wide = plain.textWidth(Unproven.SHORT, OPEN);
            TextStyle style = wide <= room ? OPEN : OPEN.size(OPEN.px(), 0.99 * OPEN.mm() * room / wide);
            plain.text(Unproven.SHORT, new Pt(x, y - 9), Pen.Align.LEFT, 0, style);
        } else {
            plain.text(Words.fit(plain, job.fileName(), room, FOOT), new Pt(x, y - 9), Pen.Align.LEFT, 0, FOOT);
        }
    }
}
