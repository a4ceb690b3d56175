package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.On;

/**
 * The straight line across a slab that loses the largest share of its length to holes and grooves, among the lines that meet a proposed hole.
 * A few likely lines are followed uphill first; then the field of all lines is split finer and finer, and every part that surely holds no
 * worse line ({@link SectionBound}) is dropped, until nothing is left. The share found is the greatest to {@link #EXACT}.
 */
public final class WeakestSection {
    /** A worse line than the one found, if there is one, is worse by less than this share. */
    static final double EXACT = 2e-7;

    /** A roll that wins less than this share has not moved. */
    private static final double STILL = 1e-12;

    /** A line this near to a corner, or to touching a hole or a groove, grazes it, mm. */
    private static final double GRAZED = 0.1;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private static final int BEST = 5;
    private static final int ROUND = 12;
    /** First split of the field of lines, each way. */
    private static final int GRID = 16;
    /** Parts smaller than this, mm, are given up: only where a hole cuts the rim do they come. */
    private static final double SMALLEST = 1e-5;
    /** Parts looked at before the search gives up the proof, on a slab that a hole cuts at its rim; the worst line known then stands. */
    private static final int MOST = 200_000;

    private final SectionLoss loss;
    private final double size;
    private final List<double[]> tried = new ArrayList<>();
    private double[] best;
    private int looked;

    /**
     * A line across a slab.
     *
     * @param angle direction of the line, rad clockwise from the back, 0 ≤ angle &lt; π
     * @param offset signed distance of the line from the frame's origin, positive to the right of its direction, mm
     * @param share of its length that is lost
     * @param across the line from rim to rim
     */
    public record Line(double angle, double offset, double share, Segment across) {}

    private WeakestSection(SectionLoss loss, double size) {
        this.loss = loss;
        this.size = size;
    }

    static Line of(KilnGeometry kiln, On on) {
        return of(kiln, on, SectionLoss.of(kiln, on));
    }

    static Line of(KilnGeometry kiln, On on, SectionLoss loss) {
        if (loss.proposed == 0) {
            return null;
        }
        Segment box = kiln.slab(on).bounds();
        Pt middle =
                new Pt((box.a().x() + box.b().x()) / 2, (box.a().y() + box.b().y()) / 2);
        return new WeakestSection(loss.from(middle.x(), middle.y()), box.length() / 2).search(middle);
    }

    private Line search(Pt middle) {
        candidates();
        tried.sort((p, q) -> Double.compare(q[2], p[2]));
        List<double[]> starts = new ArrayList<>();
        for (double[] c : tried) {
            if (starts.size() < BEST
                    && starts.stream()
                            .noneMatch(s -> Math.abs(Math.sin(s[0] - c[0])) * size < 8 && Math.abs(s[1] - c[1]) < 8)) {
                starts.add(c);
            }
        }
        for (double[] s : starts) {
            climb(s);
        }
        prove();
        polish();
        return best == null ? null : line(best, middle);
    }

    private void climb(double[] start) {
        double[] up = roll(roll(start, 5, 0, 1e-2), 0.4, 0.9, 1e-4);
        if (best == null || up[2] > best[2] - 1e-7) {
            up = roll(up, 0.02, 1.8, 1e-10);
            for (int again = 0; again < 8; again++) {
                double[] next = roll(up, again % 2 == 0 ? 0.02 : 5e-4, again, 1e-10);
                boolean still = next[2] - up[2] < 1e-12 && again > 1;
                up = next[2] > up[2] ? next : up;
                if (still) {
                    break;
                }
            }
            if (best == null || up[2] > best[2]) {
                best = up;
            }
        }
    }

    /**
     * Rolls the worst line known to its very top, so that a turned or mirrored kiln gives the same figure. Where the line grazes a corner, a
     * hole or a groove its share has an edge that a triangle cannot walk along: there the line is swung about what it grazes.
     */
    private void polish() {
        double[] spans = {0.1, 5e-3, 2e-4, 1e-5};
        int still = 0;
        for (int k = 0; best != null && k < 48 && still < 2 * spans.length; k++) {
            double span = spans[k % spans.length];
            double[] up = roll(best, span, 0.7 * k, 1e-12);
            for (Pt grazed : loss.grazed(up[0], up[1], GRAZED)) {
                up = swing(up, grazed, 10 * span / size);
            }
            still = up[2] > best[2] + STILL ? 0 : still + 1;
            best = up[2] > best[2] ? up : best;
        }
    }

    /** The best of the lines that pass a place as this one does, turned by up to {@code reach} rad either way: golden section. */
    private double[] swing(double[] line, Pt about, double reach) {
        double beside = line[1] - SectionLoss.offset(line[0], about.x(), about.y());
        double low = line[0] - reach;
        double high = line[0] + reach;
        double[] best = line;
        double[] left = passing(about, beside, high - GOLDEN * (high - low));
        double[] right = passing(about, beside, low + GOLDEN * (high - low));
        while (high - low > 1e-13) {
            boolean leftwards = left[2] > right[2];
            double[] better = leftwards ? left : right;
            best = better[2] > best[2] ? better : best;
            if (leftwards) {
                high = right[0];
                right = left;
                left = passing(about, beside, high - GOLDEN * (high - low));
            } else {
                low = left[0];
                left = right;
                right = passing(about, beside, low + GOLDEN * (high - low));
            }
        }
        return best;
    }

    private double[] passing(Pt place, double beside, double angle) {
        return at(angle, SectionLoss.offset(angle, place.x(), place.y()) + beside);
    }

    /** Splits the field of all lines until no part is left that may hold a worse line than the worst known. */
    private void prove() {
        SectionField field = new SectionField();
        SectionBound bound = new SectionBound(loss, field);
        java.util.ArrayDeque<double[]> parts = new java.util.ArrayDeque<>();
        double angle = Math.PI / 2 / GRID;
        double offset = size / GRID;
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                parts.add(new double[] {(2 * i + 1) * angle, angle, -size + (2 * j + 1) * offset, offset});
            }
        }
        looked = 0;
        while (!parts.isEmpty() && looked < MOST) {
            double[] p = parts.removeLast();
            looked++;
            field.set(p[0], p[1], p[2], p[3]);
            if (!bound.mayExceed(best == null ? 0 : best[2] + EXACT)) {
                continue;
            }
            double share = loss.share(p[0], p[2], null);
            if (share > 0 && (best == null || share > best[2] + EXACT)) {
                climb(new double[] {p[0], p[2], share});
            }
            if (p[1] * size > p[3]) {
                parts.add(new double[] {p[0] - p[1] / 2, p[1] / 2, p[2], p[3]});
                parts.add(new double[] {p[0] + p[1] / 2, p[1] / 2, p[2], p[3]});
            } else if (p[3] > SMALLEST) {
                parts.add(new double[] {p[0], p[1], p[2] - p[3] / 2, p[3] / 2});
                parts.add(new double[] {p[0], p[1], p[2] + p[3] / 2, p[3] / 2});
            }
        }
    }

    private void candidates() {
        int corners = loss.cornerX.length;
        List<Segment> pieces = loss.groovePieces();
        for (int i = 0; i < loss.proposed; i++) {
            double x = loss.holeX(i);
            double y = loss.holeY(i);
            double r = loss.holeR(i);
            for (int j = i + 1; j < loss.proposed; j++) {
                through(x, y, Math.atan2(loss.holeX(j) - x, loss.holeY(j) - y), r);
            }
            for (int c = 0; c < corners; c++) {
                int d = (c + 1) % corners;
                through(x, y, Math.atan2(loss.cornerX[c] - x, loss.cornerY[c] - y), r);
                through(
                        x,
                        y,
                        Math.atan2(loss.cornerX[d] - loss.cornerX[c], loss.cornerY[d] - loss.cornerY[c]) + Math.PI / 2,
                        r);
            }
            for (int k = 0; k < ROUND; k++) {
                through(x, y, k * Math.PI / ROUND, r);
            }
            for (Segment p : pieces) {
                double along = Math.atan2(p.b().x() - p.a().x(), p.b().y() - p.a().y());
                through(x, y, along, r);
                attempt(along, SectionLoss.offset(along, p.a().x(), p.a().y()));
                through(x, y, Math.atan2(p.a().x() - x, p.a().y() - y), r);
                through(x, y, Math.atan2(p.b().x() - x, p.b().y() - y), r);
            }
        }
        for (int c = 0; c < corners; c++) {
            for (int d = c + 1; d < corners; d++) {
                double a = Math.atan2(loss.cornerX[d] - loss.cornerX[c], loss.cornerY[d] - loss.cornerY[c]);
                attempt(a, SectionLoss.offset(a, loss.cornerX[c], loss.cornerY[c]));
            }
        }
    }

    private void through(double x, double y, double angle, double r) {
        double offset = SectionLoss.offset(angle, x, y);
        attempt(angle, offset);
        attempt(angle, offset + 0.6 * r);
        attempt(angle, offset - 0.6 * r);
    }

    private void attempt(double angle, double offset) {
        double share = loss.share(angle, offset, null);
        if (share >= 0) {
            tried.add(new double[] {angle, offset, share});
        }
    }

    /** Follows a line uphill with a triangle of lines that rolls and shrinks (Nelder and Mead 1965) until it is smaller than {@code small} mm. */
    private double[] roll(double[] start, double span, double tilt, double small) {
        double[][] p = {start, beside(start, span, tilt), beside(start, span, tilt + 2)};
        for (int i = 0; i < 260; i++) {
            java.util.Arrays.sort(p, (x, y) -> Double.compare(y[2], x[2]));
            if (Math.max(Math.abs(p[2][0] - p[0][0]) * size, Math.abs(p[2][1] - p[0][1])) < small) {
                break;
            }
            double[] mid = {(p[0][0] + p[1][0]) / 2, (p[0][1] + p[1][1]) / 2};
            double[] mirrored = along(mid, p[2], -1);
            if (mirrored[2] > p[0][2]) {
                double[] far = along(mid, p[2], -2);
                p[2] = far[2] > mirrored[2] ? far : mirrored;
            } else if (mirrored[2] > p[1][2]) {
                p[2] = mirrored;
            } else {
                double[] near = along(mid, p[2], mirrored[2] > p[2][2] ? -0.5 : 0.5);
                if (near[2] > Math.max(p[2][2], mirrored[2])) {
                    p[2] = near;
                } else {
                    p[1] = along(p[0], p[1], 0.5);
                    p[2] = along(p[0], p[2], 0.5);
                }
            }
        }
        java.util.Arrays.sort(p, (x, y) -> Double.compare(y[2], x[2]));
        return p[0];
    }

    private double[] beside(double[] l, double span, double tilt) {
        return at(l[0] + Math.cos(tilt) * span / size, l[1] + Math.sin(tilt) * span);
    }

    private double[] along(double[] from, double[] to, double k) {
        return at(from[0] + k * (to[0] - from[0]), from[1] + k * (to[1] - from[1]));
    }

    private double[] at(double angle, double offset) {
        return new double[] {angle, offset, loss.share(angle, offset, null)};
    }

    private Line line(double[] l, Pt middle) {
        double[] ends = new double[2];
        double share = loss.share(l[0], l[1], ends);
        double dx = Math.sin(l[0]);
        double dy = Math.cos(l[0]);
        double x = l[1] * dy + middle.x();
        double y = -l[1] * dx + middle.y();
        Segment across =
                new Segment(new Pt(x + ends[0] * dx, y + ends[0] * dy), new Pt(x + ends[1] * dx, y + ends[1] * dy));
        double offset = l[1] + dy * middle.x() - dx * middle.y();
        boolean turn = Math.floorMod((long) Math.floor(l[0] / Math.PI), 2L) == 1;
        double angle = l[0] - Math.PI * Math.floor(l[0] / Math.PI);
        return new Line(angle, turn ? -offset : offset, share, across);
    }
}
