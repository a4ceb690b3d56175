package portwright.app.doc;

import portwright.geometry.Pt;

/**
 * Where a picture lies on a canvas: the picture point ({@code cx}, {@code cy}) in mm, y up, stands at the canvas point
 * ({@code px}, {@code py}); {@code scale} is px per mm.
 */
public record View(double cx, double cy, double px, double py, double scale) {
    public double x(double mmX) {
        return px + (mmX - cx) * scale;
    }

    public double y(double mmY) {
        return py - (mmY - cy) * scale;
    }

    public Pt toMm(double x, double y) {
        return new Pt(cx + (x - px) / scale, cy - (y - py) / scale);
    }

    /** Zooms by a factor and keeps the picture under a canvas point where it is. */
    public View zoomed(double factor, double atX, double atY) {
        double s = Math.max(0.05, Math.min(40, scale * factor));
        Pt p = toMm(atX, atY);
        return new View(p.x(), p.y(), atX, atY, s);
    }

    public View moved(double dx, double dy) {
        return new View(cx, cy, px + dx, py + dy, scale);
    }

    /** The view in which a box of the picture fills a canvas box, with a margin in px. */
    public static View fit(
            double minX,
            double minY,
            double maxX,
            double maxY,
            double left,
            double top,
            double width,
            double height,
            double margin) {
        double s = Math.min(
                (width - 2 * margin) / Math.max(1, maxX - minX), (height - 2 * margin) / Math.max(1, maxY - minY));
        return new View((minX + maxX) / 2, (minY + maxY) / 2, left + width / 2, top + height / 2, Math.max(0.02, s));
    }
}
