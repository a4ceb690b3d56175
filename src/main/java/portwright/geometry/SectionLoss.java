package portwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import portwright.model.On;

/** How much of a straight line across a slab is lost: holes and slots wholly, grooves by their depth against the slab's thickness. */
final class SectionLoss {
    final double[] cornerX;
    final double[] cornerY;
    private final double[] holeX;
    private final double[] holeY;
    private final double[] holeR;
    /** The first so many holes are proposed ones; the rest are there already. */
    final int proposed;

    final List<Strip> strips;
    private final double[] cuts;

    /** A groove or a slot: its straight pieces and its share of the thickness. */
    record Strip(double[] ax, double[] ay, double[] bx, double[] by, double halfWidth, double factor) {
        static Strip of(Shape.Strip s, double factor) {
            List<Segment> p = s.pieces();
            return new Strip(
                    p.stream().mapToDouble(e -> e.a().x()).toArray(),
                    p.stream().mapToDouble(e -> e.a().y()).toArray(),
                    p.stream().mapToDouble(e -> e.b().x()).toArray(),
                    p.stream().mapToDouble(e -> e.b().y()).toArray(),
                    s.halfWidth(),
                    factor);
        }
    }

    private SectionLoss(Outline slab, List<Circle> proposedHoles, List<Circle> others, List<Strip> strips) {
        this(
                slab.points().stream().mapToDouble(Pt::x).toArray(),
                slab.points().stream().mapToDouble(Pt::y).toArray(),
                both(proposedHoles, others).mapToDouble(c -> c.centre().x()).toArray(),
                both(proposedHoles, others).mapToDouble(c -> c.centre().y()).toArray(),
                both(proposedHoles, others).mapToDouble(Circle::radius).toArray(),
                proposedHoles.size(),
                strips);
    }

    private SectionLoss(
            double[] cornerX,
            double[] cornerY,
            double[] holeX,
            double[] holeY,
            double[] holeR,
            int proposed,
            List<Strip> strips) {
        this.cornerX = cornerX;
        this.cornerY = cornerY;
        this.holeX = holeX;
        this.holeY = holeY;
        this.holeR = holeR;
        this.proposed = proposed;
        this.strips = strips;
        cuts = new double[cornerX.length + 2];
    }

    private static Stream<Circle> both(List<Circle> a, List<Circle> b) {
        return Stream.concat(a.stream(), b.stream());
    }

    static SectionLoss of(KilnGeometry kiln, On on) {
        double t = kiln.thickness(on);
        List<Circle> holes = kiln.holes(on).stream().map(Hole::drilledCircle).toList();
        List<Circle> others = new ArrayList<>();
        List<Strip> strips = new ArrayList<>();
        for (FittingShape f : kiln.fittings()) {
            if (!f.open() || f.face().on() != on) {
                continue;
            }
            if (f.shape() instanceof Shape.Disc d) {
                others.add(d.circle());
            } else {
                strips.add(Strip.of(f.slot(), 1));
            }
        }
        for (GrooveSolid g : kiln.grooves()) {
            if (g instanceof GrooveSolid.OnSlab s && s.on() == on) {
                strips.add(Strip.of(s.strip(), Math.min(1, s.depth() / t)));
            }
        }
        return new SectionLoss(kiln.slab(on), holes, others, strips);
    }

    /** The same slab seen from another origin. */
    SectionLoss from(double x, double y) {
        double[] back = {-x, -y};
        List<Strip> moved = strips.stream()
                .map(s -> new Strip(
                        plus(s.ax, back[0]),
                        plus(s.ay, back[1]),
                        plus(s.bx, back[0]),
                        plus(s.by, back[1]),
                        s.halfWidth,
                        s.factor))
                .toList();
        return new SectionLoss(
                plus(cornerX, back[0]),
                plus(cornerY, back[1]),
                plus(holeX, back[0]),
                plus(holeY, back[1]),
                holeR,
                proposed,
                moved);
    }

    private static double[] plus(double[] v, double by) {
        return Arrays.stream(v).map(x -> x + by).toArray();
    }

    int holeCount() {
        return holeX.length;
    }

    double holeX(int i) {
        return holeX[i];
    }

    double holeY(int i) {
        return holeY[i];
    }

    double holeR(int i) {
        return holeR[i];
    }

    /** Straight pieces of all grooves. */
    List<Segment> groovePieces() {
        List<Segment> out = new ArrayList<>();
        for (Strip s : strips) {
            for (int i = 0; i < s.ax.length; i++) {
                out.add(new Segment(new Pt(s.ax[i], s.ay[i]), new Pt(s.bx[i], s.by[i])));
            }
        }
        return out;
    }

    /**
     * Greatest lost share of the pieces of a line that lie in the slab and meet a proposed hole.
     *
     * @param angle direction, rad clockwise from the back
     * @param offset signed distance from the origin, positive to the right of the direction, mm
     * @param across where not null takes the two ends (distances along the direction) of the worst piece
     * @return share, or −1 when no proposed hole is met
     */
    double share(double angle, double offset, double[] across) {
        double dx = Math.sin(angle);
        double dy = Math.cos(angle);
        boolean met = false;
        for (int i = 0; i < proposed; i++) {
            met |= Math.abs(dy * holeX[i] - dx * holeY[i] - offset) < holeR[i];
        }
        if (!met) {
            return -1;
        }
        int n = outlineCuts(dx, dy, offset);
        double worst = -1;
        for (int k = 0; k + 1 < n; k += 2) {
            double a = cuts[k];
            double b = cuts[k + 1];
            double lost = holes(dx, dy, offset, a, b);
            if (lost < 0 || b <= a) {
                continue;
            }
            for (Strip s : strips) {
                lost += s.factor * covered(s, dx, dy, offset, a, b);
            }
            double share = Math.min(1, lost / (b - a));
            if (share > worst) {
                worst = share;
                if (across != null) {
                    across[0] = a;
                    across[1] = b;
                }
            }
        }
        return worst;
    }

    private int outlineCuts(double dx, double dy, double offset) {
        int n = 0;
        int size = cornerX.length;
        for (int i = 0; i < size; i++) {
            int j = i + 1 == size ? 0 : i + 1;
            double si = dy * cornerX[i] - dx * cornerY[i] - offset;
            double sj = dy * cornerX[j] - dx * cornerY[j] - offset;
            if (si > 0 != sj > 0) {
                double k = si / (si - sj);
                double x = cornerX[i] + k * (cornerX[j] - cornerX[i]);
                double y = cornerY[i] + k * (cornerY[j] - cornerY[i]);
                cuts[n++] = dx * x + dy * y;
            }
        }
        Arrays.sort(cuts, 0, n);
        return n;
    }

    /** Length lost to holes between a and b; −1 when no proposed hole is met there. */
    private double holes(double dx, double dy, double offset, double a, double b) {
        double lost = 0;
        boolean met = false;
        for (int i = 0; i < holeX.length; i++) {
            double off = dy * holeX[i] - dx * holeY[i] - offset;
            double half2 = holeR[i] * holeR[i] - off * off;
            if (half2 <= 0) {
                continue;
            }
            double half = Math.sqrt(half2);
            double at = dx * holeX[i] + dy * holeY[i];
            double chord = Math.min(b, at + half) - Math.max(a, at - half);
            if (chord > 0) {
                lost += chord;
                met |= i < proposed;
            }
        }
        return met ? lost : -1;
    }

    /** Length of the line between a and b that lies in a groove; pieces that overlap at a bend count once. */
    private static double covered(Strip s, double dx, double dy, double offset, double a, double b) {
        int n = s.ax.length;
        double[] from = null;
        double[] to = null;
        int k = 0;
        for (int i = 0; i < n; i++) {
            double lo = Double.POSITIVE_INFINITY;
            double hi = Double.NEGATIVE_INFINITY;
            for (int end = 0; end < 2; end++) {
                double px = end == 0 ? s.ax[i] : s.bx[i];
                double py = end == 0 ? s.ay[i] : s.by[i];
                double off = dy * px - dx * py - offset;
                double half2 = s.halfWidth * s.halfWidth - off * off;
                if (half2 > 0) {
                    double half = Math.sqrt(half2);
                    double at = dx * px + dy * py;
                    lo = Math.min(lo, at - half);
                    hi = Math.max(hi, at + half);
                }
            }
            double ex = s.bx[i] - s.ax[i];
            double ey = s.by[i] - s.ay[i];
            double len = Math.hypot(ex, ey);
            if (len > 0) {
                // the rectangle of the piece: |across| ≤ halfWidth, 0 ≤ along ≤ len
                double ux = ex / len;
                double uy = ey / len;
                double px = offset * dy - s.ax[i];
                double py = -offset * dx - s.ay[i];
                double along0 = px * ux + py * uy;
                double alongK = dx * ux + dy * uy;
                double across0 = px * uy - py * ux;
                double acrossK = dx * uy - dy * ux;
                double t0 = Math.max(low(along0, alongK, 0, len), low(across0, acrossK, -s.halfWidth, s.halfWidth));
                double t1 = Math.min(high(along0, alongK, 0, len), high(across0, acrossK, -s.halfWidth, s.halfWidth));
                if (t1 > t0) {
                    lo = Math.min(lo, t0);
                    hi = Math.max(hi, t1);
                }
            }
            lo = Math.max(lo, a);
            hi = Math.min(hi, b);
            if (hi > lo) {
                if (from == null) {
                    from = new double[n];
                    to = new double[n];
                }
                from[k] = lo;
                to[k++] = hi;
            }
        }
        return k == 0 ? 0 : union(from, to, k);
    }

    private static double low(double at0, double slope, double min, double max) {
        if (slope == 0) {
            return at0 < min || at0 > max ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return slope > 0 ? (min - at0) / slope : (max - at0) / slope;
    }

    private static double high(double at0, double slope, double min, double max) {
        if (slope == 0) {
            return at0 < min || at0 > max ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return slope > 0 ? (max - at0) / slope : (min - at0) / slope;
    }

    private static double union(double[] from, double[] to, int k) {
        for (int i = 1; i < k; i++) {
            double f = from[i];
            double t = to[i];
            int j = i - 1;
            for (; j >= 0 && from[j] > f; j--) {
                from[j + 1] = from[j];
                to[j + 1] = to[j];
            }
            from[j + 1] = f;
            to[j + 1] = t;
        }
        double total = 0;
        double end = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < k; i++) {
            total += Math.max(0, to[i] - Math.max(end, from[i]));
            end = Math.max(end, to[i]);
        }
        return total;
    }
}
