package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;
import portwright.model.On;

/** How much of a straight line across a slab proposed holes, other holes and grooves take; in plain arrays, for the inner loops. */
final class LostShare {
    private final double[] ox;
    private final double[] oy;
    final double[] fixedX;
    final double[] fixedY;
    private final double[] fixedR;
    /** Of each groove or slot its straight pieces: ends, half its width, share of the thickness. */
    final double[][][] grooves;

    /** Where a chamber with a recess bends inward; a line may then lie in the slab in several pieces. */
    final List<Pt> bends;

    /** @param more further round holes that lie fixed: x, y, radius */
    LostShare(KilnGeometry kiln, On on, List<double[]> more) {
        Outline o = kiln.slab(on);
        ox = o.points().stream().mapToDouble(Pt::x).toArray();
        oy = o.points().stream().mapToDouble(Pt::y).toArray();
        List<double[]> discs = new ArrayList<>(more);
        bends = o.convex() ? List.of() : bends(o);
        List<double[][]> strips = new ArrayList<>();
        for (FittingShape f : kiln.fittings()) {
            if (!f.open() || f.face().on() != on) {
                continue;
            }
            if (f.shape() instanceof Shape.Disc d) {
                discs.add(new double[] {
                    d.circle().centre().x(), d.circle().centre().y(), d.circle().radius()
                });
            } else {
                add(f.slot(), 1, strips);
            }
        }
        fixedX = discs.stream().mapToDouble(a -> a[0]).toArray();
        fixedY = discs.stream().mapToDouble(a -> a[1]).toArray();
        fixedR = discs.stream().mapToDouble(a -> a[2]).toArray();
        for (GrooveSolid g : kiln.grooves()) {
            if (g instanceof GrooveSolid.OnSlab s && s.on() == on) {
                add(s.strip(), Math.min(1, s.depth() / kiln.thickness(on)), strips);
            }
        }
        grooves = strips.toArray(double[][][]::new);
    }

    private static List<Pt> bends(Outline o) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < o.size(); i++) {
            Pt a = o.corner(i - 1);
            Pt b = o.corner(i);
            Pt c = o.corner(i + 1);
            if ((b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x()) > 0) {
                out.add(b);
            }
        }
        return out;
    }

    private static void add(Shape.Strip strip, double share, List<double[][]> strips) {
        List<double[]> pieces = new ArrayList<>();
        for (Segment piece : strip.pieces()) {
            pieces.add(new double[] {
                piece.a().x(), piece.a().y(), piece.b().x(), piece.b().y(), strip.halfWidth(), share
            });
        }
        strips.add(pieces.toArray(double[][]::new));
    }

    /**
     * Lost share of the line with direction (c, s) and offset {@code off}, the greatest of its pieces that lie in the slab and meet a proposed hole; 0
     * when it meets none.
     */
    double share(double c, double s, double off, double[] x, double[] y, double r) {
        boolean met = false;
        for (int i = 0; i < x.length && !met; i++) {
            met = Math.abs(-s * x[i] + c * y[i] - off) < r;
        }
        if (!met) {
            return 0;
        }
        if (!bends.isEmpty()) {
            double[] cuts = cuts(c, s, off);
            double most = 0;
            for (int k = 0; k + 1 < cuts.length; k += 2) {
                most = Math.max(most, share(c, s, off, cuts[k], cuts[k + 1], x, y, r));
            }
            return most;
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int n = ox.length;
        double a = -s * ox[n - 1] + c * oy[n - 1] - off;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double b = -s * ox[i] + c * oy[i] - off;
            if (a > 0 != b > 0) {
                double along = along(c, s, j, i, a / (a - b));
                low = Math.min(low, along);
                high = Math.max(high, along);
            }
            a = b;
        }
        return share(c, s, off, low, high, x, y, r);
    }

    /** How far along a line an edge of the slab is cut, k of the way from its corner j to i. */
    private double along(double c, double s, int j, int i, double k) {
        return c * (ox[j] + k * (ox[i] - ox[j])) + s * (oy[j] + k * (oy[i] - oy[j]));
    }

    /** Where a line goes into the slab and out of it, in order along the line. */
    private double[] cuts(double c, double s, double off) {
        int n = ox.length;
        double[] out = new double[n + 1];
        int k = 0;
        double a = -s * ox[n - 1] + c * oy[n - 1] - off;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double b = -s * ox[i] + c * oy[i] - off;
            if (a > 0 != b > 0) {
                out[k++] = along(c, s, j, i, a / (a - b));
            }
            a = b;
        }
        Arrays.sort(out, 0, k);
        return Arrays.copyOf(out, k);
    }

    /** Lost share of a line's piece from {@code low} to {@code high}; 0 when it meets no proposed hole there. */
    private double share(double c, double s, double off, double low, double high, double[] x, double[] y, double r) {
        double lost = 0;
        for (int i = 0; i < x.length; i++) {
            lost += chord(c, s, off, low, high, x[i], y[i], r);
        }
        if (lost == 0) {
            return 0;
        }
        for (int i = 0; i < fixedX.length; i++) {
            lost += chord(c, s, off, low, high, fixedX[i], fixedY[i], fixedR[i]);
        }
        for (double[][] strip : grooves) {
            lost += strip[0][5] * Grooved.length(strip, c, s, off, low, high);
        }
        return high > low ? Math.min(1, lost / (high - low)) : 0;
    }

    private static double chord(double c, double s, double off, double low, double high, double x, double y, double r) {
        double h = -s * x + c * y - off;
        if (Math.abs(h) >= r) {
            return 0;
        }
        double half = Math.sqrt(r * r - h * h);
        double at = c * x + s * y;
        return Math.max(0, Math.min(high, at + half) - Math.max(low, at - half));
    }
}
