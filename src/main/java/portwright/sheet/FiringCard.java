package portwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.check.Severity;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;
import portwright.review.PlateSetting;

/** One page to stand at the kiln with: steps, plate at full size, lighting, shutting down, three emergencies, record. */
public final class FiringCard {
    private static final double LEAST_ROW = 7;
    private static final int LEAST_ROWS = 12;
    /** Of a wide flue only so much of each half is drawn. */
    private static final double WIDEST_HALF = 26;
    /** Room beside the drawn flue for its rule and the words of the levels, mm. */
    private static final double PLATE_WORDS = 44;

    private static final double STEP_ROW = 6.3;
    private static final TextStyle STEP_BOLD = new TextStyle(TextStyle.Face.SANS_BOLD, 15, 3.6, Ink.INK, false);
    private static final TextStyle STEP = new TextStyle(TextStyle.Face.SANS, 15, 3.6, Ink.INK, false);
    private static final TextStyle TEXT = new TextStyle(TextStyle.Face.SANS, 13, 3.2, Ink.INK, false);
    private static final TextStyle NUMBER = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.2, Ink.INK, false);
    private static final TextStyle HEADING = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 4.3, Ink.INK, false);
    private static final TextStyle CARE = new TextStyle(TextStyle.Face.SANS, 13, 3.0, Ink.INK, false);
    private static final TextStyle NEVER = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.0, Ink.INK, false);
    private static final double[] COLUMNS = {0, 0.065, 0.325, 0.43, 0.53, 0.68, 0.795, 1};

    private final CardData data;
    private final Page page;
    private final Pen pen;
    private final double left = Frame.MARGIN;
    private final double right;
    private final double height;

    private FiringCard(CardData data, Paper paper, Fonts fonts) {
        this.data = data;
        page = new Page(paper.widthMm(), paper.heightMm());
        pen = PdfPen.onPage(page, fonts);
        right = paper.widthMm() - Frame.MARGIN;
        height = paper.heightMm();
    }

    /**
     * The card as PDF; the same data give the same bytes.
     *
     * @throws SheetRefused when a stop forbids lighting or a rule against it was not checked, unless {@code despiteStops}
     */
    public static byte[] print(CardData data, Paper paper, ContentMark mark, boolean despiteStops) {
        boolean forbidden = data.stops() > 0 || !data.unproven().isEmpty();
        if (forbidden && !despiteStops) {
            String why = data.stops() > 0
                    ? data.stops() + (data.stops() == 1 ? " stop forbids" : " stops forbid") + " lighting."
                    : "not proven that the kiln may be lit: " + String.join(", ", data.unproven()) + " not checked.";
            throw new SheetRefused("No card: " + why
                    + " Mend or complete the design, or add --despite-stops for a struck-through card.");
        }
        try (PdfFile file = new PdfFile("Firing card: " + data.title(), mark)) {
            file.add(drawn(data, paper, file, forbidden));
            return file.bytes();
        }
    }

    /** The card for the screen; struck through where it would not print. */
    public static PagePicture picture(CardData data, Paper paper, ContentMark mark) {
        try (PdfFile file = new PdfFile(data.title(), mark)) {
            return drawn(data, paper, file, data.stops() > 0 || !data.unproven().isEmpty())
                    .picture();
        }
    }

    private static Page drawn(CardData data, Paper paper, PdfFile file, boolean forbidden) {
        FiringCard card = new FiringCard(data, paper, file.fonts());
        card.draw();
        if (forbidden) {
            Strike.through(
                    card.pen,
                    new Frame(paper).inside(),
                    data.stops() > 0 ? Strike.stops(data.stops(), "DO NOT LIGHT") : "NOT CHECKED: DO NOT LIGHT");
        }
        return card.page;
    }

    private Pt at(double x, double top) {
        return new Pt(x, height - top);
    }

    private void words(String t, double x, double base, TextStyle s) {
        pen.text(t, at(x, base), Pen.Align.LEFT, 0, s);
    }

    private void rule(double top, LineStyle s) {
        pen.line(at(left, top), at(right, top), s, Ink.INK);
    }

    private void draw() {
        double w = right - left;
        String title = "Firing card: " + data.title();
        TextStyle t = FirstPage.TITLE;
        double room = w - 52;
        if (pen.textWidth(title, t) > room) {
            t = t.size(t.px(), Math.max(4.4, t.mm() * room / pen.textWidth(title, t)));
        }
        words(Words.fit(pen, title, room, t), left, 20, t);
        words("no.", right - 48, 20, TEXT);
        pen.line(at(right - 42, 20.4), at(right - 31, 20.4), LineStyle.DIMENSION);
        words("date", right - 29, 20, TEXT);
        pen.line(at(right - 21, 20.4), at(right, 20.4), LineStyle.DIMENSION);
        words(Words.fit(pen, data.fire() + " · content " + data.mark(), w, TEXT), left, 25.4, TEXT);
        rule(27.6, LineStyle.CHAMBER_WALL);
        double y = steps(27.6);
        y = middle(y + 0.5);
        y = emergencies(y);
        y = cautions(y);
        record(y);
    }

    private double steps(double top) {
        double w = right - left;
        String[] names = {"step", "to", "rate", "heat", "atmosphere", "plate mm", "flame to look for"};
        for (int i = 0; i < names.length; i++) {
            words(names[i], left + COLUMNS[i] * w, top + 4.2, TEXT);
        }
        double y = top + 5.8;
        rule(y, LineStyle.DIMENSION);
        int n = data.steps().size();
        int most = Math.min(n, 9);
        for (int i = 0; i < most; i++) {
            CardData.Step s = data.steps().get(i);
            if (s.gas()) {
                pen.fill(new Box(left, height - y - STEP_ROW, right, height - y).corners(), Ink.SHADE, 1);
                rule(y, LineStyle.DIMENSION);
            }
            double base = y + STEP_ROW * 0.66;
            pen.circle(at(left + 3.4, y + STEP_ROW / 2), 2.7, LineStyle.BOX, Ink.INK);
            pen.text(String.valueOf(i + 1), at(left + 3.4, y + STEP_ROW / 2 + 1.25), Pen.Align.CENTRE, 0, STEP_BOLD);
            double x = left + COLUMNS[1] * w;
            double room = (COLUMNS[2] - COLUMNS[1]) * w - 1.5;
            String to = Words.fit(pen, s.to(), room, STEP_BOLD);
            words(to, x, base, STEP_BOLD);
            double used = pen.textWidth(to, STEP_BOLD) + 2;
            if (room - used > 8) {
                cell(s.other(), x + used, room - used, base, TEXT);
            }
            String[] cells = {s.rate(), s.heat(), s.atmosphere(), s.plate(), s.flame()};
            for (int c = 0; c < cells.length; c++) {
                TextStyle style = c == 2 || c == 3 ? STEP_BOLD : c == 4 ? TEXT : STEP;
                cell(cells[c], left + COLUMNS[c + 2] * w, (COLUMNS[c + 3] - COLUMNS[c + 2]) * w - 1.2, base, style);
            }
            y += STEP_ROW;
            rule(y, LineStyle.DIMENSION);
        }
        if (most < n) {
            y += 4.4;
            words((n - most) + " more steps in the design file.", left, y, NUMBER);
        }
        return y;
    }

    private void cell(String t, double x, double room, double base, TextStyle s) {
        TextStyle fit = s;
        if (pen.textWidth(t, s) > room) {
            fit = s.size(s.px(), Math.max(3.0, s.mm() * room / pen.textWidth(t, s)));
        }
        words(Words.fit(pen, t, room, fit), x, base, fit);
    }

    private double middle(double top) {
        double w = right - left;
        double half = data.plate() == null ? 0 : Math.min(data.plate().holeMm() / 2, WIDEST_HALF);
        double split = left + Math.max(w * 0.463, 2 * half + PLATE_WORDS);
        double x = split + 4;
        double y = list("Lighting", data.lighting(), x, right - x, top + 5.5);
        y = list("Shutting down", data.shuttingDown(), x, right - x, y + 5.6);
        double p = plate(top + 5.5, split - 4);
        double end = Math.max(y, p) + 2;
        pen.line(at(split, top + 1), at(split, end - 1), LineStyle.BOX);
        rule(end, LineStyle.CHAMBER_WALL);
        return end;
    }

    private double list(String heading, List<String> items, double x, double w, double top) {
        words(heading, x, top, HEADING);
        return numbered(items, x, w, top + 1.6);
    }

    private double numbered(List<String> items, double x, double w, double top) {
        double y = top;
        for (int i = 0; i < items.size(); i++) {
            words(String.valueOf(i + 1), x, y + TEXT.mm(), NUMBER);
            y = height - Words.flow(pen, items.get(i), x + 4.6, height - y, w - 4.6, TEXT) + 0.2;
        }
        return y;
    }

    private double plate(double top, double end) {
        double w = end - left;
        CardData.Plate p = data.plate();
        if (p == null) {
            words("Plate over the flue", left, top, HEADING);
            double y = height
                    - Words.flow(
                            pen,
                            "The flues are not known: the plate cannot be drawn.",
                            left,
                            height - top - 2,
                            w,
                            TEXT);
            return closing(y + 2, w);
        }
        words(Words.fit(pen, "Damper plate on " + p.flue() + ", full size", w, HEADING), left, top, HEADING);
        double y = height
                - Words.flow(pen, "Travel at a step's end (range it may need).", left, height - top - 1.6, w, TEXT);
        double r = p.holeMm() / 2;
        boolean large = p.holeMm() > 60;
        double shown = Math.min(r, WIDEST_HALF);
        double cx = left + 11 + shown;
        double zero = y + 3 + (large ? 60 : p.holeMm());
        Pt c = at(cx, zero - r);
        Box seen = new Box(left + 9, height - zero - 4, cx + shown + 1, height - y - 1);
        page.clip(seen.minX(), seen.minY(), seen.width(), seen.height());
        pen.circle(c, r, LineStyle.SAW_CIRCLE, Ink.INK);
        pen.line(c.plus(0, -r - 3), c.plus(0, r + 3), LineStyle.DIMENSION);
        page.unclip();
        double tall = large ? 60 : p.holeMm();
        for (int mm = 0; mm <= tall; mm++) {
            double tick = mm % 10 == 0 ? 3.4 : mm % 5 == 0 ? 2.4 : 1.4;
            Pt a = at(left + 6, zero - mm);
            pen.line(a, a.plus(tick, 0), LineStyle.DIMENSION);
            if (mm % 10 == 0) {
                pen.text(String.valueOf(mm), a.plus(-1, -1), Pen.Align.RIGHT, 0, TextStyle.BAR);
            }
        }
        bands(p, cx, shown, zero, y + 3, end);
        pen.text(
                "open",
                at(cx, zero - 3),
                Pen.Align.CENTRE,
                0,
                new TextStyle(TextStyle.Face.SANS, 13, 3, Ink.INK, true));
        return closing(zero + 6.5, w);
    }

    private void bands(CardData.Plate p, double cx, double r, double zero, double top, double end) {
        List<CardData.Band> bands = new ArrayList<>(p.bands());
        bands.sort(Comparator.comparingDouble(CardData.Band::setMm).reversed());
        double x = Math.min(cx + r + 9, end - 25);
        double step = bands.isEmpty() ? 0 : Math.min(10.5, Math.max(8.6, (zero - top - 4) / bands.size()));
        double y = top + 5;
        for (CardData.Band b : bands) {
            double mid = b.setMm();
            Pt from = at(cx - r, zero - mid);
            Pt to = at(cx + r + 2, zero - mid);
            pen.line(from, to, LineStyle.CHAMBER_WALL, Ink.INK);
            pen.line(to, at(x - 1, y - 1.2), LineStyle.DIMENSION);
            words(b.level(), x, y, STEP_BOLD);
            words(
                    PlateSetting.whole(mid) + " mm (" + PlateSetting.whole(b.lowMm()) + "–"
                            + PlateSetting.whole(b.highMm()) + ")",
                    x,
                    y + 4.2,
                    TEXT);
            y += step;
        }
        if (bands.isEmpty()) {
            Words.flow(pen, "No travel computed. Mark your own: ______ mm", x, height - top - 2, end - x, TEXT);
        }
    }

    private double closing(double y, double w) {
        return height
                - Words.flow(
                        pen,
                        "The figures size the range, they do not set it. Set by flame, probe and CO meter.",
                        left,
                        height - y,
                        w,
                        NUMBER);
    }

    private double emergencies(double top) {
        double w = right - left;
        List<String> heads = List.of("Temperature falls", "Flame goes out", "The alarm sounds");
        List<List<String>> texts = List.of(data.temperatureFalls(), data.flameOut(), data.alarm());
        double third = w / 3;
        double end = top;
        for (int i = 0; i < 3; i++) {
            double x = left + i * third;
            Signs.severity(
                    pen, i == 0 ? Severity.CAUTION : Severity.STOP, at(x + 4.2 + (i == 0 ? 0 : 1), top + 5.2), 7);
            words(heads.get(i), x + 10.5, top + 6.6, HEADING);
            end = Math.max(end, numbered(texts.get(i), x + 1.5, third - 4, top + 9.4));
        }
        for (int i = 1; i < 3; i++) {
            pen.line(at(left + i * third - 1.5, top + 2), at(left + i * third - 1.5, end), LineStyle.BOX);
        }
        rule(end + 1, LineStyle.CHAMBER_WALL);
        return end + 1;
    }

    /** Short cautions in three columns, stops first. */
    private double cautions(double top) {
        if (data.cautions().isEmpty()) {
            return top;
        }
        double third = (right - left) / 3;
        double y = top + 1.4;
        for (int i = 0; i < data.cautions().size(); i += 3) {
            double end = y;
            for (int k = i; k < Math.min(i + 3, data.cautions().size()); k++) {
                CardData.Caution c = data.cautions().get(k);
                double x = left + (k - i) * third;
                Signs.severity(pen, c.stop() ? Severity.STOP : Severity.CAUTION, at(x + 1.9, y + 1.9), 3.2);
                end = Math.max(
                        end,
                        height - Words.flow(pen, c.words(), x + 4.6, height - y, third - 5.6, c.stop() ? NEVER : CARE));
            }
            y = end;
        }
        rule(y + 0.6, LineStyle.CHAMBER_WALL);
        return y + 0.6;
    }

    private void record(double top) {
        words("Record", left, top + 5, HEADING);
        double used = pen.textWidth("Record", HEADING) + 4;
        words(
                Words.fit(
                        pen,
                        data.forecast().isEmpty() ? "no forecast for this design" : "forecast: " + data.forecast(),
                        right - left - used,
                        TEXT),
                left + used,
                top + 5,
                TEXT);
        double y = top + 6.2;
        double w = right - left;
        double bottom = height - Frame.MARGIN - 4.6;
        double row = Math.max(LEAST_ROW, (bottom - y) / (LEAST_ROWS + 1));
        int rows = (int) Math.floor((bottom - y) / row + 1e-9);
        double[] col = {0, 0.107, 0.226, 0.344, 0.462, 0.58, 0.72, 0.816, 1};
        String[] names = {
            "clock", "meter " + data.scale(), "cones", "plate mm", "pressure", "flame at spy", "CO ppm", "notes"
        };
        for (int i = 0; i <= rows; i++) {
            pen.line(
                    at(left, y + row * i),
                    at(right, y + row * i),
                    i == 0 || i == 1 || i == rows ? LineStyle.CHAMBER_WALL : LineStyle.DIMENSION,
                    Ink.INK);
        }
        for (int i = 0; i < col.length; i++) {
            pen.line(
                    at(left + col[i] * w, y),
                    at(left + col[i] * w, y + row * rows),
                    i == 0 || i == col.length - 1 ? LineStyle.CHAMBER_WALL : LineStyle.DIMENSION,
                    Ink.INK);
            if (i < names.length) {
                words(names[i], left + col[i] * w + 1.4, y + row * 0.62, FirstPage.SMALL);
            }
        }
        words(
                Words.fit(
                        pen,
                        "Local codes and licensed gas and electrical practice come before this card. Print at 100 %. Read the caution sheets first.",
                        w,
                        FirstPage.SMALL),
                left,
                height - Frame.MARGIN - 0.8,
                FirstPage.SMALL);
    }
}
