package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Background;
import javafx.scene.layout.Region;
import portwright.app.doc.Document;
import portwright.app.doc.Picture;
import portwright.app.doc.Plot;
import portwright.app.doc.RegionDesk;
import portwright.app.doc.View;
import portwright.app.paint.BoardLook;
import portwright.app.paint.CanvasPen;
import portwright.app.paint.Palette;
import portwright.app.paint.RulePainter;
import portwright.app.paint.SharpCanvas;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.Labels;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Port;
import portwright.model.Shelf;
import portwright.model.UnitSystem;

/** Paints the board: a canvas anew only when kiln, view or theme change, and over it small ones with what moves and what lies over it. */
final class BoardPainter {
    private static final double RIM = 1.4;

    private final Board board;
    private final Document doc;
    private final Canvas still = new Canvas();
    private final LivePainter live = new LivePainter();
    private Ground painted;
    private double width = 1;
    private double height = 1;
    /** How much larger than laid out the board is shown. */
    private double factor = 1;

    BoardPainter(Board board, Document doc) {
        this.board = board;
        this.doc = doc;
    }

    List<Node> nodes() {
        List<Node> nodes = new ArrayList<>(live.nodes());
        nodes.add(0, still);
        return nodes;
    }

    void resize(double w, double h) {
        width = Math.max(1, w);
        height = Math.max(1, h);
        factor = SharpCanvas.factor(board);
        SharpCanvas.size(still, width, height, factor);
        live.factor(factor);
    }

    /**
     * Paints what changed.
     *
     * @param probe carries the colours of the theme
     * @param region where a hole's centre may go; null when it is not shown
     */
    void paint(Region probe, RegionDesk.Region region, SectionWords words) {
        View view = board.view();
        Plot plot = board.plot();
        Palette p = Palette.of(probe);
        double w = width;
        double h = height;
        double left = RulePainter.BREADTH;
        Pt a = view.toMm(left, h);
        Pt b = view.toMm(w, left);
        Box window = new Box(a.x(), a.y(), b.x(), b.y());
        KilnGeometry kiln = plot.kiln();
        String moving = board.marks().dragged;
        boolean section = plot.picture() == Picture.SECTION;
        Ground ground = new Ground(
                plot.layered() ? kiln.design().kiln() : kiln,
                kiln.design().shelves(),
                painted != null && moving != null
                        ? painted.ports
                        : kiln.design().ports(),
                moving,
                plot.picture(),
                view,
                board.units(),
                w,
                h,
                factor,
                probe.getBackground(),
                board.isFocused(),
                section ? words : region);
        if (!ground.equals(painted)) {
            painted = ground;
            still(p, window, region, words);
        }
        live.paint(p, board, doc, w, h, window);
    }

    /** All that the lower canvas depends on. While a part is dragged the other ports lie still, and so do the names that left room for it. */
    private record Ground(
            Object kiln,
            List<Shelf> shelves,
            List<Port> ports,
            String moving,
            Picture picture,
            View view,
            UnitSystem units,
            double width,
            double height,
            double factor,
            Background theme,
            boolean focused,
            Object extra) {}

    /** The kiln, where a centre may go, tapes and rules. */
    private void still(Palette p, Box window, RegionDesk.Region region, SectionWords words) {
        GraphicsContext g = still.getGraphicsContext2D();
        double w = painted.width;
        double h = painted.height;
        View view = painted.view;
        Plot plot = board.plot();
        g.clearRect(0, 0, w, h);
        g.setFill(p.of(Ink.EDGE));
        g.fillRect(0, 0, w, h);
        g.setFill(p.of(Ink.PAPER));
        g.fillRect(RIM, RIM, w - 2 * RIM, h - 2 * RIM);
        CanvasPen pen = CanvasPen.screen(g, view, p);
        boolean section = painted.picture == Picture.SECTION;
        List<Box> covered = BoardLook.covered(plot, view, w, h);
        inRules(g, w, h, () -> {
            if (section) {
                SectionDeck.under(g, pen, view, p, plot.kiln(), words, w, h);
            }
            plot.under(pen, window, board.marks().dragged, covered);
            if (region != null) {
                RegionPainter.paint(g, p, plot, view, region, w, h);
                plot.words(pen, window, board.marks().dragged, covered);
            }
            if (section) {
                Labels labels = new Labels(pen, window);
                covered.forEach(labels::keepFree);
                SectionDeck.over(g, pen, view, p, plot, words, w, labels);
            }
            BoardLook.tapes(g, p, plot, view, w, h);
            BoardLook.emptyHint(g, p, plot, view, w, h);
        });
        RulePainter.left(g, p, view, board.units(), RulePainter.BREADTH, h);
        RulePainter.top(g, p, view, board.units(), RulePainter.BREADTH, w);
        BoardLook.scaleWords(g, p, view, w, h, SharpCanvas.factor(board));
        if (painted.focused) {
            g.setStroke(p.of(Ink.COBALT));
            g.setLineWidth(3);
            g.setLineDashes();
            g.strokeRect(1.5, 1.5, w - 3, h - 3);
        }
    }

    private static void inRules(GraphicsContext g, double w, double h, Runnable painting) {
        double left = RulePainter.BREADTH;
        g.save();
        g.beginPath();
        g.rect(left, left, w - left, h - left);
        g.clip();
        painting.run();
        g.restore();
    }
}
