package portwright.geometry;

/** Centre of area of an outline. */
final class Centroid {
    private Centroid() {}

    static Pt of(Outline outline) {
        Pt o = outline.corner(0);
        double twice = 0;
        double x = 0;
        double y = 0;
        for (int i = 1; i + 1 < outline.size(); i++) {
            double px = outline.corner(i).x() - o.x();
            double py = outline.corner(i).y() - o.y();
            double qx = outline.corner(i + 1).x() - o.x();
            double qy = outline.corner(i + 1).y() - o.y();
            double cross = px * qy - py * qx;
            twice += cross;
            x += cross * (px + qx);
            y += cross * (py + qy);
        }
        return new Pt(o.x() + x / 3 / twice, o.y() + y / 3 / twice);
    }
}
