package portwright.drawing;

import java.util.List;
import portwright.geometry.Pt;

/** An upright rectangle, mm. */
public record Box(double minX, double minY, double maxX, double maxY) {
    /** Least box round some points. */
    public static Box around(List<Pt> points) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (Pt p : points) {
            x0 = Math.min(x0, p.x());
            y0 = Math.min(y0, p.y());
            x1 = Math.max(x1, p.x());
            y1 = Math.max(y1, p.y());
        }
        return new Box(x0, y0, x1, y1);
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Pt centre() {
        return new Pt((minX + maxX) / 2, (minY + maxY) / 2);
    }

    /** Grown by d on every side; negative shrinks. */
    public Box grown(double d) {
        return new Box(minX - d, minY - d, maxX + d, maxY + d);
    }

    public Box union(Box o) {
        return new Box(Math.min(minX, o.minX), Math.min(minY, o.minY), Math.max(maxX, o.maxX), Math.max(maxY, o.maxY));
    }

    public boolean contains(Pt p) {
        return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
    }

    public boolean contains(Box o) {
        return o.minX >= minX && o.maxX <= maxX && o.minY >= minY && o.maxY <= maxY;
    }

    public boolean touches(Box o) {
        return o.minX <= maxX && o.maxX >= minX && o.minY <= maxY && o.maxY >= minY;
    }

    /** Corners clockwise from the upper left. */
    public List<Pt> corners() {
        return List.of(new Pt(minX, maxY), new Pt(maxX, maxY), new Pt(maxX, minY), new Pt(minX, minY));
    }

    /** The part of a segment inside, as parameters from 0 at a to 1 at b; null when it misses. */
    public double[] clip(Pt a, Pt b) {
        double t0 = 0;
        double t1 = 1;
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {a.x() - minX, maxX - a.x(), a.y() - minY, maxY - a.y()};
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] < 0) {
                    return null;
                }
            } else if (p[i] < 0) {
                t0 = Math.max(t0, q[i] / p[i]);
            } else {
                t1 = Math.min(t1, q[i] / p[i]);
            }
        }
        return t0 <= t1 ? new double[] {t0, t1} : null;
    }

    /** Area of the part of a polygon that lies inside, mm² (unsigned, for simple polygons). */
    public double sharedArea(List<Pt> polygon) {
        List<Pt> in = polygon;
        for (int side = 0; side < 4 && !in.isEmpty(); side++) {
            List<Pt> out = new java.util.ArrayList<>();
            for (int i = 0; i < in.size(); i++) {
                Pt a = in.get(i);
                Pt b = in.get((i + 1) % in.size());
                double da = inside(a, side);
                double db = inside(b, side);
                if (da >= 0) {
                    out.add(a);
                }
                if (da >= 0 != db >= 0) {
                    double t = da / (da - db);
                    out.add(new Pt(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y())));
                }
            }
            in = out;
        }
        double twice = 0;
        for (int i = 0; i < in.size(); i++) {
            Pt a = in.get(i);
            Pt b = in.get((i + 1) % in.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    private double inside(Pt p, int side) {
        return switch (side) {
            case 0 -> p.x() - minX;
            case 1 -> maxX - p.x();
            case 2 -> p.y() - minY;
            default -> maxY - p.y();
        };
    }
}
