package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import portwright.app.paint.SharpCanvas;
import portwright.drawing.Box;
import portwright.geometry.Pt;

/**
 * Paints things that move on canvases no larger than they are. A canvas is drawn whole at every change, and so is whatever lies below
 * it; things that touch share one canvas, so that their order stays.
 */
final class Patches {
    /** Canvases grow by steps, px: a new size costs a new picture in memory. */
    private static final double STEP_PX = 32;

    /** Corners of canvases lie on whole px also where the window is shown a quarter or a half larger. */
    private static final double CORNER_PX = 4;

    private final Group group = new Group();
    private final List<Canvas> canvases = new ArrayList<>();
    private final List<Patch> patches = new ArrayList<>();
    private double factor = 1;

    Patches() {
        group.setManaged(false);
        group.setMouseTransparent(true);
    }

    /** How much larger than laid out the board is shown. */
    void factor(double f) {
        factor = f;
    }

    Node node() {
        return group;
    }

    /**
     * Adds something to what is shown next.
     *
     * @param bounds all that it covers, px of the board, y down
     * @param clip nothing is drawn outside of it
     */
    void add(Box bounds, Box clip, Consumer<GraphicsContext> painting) {
        if (!bounds.touches(clip)) {
            return;
        }
        Box seen = new Box(
                Math.max(bounds.minX(), clip.minX()),
                Math.max(bounds.minY(), clip.minY()),
                Math.min(bounds.maxX(), clip.maxX()),
                Math.min(bounds.maxY(), clip.maxY()));
        Consumer<GraphicsContext> held = clip.contains(bounds) ? painting : g -> clipped(g, clip, painting);
        Patch all = new Patch(seen, List.of(held));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Patch p : List.copyOf(patches)) {
                if (p.bounds.touches(all.bounds)) {
                    all = p.with(all);
                    patches.remove(p);
                    grown = true;
                }
            }
        }
        patches.add(all);
    }

    private static void clipped(GraphicsContext g, Box clip, Consumer<GraphicsContext> painting) {
        g.save();
        g.beginPath();
        g.rect(clip.minX(), clip.minY(), clip.width(), clip.height());
        g.clip();
        painting.accept(g);
        g.restore();
    }

    /** The canvases of what was added round a point and will be shown, px. */
    Box around(Pt point) {
        return patches.stream()
                .filter(p -> p.bounds.contains(point))
                .map(Patch::canvas)
                .reduce(Box.around(List.of(point)), Box::union);
    }

    /** Shows what was added since it was called last, and nothing else. */
    void show() {
        while (canvases.size() < patches.size()) {
            Canvas c = new Canvas();
            c.getGraphicsContext2D().setLineCap(StrokeLineCap.BUTT);
            c.getGraphicsContext2D().setLineJoin(StrokeLineJoin.MITER);
            canvases.add(c);
            group.getChildren().add(c);
        }
        for (int i = 0; i < canvases.size(); i++) {
            boolean used = i < patches.size();
            canvases.get(i).setVisible(used);
            if (used) {
                patches.get(i).paint(canvases.get(i), factor);
            }
        }
        patches.clear();
    }

    private record Patch(Box bounds, List<Consumer<GraphicsContext>> paintings) {
        Patch with(Patch later) {
            List<Consumer<GraphicsContext>> all = new ArrayList<>(paintings);
            all.addAll(later.paintings);
            return new Patch(bounds.union(later.bounds), all);
        }

        Box canvas() {
            double x = Math.floor(bounds.minX() / CORNER_PX) * CORNER_PX;
            double y = Math.floor(bounds.minY() / CORNER_PX) * CORNER_PX;
            double w = Math.ceil((bounds.maxX() - x) / STEP_PX) * STEP_PX;
            double h = Math.ceil((bounds.maxY() - y) / STEP_PX) * STEP_PX;
            return new Box(x, y, x + w, y + h);
        }

        void paint(Canvas c, double factor) {
            Box at = canvas();
            c.relocate(at.minX(), at.minY());
            SharpCanvas.size(c, at.width(), at.height(), factor);
            GraphicsContext g = c.getGraphicsContext2D();
            g.clearRect(0, 0, at.width(), at.height());
            g.save();
            g.translate(-at.minX(), -at.minY());
            paintings.forEach(p -> p.accept(g));
            g.restore();
        }
    }
}
