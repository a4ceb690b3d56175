package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.View;
import portwright.app.paint.BoardLook;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.geometry.Circle;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.sheet.SheetBook;

/** How a face falls on its sheets: the face, its trim lines, the names of the sheets, the edge of the one that is shown. */
final class SheetMap {
    /** Room for a strip of tape beyond the sheets, px. */
    private static final double TAPE_PX = 30;

    private static final double NAME_PX = 13;
    /** Sizes of a sheet's name, px; the first that finds a place. */
    private static final double[] NAMES_PX = {NAME_PX, 11};

    private static final double INSET_PX = 6;

    /** Where a name may stand between two edges, corners first. */
    private static final double[] SHARES = {0, 1, 0.5, 0.25, 0.75};

    private final GraphicsContext g;
    private final Palette p;
    private final KilnGeometry kiln;
    private final SheetBook.Layout layout;
    private final int page;

    /** What is left of a sheet between its trim lines, px, and its page. */
    record Region(Box box, int page) {}

    SheetMap(GraphicsContext g, Palette p, KilnGeometry kiln, SheetBook.Layout layout, int page) {
        this.g = g;
        this.p = p;
        this.kiln = kiln;
        this.layout = layout;
        this.page = page;
    }

    /** Paints in a box; answers where each sheet can be tapped. */
    List<Region> paint(double x, double y, double w, double h) {
        Box all = layout.painter().bounds();
        for (SheetBook.LaidTile t : layout.tiles()) {
            all = all.union(t.window());
        }
        boolean slab = layout.painter().face().on() != On.WALL;
        double tape = slab ? TAPE_PX : 0;
        View v = View.fit(all.minX(), all.minY(), all.maxX(), all.maxY(), x, y + tape, w, h - 2 * tape, 4);
        List<Region> out = new ArrayList<>();
        for (SheetBook.LaidTile t : layout.tiles()) {
            out.add(new Region(on(v, t.kept()), t.page()));
            if (t.page() == page) {
                rect(on(v, t.window()), true);
            }
        }
        g.save();
        new PartPainter(kiln, layout.painter().face(), List.of(), PartLook.small())
                .paint(CanvasPen.thumb(g, v, p, 0.9), all);
        g.restore();
        g.setStroke(p.of(Ink.INK2));
        g.setLineWidth(1.1);
        g.setLineDashes(6, 4);
        out.forEach(r -> g.strokeRect(
                r.box().minX(), r.box().minY(), r.box().width(), r.box().height()));
        g.setLineDashes();
        for (SheetBook.LaidTile t : layout.tiles()) {
            if (t.page() == page) {
                rect(on(v, t.window()), false);
            }
            name(v, t);
        }
        if (slab) {
            double mid = v.x(0);
            BoardLook.tape(g, p, "BACK · hinge", mid, v.y(all.maxY()) - TAPE_PX / 2, false);
            BoardLook.tape(g, p, "FRONT", mid, v.y(all.minY()) + TAPE_PX / 2, false);
        }
        return out;
    }

    /** The whole sheet that is shown, with what it overlaps of others. */
    private void rect(Box b, boolean filled) {
        if (filled) {
            g.setFill(p.of(Ink.RUTILE_FILL));
            g.fillRect(b.minX(), b.minY(), b.width(), b.height());
        } else {
            g.setStroke(p.of(Ink.COBALT));
            g.setLineWidth(3);
            g.strokeRect(b.minX(), b.minY(), b.width(), b.height());
        }
    }

    /** The name in the first corner of the sheet, else along its edges, where neither a hole nor its number lies; smaller if it must be, and none where they leave no room. */
    private void name(View v, SheetBook.LaidTile t) {
        String words = t.page() < 0 ? t.name() + " blank" : t.name();
        boolean shown = t.page() == page;
        Box b = on(v, t.kept());
        List<Box> holes =
                layout.painter().cutCircles().stream().map(k -> around(v, k)).toList();
        for (double size : NAMES_PX) {
            double tw = TextSizes.width(words, Fonts.bold(size));
            double inset = Math.min(size < NAME_PX ? INSET_PX / 3 : INSET_PX, (b.width() - tw) / 2);
            for (double down : SHARES) {
                for (double across : SHARES) {
                    double left = b.minX() + inset + across * (b.width() - 2 * inset - tw);
                    double top = b.minY() + inset + down * (b.height() - 2 * inset - size);
                    Box at = new Box(left, top, left + tw, top + size);
                    if (holes.stream().noneMatch(at::touches)) {
                        Say.at(
                                g,
                                p,
                                words,
                                left,
                                at.centre().y(),
                                size,
                                shown,
                                Ink.INK,
                                TextAlignment.LEFT,
                                VPos.CENTER,
                                true);
                        return;
                    }
                }
            }
        }
    }

    /** A hole with the number over it, px. */
    private static Box around(View v, Circle c) {
        double r = c.radius() * v.scale();
        double x = v.x(c.centre().x());
        double y = v.y(c.centre().y());
        double half = Math.max(r, NAME_PX / 2);
        return new Box(x - half, y - r - 1.6 * NAME_PX, x + half, y + r);
    }

    private static Box on(View v, Box mm) {
        return new Box(v.x(mm.minX()), v.y(mm.maxY()), v.x(mm.maxX()), v.y(mm.minY()));
    }
}
