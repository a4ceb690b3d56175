package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Shape;
import portwright.model.On;

/**
 * Share of a slab's width that the weakest straight line through a proposed hole loses to holes and grooves. Candidate lines through centres,
 * centre pairs and along grooves, the worst of them refined; fast enough for the search.
 */
final class Section {
    private static final int TURNS = 36;
    private static final int REFINED = 5;
    /** How near the place of the worst line is found, mm; the share then lacks less than a ten-thousandth of itself. */
    private static final double CLOSE_MM = 0.004;
    /** The worst of the lines tried first lacks less than a third of the worst of all. */
    static final double ROUGH = 1.5;

    private static final double[] COS = new double[TURNS];
    private static final double[] SIN = new double[TURNS];

    static {
        for (int k = 0; k < TURNS; k++) {
            COS[k] = Math.cos(k * Math.PI / TURNS);
            SIN[k] = Math.sin(k * Math.PI / TURNS);
        }
    }

    private final double[] ox;
    private final double[] oy;
    private final double[] fixedX;
    private final double[] fixedY;
    private final double[] fixedR;
    private final double[] grooveTurns;
    private final double[][] grooves;

    Section(KilnGeometry kiln, On on) {
        this(kiln, on, List.of());
    }

    /** @param more further round holes that lie fixed: x, y, radius */
    Section(KilnGeometry kiln, On on, List<double[]> more) {
        Outline o = kiln.slab(on);
        ox = o.points().stream().mapToDouble(Pt::x).toArray();
        oy = o.points().stream().mapToDouble(Pt::y).toArray();
        List<double[]> discs = new ArrayList<>(more);
        List<double[]> strips = new ArrayList<>();
        TreeSet<Double> turns = new TreeSet<>();
        for (FittingShape f : kiln.fittings()) {
            if (!f.open() || f.face().on() != on) {
                continue;
            }
            if (f.shape() instanceof Shape.Disc d) {
                discs.add(new double[] {
                    d.circle().centre().x(), d.circle().centre().y(), d.circle().radius()
                });
            } else {
                add(f.slot(), 1, strips, turns);
            }
        }
        fixedX = discs.stream().mapToDouble(a -> a[0]).toArray();
        fixedY = discs.stream().mapToDouble(a -> a[1]).toArray();
        fixedR = discs.stream().mapToDouble(a -> a[2]).toArray();
        for (GrooveSolid g : kiln.grooves()) {
            if (g instanceof GrooveSolid.OnSlab s && s.on() == on) {
                add(s.strip(), Math.min(1, s.depth() / kiln.thickness(on)), strips, turns);
            }
        }
        grooves = strips.toArray(double[][]::new);
        grooveTurns = turns.stream().limit(12).mapToDouble(Double::doubleValue).toArray();
    }

    private static void add(Shape.Strip strip, double share, List<double[]> strips, Set<Double> turns) {
        for (Segment piece : strip.pieces()) {
            strips.add(new double[] {
                piece.a().x(), piece.a().y(), piece.b().x(), piece.b().y(), strip.halfWidth(), share
            });
            double turn = Math.atan2(
                    piece.b().y() - piece.a().y(), piece.b().x() - piece.a().x());
            turns.add(Math.rint((turn < 0 ? turn + Math.PI : turn) * 1e6) / 1e6);
        }
    }

    /** The greatest lost share over all lines that meet one of the holes (all of one radius). */
    double worst(double[] x, double[] y, double r) {
        return worst(x, y, r, Double.POSITIVE_INFINITY, 0);
    }

    /**
     * The same, but any share above {@code enough} may be answered once one is found, and a rough one where the greatest is surely under
     * {@code careless}.
     */
    double worst(double[] x, double[] y, double r, double enough, double careless) {
        int n = x.length;
        double first = 0;
        for (int i = 0; i < n && first <= enough; i++) {
            for (int j = 0; j < i; j++) {
                double turn = Math.atan2(y[j] - y[i], x[j] - x[i]);
                first = Math.max(first, share(Math.cos(turn), Math.sin(turn), x[i], y[i], x, y, r));
            }
            for (int k = 0; k < TURNS && first <= enough; k += 3) {
                first = Math.max(first, share(COS[k], SIN[k], x[i], y[i], x, y, r));
            }
        }
        if (first > enough) {
            return first;
        }
        List<double[]> lines = lines(x, y, r);
        lines.sort((a, b) -> Double.compare(b[2], a[2]));
        double worst = lines.isEmpty() ? 0 : lines.get(0)[2];
        if (worst * ROUGH <= careless) {
            return worst;
        }
        for (int i = 0; i < Math.min(REFINED, lines.size()) && worst <= enough; i++) {
            if (lines.get(i)[2] * ROUGH <= Math.max(worst, careless)) {
                break;
            }
            worst = Math.max(worst, refine(lines.get(i), x, y, r));
        }
        return worst;
    }

    /** Direction, offset and lost share of lines through the holes: all round, through two, along grooves. */
    private List<double[]> lines(double[] x, double[] y, double r) {
        List<double[]> lines = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            for (int k = 0; k < TURNS; k++) {
                double off = -SIN[k] * x[i] + COS[k] * y[i];
                lines.add(new double[] {k * Math.PI / TURNS, off, share(COS[k], SIN[k], off, x, y, r)});
            }
            for (double turn : grooveTurns) {
                add(lines, x, y, r, turn, x[i], y[i]);
                add(lines, x, y, r, turn, x[i] - Math.sin(turn) * r, y[i] + Math.cos(turn) * r);
                add(lines, x, y, r, turn, x[i] + Math.sin(turn) * r, y[i] - Math.cos(turn) * r);
            }
            for (int j = 0; j < i; j++) {
                double turn = Math.atan2(y[j] - y[i], x[j] - x[i]);
                add(lines, x, y, r, turn, x[i], y[i]);
            }
            for (int j = 0; j < fixedX.length; j++) {
                add(lines, x, y, r, Math.atan2(fixedY[j] - y[i], fixedX[j] - x[i]), x[i], y[i]);
            }
        }
        for (double[] g : grooves) {
            double turn = Math.atan2(g[3] - g[1], g[2] - g[0]);
            add(lines, x, y, r, turn, g[0], g[1]);
        }
        return lines;
    }

    private void add(List<double[]> lines, double[] x, double[] y, double r, double turn, double px, double py) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        double off = -s * px + c * py;
        lines.add(new double[] {turn, off, share(c, s, off, x, y, r)});
    }

    private double refine(double[] start, double[] x, double[] y, double r) {
        double turn = start[0];
        double off = start[1];
        double best = start[2];
        double stepTurn = Math.PI / TURNS / 2;
        double step = r / 2;
        while (step > CLOSE_MM) {
            boolean moved = false;
            for (int k = -1; k <= 1; k++) {
                double a = turn + k * stepTurn;
                double c = Math.cos(a);
                double s = Math.sin(a);
                for (int j = -1; j <= 1; j++) {
                    double b = off + j * step;
                    double v = k == 0 && j == 0 ? 0 : share(c, s, b, x, y, r);
                    if (v > best) {
                        best = v;
                        turn = a;
                        off = b;
                        moved = true;
                        k = 2;
                        break;
                    }
                }
            }
            if (!moved) {
                step /= 2;
                stepTurn /= 2;
            }
        }
        return best;
    }

    private double share(double c, double s, double px, double py, double[] x, double[] y, double r) {
        return share(c, s, -s * px + c * py, x, y, r);
    }

    /** Lost share of the line with direction (c, s) and offset {@code off}; 0 when it meets no proposed hole. */
    private double share(double c, double s, double off, double[] x, double[] y, double r) {
        double lost = 0;
        for (int i = 0; i < x.length; i++) {
            double h = -s * x[i] + c * y[i] - off;
            if (Math.abs(h) < r) {
                lost += 2 * Math.sqrt(r * r - h * h);
            }
        }
        if (lost == 0) {
            return 0;
        }
        for (int i = 0; i < fixedX.length; i++) {
            double h = -s * fixedX[i] + c * fixedY[i] - off;
            if (Math.abs(h) < fixedR[i]) {
                lost += 2 * Math.sqrt(fixedR[i] * fixedR[i] - h * h);
            }
        }
        for (double[] g : grooves) {
            lost += g[5] * capsule(g, c, s, off);
        }
        double length = length(c, s, off);
        return length > 0 ? lost / length : 0;
    }

    private double length(double c, double s, double off) {
        double sum = 0;
        int n = ox.length;
        double a = -s * ox[n - 1] + c * oy[n - 1] - off;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double b = -s * ox[i] + c * oy[i] - off;
            if (a > 0 != b > 0) {
                double k = a / (a - b);
                double along = c * (ox[j] + k * (ox[i] - ox[j])) + s * (oy[j] + k * (oy[i] - oy[j]));
                sum += a > 0 ? -along : along;
            }
            a = b;
        }
        return Math.abs(sum);
    }

    /** Length of a line inside a piece widened with round ends. */
    private static double capsule(double[] g, double c, double s, double off) {
        double w = g[4];
        double ha = -s * g[0] + c * g[1] - off;
        double hb = -s * g[2] + c * g[3] - off;
        if (Math.min(ha, hb) >= w || Math.max(ha, hb) <= -w) {
            return 0;
        }
        double ta = c * g[0] + s * g[1];
        double tb = c * g[2] + s * g[3];
        double lo = Double.POSITIVE_INFINITY;
        double hi = Double.NEGATIVE_INFINITY;
        if (Math.abs(ha) < w) {
            double q = Math.sqrt(w * w - ha * ha);
            lo = Math.min(lo, ta - q);
            hi = Math.max(hi, ta + q);
        }
        if (Math.abs(hb) < w) {
            double q = Math.sqrt(w * w - hb * hb);
            lo = Math.min(lo, tb - q);
            hi = Math.max(hi, tb + q);
        }
        double len = Math.hypot(tb - ta, hb - ha);
        if (len > 0) {
            // the two long sides: the piece shifted by w square to itself
            double nx = -(hb - ha) / len * w;
            double ny = (tb - ta) / len * w;
            for (int side = -1; side <= 1; side += 2) {
                double a = ha + side * ny;
                double b = hb + side * ny;
                if (a > 0 != b > 0) {
                    double k = a / (a - b);
                    double t = ta + side * nx + k * (tb - ta);
                    lo = Math.min(lo, t);
                    hi = Math.max(hi, t);
                }
            }
        }
        return hi > lo ? hi - lo : 0;
    }
}
