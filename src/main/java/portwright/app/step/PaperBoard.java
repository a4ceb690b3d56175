package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.PaperModel;
import portwright.app.doc.View;
import portwright.app.paint.BoardLook;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.PageShow;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.part.PaintedRegion;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.geometry.KilnGeometry;
import portwright.sheet.PagePicture;
import portwright.sheet.SheetBook;

/** Paper step: how a face falls on its sheets, the chosen sheet large, the rest of the stack small. */
final class PaperBoard extends PaintedRegion {
    private record Spot(double x, double y, double w, double h, int layout, int page) {
        boolean has(double px, double py) {
            return px >= x && px <= x + w && py >= y && py <= y + h;
        }
    }

    private final PaperModel model;
    private final List<Spot> spots = new ArrayList<>();
    private int layout;
    private int page = -1;

    PaperBoard(PaperModel model) {
        this.model = model;
        getStyleClass().add("paper");
        least(640, 520);
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
                page = s.page() >= 0 ? s.page() : page;
                repaint();
                return;
            }
        }
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        pages(g, w, h, p);
        if (model.stale()) {
            StaleVeil.paint(g, w, h, p);
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
            Say.left(g, p, "Nothing to print yet", 24, 34, 17, true, Ink.INK);
            Say.lines(g, p, pages.refused(), 24, 64, w - 60, 14, Ink.INK);
            return;
        }
        layout = Math.min(layout, print.layouts().size() - 1);
        if (page < 0) {
            page = SheetWords.withHole(print.layouts().get(layout));
        }
        boolean card = page >= print.sheets();
        page = Math.min(page, print.sheets());
        double split = w * 0.585;
        SheetBook.Layout l = print.layouts().get(layout);
        Say.left(g, p, "How the " + l.words().split(" ", 2)[0] + " falls on the paper", 24, 34, 17, true, Ink.INK);
        long tiles = l.tiles().stream().filter(t -> t.page() >= 0).count();
        Say.left(
                g,
                p,
                tiles + (tiles == 1 ? " sheet, " : " sheets, ") + l.words() + "; tap a sheet to see it",
                24,
                55,
                13,
                false,
                Ink.INK2);
        overview(g, p, pages.kiln(), l, 30, 78, split - 60, h - 78 - 210);
        stacks(g, p, pages, 30, h - 176, split - 40);
        PagePicture shown = card ? pages.card() : print.pictures().get(page);
        double sheetH = h - 36 - 100;
        if (shown != null) {
            PageShow.draw(g, shown, split + 14, 24, w - split - 38, sheetH, p.of(Ink.EDGE));
        }
        String head =
                card ? "firing card" : "sheet " + (page + 1) + " of " + print.sheets() + SheetWords.title(print, page);
        double used = shown == null ? 0 : Math.min(sheetH, (w - split - 38) / shown.widthMm() * shown.heightMm());
        Say.left(g, p, head, split + 14, 24 + used + 26, 14.5, true, Ink.INK);
        String remark = card
                ? pages.cardRefused() == null ? "One page for the kiln." : pages.cardRefused()
                : print.remarks().isEmpty()
                        ? "No sheet is blank; no seam cuts a hole."
                        : String.join(" ", print.remarks());
        Say.lines(g, p, remark, split + 14, 24 + used + 46, w - split - 38, 12.5, Ink.INK);
    }

    private void overview(
            GraphicsContext g,
            Palette p,
            KilnGeometry kiln,
            SheetBook.Layout l,
            double x,
            double y,
            double w,
            double h) {
        Box all = l.painter().bounds();
        for (SheetBook.LaidTile t : l.tiles()) {
            all = all.union(t.window());
        }
        View v = View.fit(all.minX(), all.minY(), all.maxX(), all.maxY(), x, y, w, h, 14);
        int layoutIndex = layout;
        for (SheetBook.LaidTile t : l.tiles()) {
            double tx = v.x(t.window().minX());
            double ty = v.y(t.window().maxY());
            double tw = t.window().width() * v.scale();
            double th = t.window().height() * v.scale();
            if (t.page() == page) {
                g.setFill(p.of(Ink.RUTILE_FILL));
                g.fillRect(tx, ty, tw, th);
            }
        }
        g.save();
        new PartPainter(kiln, l.painter().face(), List.of(), PartLook.small())
                .paint(CanvasPen.thumb(g, v, p, 0.9), all);
        g.restore();
        g.setLineWidth(1.2);
        for (SheetBook.LaidTile t : l.tiles()) {
            double tx = v.x(t.window().minX());
            double ty = v.y(t.window().maxY());
            double tw = t.window().width() * v.scale();
            double th = t.window().height() * v.scale();
            boolean on = t.page() == page;
            g.setStroke(p.of(on ? Ink.COBALT : Ink.INK2));
            g.setLineWidth(on ? 3.4 : 1.1);
            g.setLineDashes(on ? new double[0] : new double[] {6, 4});
            g.strokeRect(tx, ty, tw, th);
            Say.at(
                    g,
                    p,
                    t.page() < 0 ? t.name() + " blank" : t.name(),
                    tx + 8,
                    ty + 18,
                    13,
                    on,
                    Ink.INK,
                    TextAlignment.LEFT,
                    VPos.BASELINE,
                    true);
            spots.add(new Spot(tx, ty, tw, th, layoutIndex, t.page()));
        }
        g.setLineDashes();
        Box rim = l.painter().bounds();
        if (l.painter().face().on() != portwright.model.On.WALL) {
            BoardLook.tape(g, p, "BACK · hinge", v.x(0), v.y(rim.maxY()) + 2, false);
            BoardLook.tape(g, p, "FRONT", v.x(0), v.y(rim.minY()) - 2, false);
        }
    }

    private void stacks(GraphicsContext g, Palette p, PaperModel.Pages pages, double x, double y, double w) {
        SheetBook.Print print = pages.preview();
        double each = Math.min(112, w / (print.layouts().size() + 2.0));
        double th = 112;
        int i = 0;
        stack(g, p, print.pictures().get(0), x + each * i++, y, each, th, "1", "start here", -1, 0, page == 0);
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
            stack(
                    g,
                    p,
                    print.pictures().get(show),
                    x + each * i++,
                    y,
                    each,
                    th,
                    first == last ? String.valueOf(first + 1) : (first + 1) + "–" + (last + 1),
                    l.words(),
                    k,
                    show,
                    page >= first && page <= last);
        }
        if (pages.card() != null) {
            stack(
                    g,
                    p,
                    pages.card(),
                    x + each * i,
                    y,
                    each,
                    th,
                    "card",
                    "firing card",
                    -1,
                    print.sheets(),
                    page >= print.sheets());
        }
    }

    private void stack(
            GraphicsContext g,
            Palette p,
            PagePicture pic,
            double x,
            double y,
            double w,
            double h,
            String head,
            String words,
            int layoutIndex,
            int at,
            boolean on) {
        double pw = Math.min(w - 14, h / pic.heightMm() * pic.widthMm());
        PageShow.draw(g, pic, x, y, pw, h, p.of(Ink.EDGE));
        if (on) {
            g.setStroke(p.of(Ink.COBALT));
            g.setLineWidth(3);
            g.strokeRect(x, y, pw, Math.min(h, pw / pic.widthMm() * pic.heightMm()));
        }
        Say.at(g, p, head, x + pw / 2, y + h + 16, 13, true, Ink.INK, TextAlignment.CENTER, VPos.CENTER, false);
        Say.at(
                g,
                p,
                words.replace(" from ", "\nfrom "),
                x + pw / 2,
                y + h + 26,
                12.5,
                false,
                Ink.INK2,
                TextAlignment.CENTER,
                VPos.TOP,
                false);
        spots.add(new Spot(x, y, pw, h + 40, layoutIndex, at));
    }
}
