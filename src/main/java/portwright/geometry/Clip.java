package portwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Straight pieces cut off at an outline. */
final class Clip {
    private Clip() {}

    /** The parts of a piece that lie within an outline, in order. */
    static List<Segment> within(Outline o, Segment s) {
        double dx = s.b().x() - s.a().x();
        double dy = s.b().y() - s.a().y();
        double[] cuts = new double[o.size() + 2];
        int n = 0;
        cuts[n++] = 0;
        for (int i = 0; i < o.size(); i++) {
            Pt a = o.corner(i);
            Pt b = o.corner(i + 1);
            double sa = dx * (a.y() - s.a().y()) - dy * (a.x() - s.a().x());
            double sb = dx * (b.y() - s.a().y()) - dy * (b.x() - s.a().x());
            if (sa > 0 != sb > 0) {
                double k = sa / (sa - sb);
                Pt cross = new Pt(a.x() + k * (b.x() - a.x()), a.y() + k * (b.y() - a.y()));
                double t = ((cross.x() - s.a().x()) * dx + (cross.y() - s.a().y()) * dy) / (dx * dx + dy * dy);
                if (t > 0 && t < 1) {
                    cuts[n++] = t;
                }
            }
        }
        cuts[n++] = 1;
        Arrays.sort(cuts, 0, n);
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i + 1 < n; i++) {
            double m = (cuts[i] + cuts[i + 1]) / 2;
            if (cuts[i + 1] - cuts[i] > 1e-12 && o.contains(new Pt(s.a().x() + m * dx, s.a().y() + m * dy))) {
                out.add(new Segment(at(s, cuts[i]), at(s, cuts[i + 1])));
            }
        }
        return out;
    }

    private static Pt at(Segment s, double t) {
        return t == 0
                ? s.a()
                : t == 1
                        ? s.b()
                        : new Pt(s.a().x() + t * (s.b().x() - s.a().x()), s.a().y() + t * (s.b().y() - s.a().y()));
    }
}
