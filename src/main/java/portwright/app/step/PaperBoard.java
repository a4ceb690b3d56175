package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.PaperModel;
import portwright.app.paint.Fonts;
import portwright.app.paint.PageShow;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Ink;
import portwright.sheet.PagePicture;
import portwright.sheet.SheetBook;

/** Paper step: how a face falls on its sheets, the chosen sheet large, the rest of the stack small. */
final class PaperBoard extends PaintedRegion {
    /** A place to tap: a sheet, or a pile from {@code page} to {@code last}, of which the next tap shows the next. */
    private record Spot(double x, double y, double w, double h, int layout, int page, int last) {
        boolean has(double px, double py) {
            return px >= x && px <= x + w && py >= y && py <= y + h;
        }
    }

    private static final double STACK_PX = 112;
    /** The same on a low board, so that the map of the sheets stays large; under that height, px. */
    private static final double LOW_STACK_PX = 76;

    private static final double LOW_PX = 620;
    /** Words over the remark: their size, a line of them, and the share of the room for which they are broken, since bold ones are broader. */
    private static final double HEAD_PX = 14.5;

    private static final double HEAD_LINE_PX = 19;
    private static final double HEAD_SHARE = 0.88;

    private final PaperModel model;
    private final List<Spot> spots = new ArrayList<>();
    private int layout;
    private double pileHigh = STACK_PX;
    private int page = -1;

    PaperBoard(PaperModel model) {
        this.model = model;
        getStyleClass().add("paper");
        least(440, 480);
        setFocusTraversable(true);
        setOnMousePressed(this::press);
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.RIGHT || e.getCode() == KeyCode.DOWN || e.getCode() == KeyCode.PAGE_DOWN) {
                turn(1);
                e.consume();
            } else if (e.getCode() == KeyCode.LEFT || e.getCode() == KeyCode.UP || e.getCode() == KeyCode.PAGE_UP) {
                turn(-1);
                e.consume();
            }
        });
    }

    private void turn(int by) {
        PaperModel.Pages p = model.pages();
        if (p != null && p.preview() != null) {
            page = Math.floorMod(page + by, p.preview().sheets() + 1);
            for (int i = 0; i < p.preview().layouts().size(); i++) {
                int at = i;
                if (p.preview().layouts().get(i).tiles().stream().anyMatch(t -> t.page() == page)) {
                    layout = at;
                }
            }
            repaint();
        }
    }

    private void press(MouseEvent e) {
        requestFocus();
        for (int i = spots.size() - 1; i >= 0; i--) {
            Spot s = spots.get(i);
            if (s.has(e.getX(), e.getY())) {
                layout = s.layout() >= 0 ? s.layout() : layout;
                if (s.page() >= 0) {
                    page = page >= s.page() && page < s.last() ? page + 1 : s.page();
                }
                repaint();
                return;
            }
        }
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        pages(g, w, h, p);
        if (model.stale()) {
            StaleVeil.paint(g, w, h, p, "These pages are older than the design: new ones follow its check.");
        }
    }

    private void pages(GraphicsContext g, double w, double h, Palette p) {
        spots.clear();
        PaperModel.Pages pages = model.pages();
        if (pages == null) {
            Say.left(
                    g,
                    p,
                    model.running() ? "The pages are being laid out." : "The pages are not laid out.",
                    24,
                    40,
                    14,
                    false,
                    Ink.INK);
            return;
        }
        SheetBook.Print print = pages.preview();
        if (print == null) {
            cardAlone(g, w, h, p, pages);
            return;
        }
        layout = Math.min(layout, print.layouts().size() - 1);
        if (page < 0) {
            page = SheetWords.withHole(print.layouts().get(layout));
        }
        boolean card = page >= print.sheets();
        page = Math.min(page, print.sheets());
        double split = w * 0.585;
        pileHigh = h < LOW_PX ? LOW_STACK_PX : STACK_PX;
        SheetBook.Layout l = print.layouts().get(layout);
        Say.left(
                g,
                p,
                (split < 380 ? "" : "How the ")
                        + l.words().split(" ", 2)[0]
                        + (split < 380 ? " on paper" : " falls on the paper"),
                24,
                34,
                17,
                true,
                Ink.INK);
        long tiles = l.tiles().stream().filter(t -> t.page() >= 0).count();
        String fall = tiles + (tiles == 1 ? " sheet, " : " sheets, ") + l.words();
        String all = fall + "; dashed: trim lines; tap a sheet";
        boolean room = TextSizes.width(all, Fonts.sans(13)) < split - 20;
        Say.left(g, p, room ? all : fall, 24, 55, 13, false, Ink.INK2);
        new SheetMap(g, p, pages.kiln(), l, page)
                .paint(30, 70, split - 60, h - 70 - 114 - pileHigh)
                .forEach(r -> spots.add(new Spot(
                        r.box().minX(),
                        r.box().minY(),
                        r.box().width(),
                        r.box().height(),
                        layout,
                        r.page(),
                        r.page())));
        stacks(g, p, pages, 30, h - 80 - pileHigh, split - 40);
        PagePicture shown = card ? pages.card() : print.pictures().get(page);
        String remark = card
                ? pages.cardRefused() == null
                        ? "One page for the kiln."
                        : "Not to be used yet: the list beside says what is missing."
                : SheetWords.remark(print, page);
        // the sheet gives way to its note, which stands whole above the board's edge
        String head =
                card ? "firing card" : "sheet " + (page + 1) + " of " + print.sheets() + SheetWords.title(print, page);
        List<String> heads = Say.broken(head, HEAD_SHARE * (w - split - 38), HEAD_PX);
        double more = (heads.size() - 1) * HEAD_LINE_PX;
        double sheetH = h - 24 - 46 - more - Math.max(66, Say.high(remark, w - split - 38, 12.5));
        if (shown != null) {
            PageShow.draw(g, shown, split + 14, 24, w - split - 38, sheetH, p.of(Ink.EDGE));
        }
        double used = shown == null ? 0 : Math.min(sheetH, (w - split - 38) / shown.widthMm() * shown.heightMm());
        for (int i = 0; i < heads.size(); i++) {
            Say.left(g, p, heads.get(i), split + 14, 24 + used + 26 + i * HEAD_LINE_PX, HEAD_PX, true, Ink.INK);
        }
        Say.lines(g, p, remark, split + 14, 24 + used + 46 + more, w - split - 38, 12.5, Ink.INK);
    }

    /** Why there is no template, and beside it the card, which may be there already. */
    private void cardAlone(GraphicsContext g, double w, double h, Palette p, PaperModel.Pages pages) {
        double split = pages.card() == null ? w - 36 : w * 0.5;
        Say.left(g, p, "No template yet", 24, 34, 17, true, Ink.INK);
        Say.lines(g, p, pages.refused(), 24, 64, split - 36, 14, Ink.INK);
        if (pages.card() != null) {
            PageShow.draw(g, pages.card(), split + 14, 24, w - split - 38, h - 80, p.of(Ink.EDGE));
            Say.left(
                    g,
                    p,
                    pages.cardPdf() == null ? "firing card, not to be used yet" : "firing card",
                    split + 14,
                    h - 30,
                    14.5,
                    true,
                    Ink.INK);
        }
    }

    /** All sheets in piles, one a face. */
    private void stacks(GraphicsContext g, Palette p, PaperModel.Pages pages, double x, double y, double w) {
        SheetBook.Print print = pages.preview();
        double each = Math.min(112, w / (print.layouts().size() + 3.0));
        Say.left(g, p, "All sheets; tap a pile again for its next sheet", x, y - 14, 13, false, Ink.INK2);
        int i = 0;
        stack(g, p, new Pile(print.pictures().get(0), "sheet 1", "start here", -1, 0, 0), x + each * i++, y, each);
        for (int k = 0; k < print.layouts().size(); k++) {
            SheetBook.Layout l = print.layouts().get(k);
            int first = l.tiles().stream()
                    .mapToInt(SheetBook.LaidTile::page)
                    .filter(n -> n >= 0)
                    .min()
                    .orElse(0);
            int last =
                    l.tiles().stream().mapToInt(SheetBook.LaidTile::page).max().orElse(0);
            int show = page >= first && page <= last ? page : first;
            String head = first == last ? "sheet " + (first + 1) : (first + 1) + "–" + (last + 1);
            stack(g, p, new Pile(print.pictures().get(show), head, l.words(), k, first, last), x + each * i++, y, each);
        }
        int after = print.layouts().stream()
                .flatMap(l -> l.tiles().stream())
                .mapToInt(t -> t.page() + 1)
                .max()
                .orElse(1);
        if (after < print.sheets()) {
            int last = print.sheets() - 1;
            int show = page >= after && page <= last ? page : after;
            String head = after == last ? "sheet " + (after + 1) : (after + 1) + "–" + (last + 1);
            stack(
                    g,
                    p,
                    new Pile(print.pictures().get(show), head, "cautions", -1, after, last),
                    x + each * i++,
                    y,
                    each);
        }
        if (pages.card() != null) {
            int at = print.sheets();
            stack(g, p, new Pile(pages.card(), "card", "firing card", -1, at, at), x + each * i, y, each);
        }
    }

    /** Sheets of one kind: the one that lies on top, number and words below it, first and last page. */
    private record Pile(PagePicture top, String head, String words, int layout, int first, int last) {}

    private void stack(GraphicsContext g, Palette p, Pile pile, double x, double y, double w) {
        double pw =
                Math.min(w - 14, pileHigh / pile.top().heightMm() * pile.top().widthMm());
        double ph = Math.min(pileHigh, pw / pile.top().widthMm() * pile.top().heightMm());
        for (int under = Math.min(2, pile.last() - pile.first()); under > 0; under--) {
            g.setFill(p.of(Ink.BISQUE));
            g.fillRect(x + 3 * under, y - 3 * under, pw, ph);
            g.setStroke(p.of(Ink.EDGE));
            g.setLineWidth(1);
            g.strokeRect(x + 3 * under, y - 3 * under, pw, ph);
        }
        PageShow.draw(g, pile.top(), x, y, pw, ph, p.of(Ink.EDGE));
        if (page >= pile.first() && page <= pile.last()) {
            g.setStroke(p.of(Ink.COBALT));
            g.setLineWidth(3);
            g.strokeRect(x, y, pw, ph);
        }
        double mid = x + pw / 2;
        double under = y + ph;
        Say.at(g, p, pile.head(), mid, under + 16, 13, true, Ink.INK, TextAlignment.CENTER, VPos.CENTER, false);
        Say.at(
                g,
                p,
                String.join("\n", Say.broken(pile.words(), w - 8, 12.5)),
                mid,
                under + 26,
                12.5,
                false,
                Ink.INK2,
                TextAlignment.CENTER,
                VPos.TOP,
                false);
        spots.add(new Spot(x, y, pw, pileHigh + 40, pile.layout(), pile.first(), pile.last()));
    }
}
