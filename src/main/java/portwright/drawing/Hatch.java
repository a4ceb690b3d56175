package portwright.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** Parallel lines inside an area: scan lines cut with the area's sides, even-odd. */
public final class Hatch {
    private Hatch() {}

    /**
     * Hatch lines of one or more closed polygons (holes count even-odd).
     *
     * @param spacing distance between lines, mm
     * @param angle direction of the lines, rad counter-clockwise from x
     * @param window lines outside of it are left out
     */
    public static List<Segment> lines(List<List<Pt>> polygons, double spacing, double angle, Box window) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        Box all = null;
        for (List<Pt> poly : polygons) {
            for (Pt p : poly) {
                Pt t = new Pt(p.x() * c + p.y() * s, -p.x() * s + p.y() * c);
                Box b = new Box(t.x(), t.y(), t.x(), t.y());
                all = all == null ? b : all.union(b);
            }
        }
        List<Segment> out = new ArrayList<>();
        if (all == null) {
            return out;
        }
        Box w = Box.around(window.corners().stream()
                .map(p -> new Pt(p.x() * c + p.y() * s, -p.x() * s + p.y() * c))
                .toList());
        long first = (long) Math.ceil(Math.max(all.minY(), w.minY()) / spacing);
        long last = (long) Math.floor(Math.min(all.maxY(), w.maxY()) / spacing);
        for (long k = first; k <= last; k++) {
            double v = k * spacing;
            List<Double> cuts = new ArrayList<>();
            for (List<Pt> poly : polygons) {
                for (int i = 0; i < poly.size(); i++) {
                    Pt a = poly.get(i);
                    Pt b = poly.get((i + 1) % poly.size());
                    double va = -a.x() * s + a.y() * c;
                    double vb = -b.x() * s + b.y() * c;
                    if (va <= v != vb <= v) {
                        double t = (v - va) / (vb - va);
                        double ua = a.x() * c + a.y() * s;
                        double ub = b.x() * c + b.y() * s;
                        cuts.add(ua + t * (ub - ua));
                    }
                }
            }
            Collections.sort(cuts);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                Pt a = new Pt(cuts.get(i) * c - v * s, cuts.get(i) * s + v * c);
                Pt b = new Pt(cuts.get(i + 1) * c - v * s, cuts.get(i + 1) * s + v * c);
                double[] part = window.clip(a, b);
                if (part != null) {
                    out.add(new Segment(between(a, b, part[0]), between(a, b, part[1])));
                }
            }
        }
        return out;
    }

    private static Pt between(Pt a, Pt b, double t) {
        return new Pt(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }
}
