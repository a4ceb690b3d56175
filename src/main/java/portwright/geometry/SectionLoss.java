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

    final List<SectionStrip> strips;
    private final double[] cuts;

    private SectionLoss(Outline slab, List<Circle> proposedHoles, List<Circle> others, List<SectionStrip> strips) {
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
            List<SectionStrip> strips) {
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
        return of(kiln, on, kiln.holes(on).stream().map(Hole::drilledCircle).toList());
    }

    /** @param holes proposed ones, as drilled */
    static SectionLoss of(KilnGeometry kiln, On on, List<Circle> holes) {
        double t = kiln.thickness(on);
        List<Circle> others = new ArrayList<>();
        List<SectionStrip> strips = new ArrayList<>();
        for (FittingShape f : kiln.fittings()) {
            if (!f.open() || f.face().on() != on) {
                continue;
            }
            if (f.shape() instanceof Shape.Disc d) {
                others.add(d.circle());
            } else {
                strips.add(SectionStrip.of(f.slot(), 1));
            }
        }
        for (GrooveSolid g : kiln.grooves()) {
            if (g instanceof GrooveSolid.OnSlab s && s.on() == on) {
                strips.add(SectionStrip.of(s.strip(), Math.min(1, s.depth() / t)));
            }
        }
        return new SectionLoss(kiln.slab(on), holes, others, strips);
    }

    /** The same slab seen from another origin. */
    SectionLoss from(double x, double y) {
        double[] back = {-x, -y};
        List<SectionStrip> moved = strips.stream()
                .map(s -> new SectionStrip(
                        plus(s.ax(), back[0]),
                        plus(s.ay(), back[1]),
                        plus(s.bx(), back[0]),
                        plus(s.by(), back[1]),
                        s.halfWidth(),
                        s.factor()))
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
        for (SectionStrip s : strips) {
            for (int i = 0; i < s.ax().length; i++) {
                out.add(new Segment(new Pt(s.ax()[i], s.ay()[i]), new Pt(s.bx()[i], s.by()[i])));
            }
        }
        return out;
    }

    /** Offset of the line through a place, mm; positive to the right of its direction. */
    static double offset(double angle, double x, double y) {
        return Math.cos(angle) * x - Math.sin(angle) * y;
    }

    /** Corners and places where a groove's side leaves the slab that a line passes, centres of holes and ends of grooves whose edge it touches, within {@code near} mm. */
    List<Pt> grazed(double angle, double offset, double near) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < cornerX.length; i++) {
            graze(new Pt(cornerX[i], cornerY[i]), 0, angle, offset, near, out);
        }
        for (int i = 0; i < holeX.length; i++) {
            graze(new Pt(holeX[i], holeY[i]), holeR[i], angle, offset, near, out);
        }
        for (SectionStrip s : strips) {
            for (int i = 0; i < s.ax().length; i++) {
                graze(new Pt(s.ax()[i], s.ay()[i]), s.halfWidth(), angle, offset, near, out);
                graze(new Pt(s.bx()[i], s.by()[i]), s.halfWidth(), angle, offset, near, out);
                for (Pt p : leaves(s, i)) {
                    graze(p, 0, angle, offset, near, out);
                }
            }
        }
        return out;
    }

    /** Where the two sides of a groove's piece cross the rim. */
    private List<Pt> leaves(SectionStrip s, int piece) {
        double x = s.bx()[piece] - s.ax()[piece];
        double y = s.by()[piece] - s.ay()[piece];
        double length = Math.hypot(x, y);
        List<Pt> out = new ArrayList<>();
        for (int side = -1; length > 0 && side <= 1; side += 2) {
            double angle = Math.atan2(x, y);
            double offset = offset(angle, s.ax()[piece], s.ay()[piece]) + side * s.halfWidth();
            double start = (x * s.ax()[piece] + y * s.ay()[piece]) / length;
            int n = outlineCuts(Math.sin(angle), Math.cos(angle), offset);
            for (int i = 0; i < n; i++) {
                if (cuts[i] > start && cuts[i] < start + length) {
                    out.add(new Pt(
                            Math.sin(angle) * cuts[i] + Math.cos(angle) * offset,
                            Math.cos(angle) * cuts[i] - Math.sin(angle) * offset));
                }
            }
        }
        return out;
    }

    private static void graze(Pt at, double radius, double angle, double offset, double near, List<Pt> out) {
        if (Math.abs(Math.abs(offset(angle, at.x(), at.y()) - offset) - radius) < near && !out.contains(at)) {
            out.add(at);
        }
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
            for (SectionStrip s : strips) {
                lost += s.factor() * s.covered(dx, dy, offset, a, b);
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
}
