package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;

/**
 * Share of a slab's width that the weakest straight line through a proposed hole loses to holes and grooves. Candidate lines through centres,
 * centre pairs and along grooves, the worst of them refined; fast enough for the search.
 */
final class Section {
    private static final int TURNS = 36;
    private static final int REFINED = 5;
    /** How far to its side, in radii, a line still meets enough of a hole to be followed from there. */
    private static final double NEARLY = 0.98;
    /** The same of a line along a groove, which loses most by the groove. */
    private static final double GRAZING = 0.9999;
    /** Straight pieces of grooves that are followed, the longest. */
    private static final int PIECES = 8;
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

    private final LostShare loss;
    private final double[] grooveTurns;
    private final double[][] pieces;

    Section(KilnGeometry kiln, On on) {
        this(kiln, on, List.of());
    }

    /** @param more further round holes that lie fixed: x, y, radius */
    Section(KilnGeometry kiln, On on, List<double[]> more) {
        loss = new LostShare(kiln, on, more);
        List<double[]> all = Arrays.stream(loss.grooves).flatMap(Arrays::stream).toList();
        grooveTurns = all.stream()
                .map(Section::turn)
                .map(t -> Math.rint((t < 0 ? t + Math.PI : t) * 1e6) / 1e6)
                .sorted()
                .distinct()
                .limit(12)
                .mapToDouble(Double::doubleValue)
                .toArray();
        pieces = all.stream()
                .sorted(Comparator.comparingDouble(g -> -Math.hypot(g[2] - g[0], g[3] - g[1])))
                .limit(PIECES)
                .toArray(double[][]::new);
    }

    private static double turn(double[] g) {
        return Math.atan2(g[3] - g[1], g[2] - g[0]);
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
                first = Math.max(first, through(turn, x[i], y[i], x, y, r));
            }
            for (int k = 0; k < TURNS && first <= enough; k += 3) {
                first = Math.max(first, loss.share(COS[k], SIN[k], -SIN[k] * x[i] + COS[k] * y[i], x, y, r));
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
                lines.add(new double[] {k * Math.PI / TURNS, off, loss.share(COS[k], SIN[k], off, x, y, r)});
            }
            for (double turn : grooveTurns) {
                beside(lines, x, y, r, turn, i);
            }
            for (double[] g : pieces) {
                along(lines, x, y, r, g, i);
                double nx = g[4] * NEARLY * Math.sin(turn(g));
                double ny = g[4] * NEARLY * Math.cos(turn(g));
                for (int side = -1; side <= 1; side++) {
                    toward(lines, x, y, r, g[0] - side * nx, g[1] + side * ny, i);
                    toward(lines, x, y, r, g[2] - side * nx, g[3] + side * ny, i);
                }
            }
            for (Pt p : loss.bends) {
                toward(lines, x, y, r, p.x(), p.y(), i);
            }
            for (int j = 0; j < i; j++) {
                double turn = Math.atan2(y[j] - y[i], x[j] - x[i]);
                add(lines, x, y, r, turn, x[i], y[i]);
            }
            for (int j = 0; j < loss.fixedX.length; j++) {
                add(lines, x, y, r, Math.atan2(loss.fixedY[j] - y[i], loss.fixedX[j] - x[i]), x[i], y[i]);
            }
        }
        return lines;
    }

    /** Lines in one direction through a hole's middle and near both its sides; at the very side nothing of it is met. */
    private void beside(List<double[]> lines, double[] x, double[] y, double r, double turn, int hole) {
        for (int side = -1; side <= 1; side++) {
            double by = side * NEARLY * r;
            add(lines, x, y, r, turn, x[hole] - Math.sin(turn) * by, y[hole] + Math.cos(turn) * by);
        }
    }

    /** Lines through a place and a hole's middle, and that place and near both its sides. */
    private void toward(List<double[]> lines, double[] x, double[] y, double r, double px, double py, int hole) {
        double turn = Math.atan2(py - y[hole], px - x[hole]);
        for (int side = -1; side <= 1; side++) {
            double qx = x[hole] - Math.sin(turn) * side * NEARLY * r;
            double qy = y[hole] + Math.cos(turn) * side * NEARLY * r;
            add(lines, x, y, r, Math.atan2(py - qy, px - qx), qx, qy);
        }
    }

    /** The line along a piece of a groove, or beside it as near as meets the hole. */
    private void along(List<double[]> lines, double[] x, double[] y, double r, double[] g, int hole) {
        double turn = turn(g);
        double far = -Math.sin(turn) * (g[0] - x[hole]) + Math.cos(turn) * (g[1] - y[hole]);
        double by = Math.max(-GRAZING * r, Math.min(GRAZING * r, far));
        add(lines, x, y, r, turn, x[hole] - Math.sin(turn) * by, y[hole] + Math.cos(turn) * by);
    }

    private double through(double turn, double px, double py, double[] x, double[] y, double r) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return loss.share(c, s, -s * px + c * py, x, y, r);
    }

    private void add(List<double[]> lines, double[] x, double[] y, double r, double turn, double px, double py) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        double off = -s * px + c * py;
        lines.add(new double[] {turn, off, loss.share(c, s, off, x, y, r)});
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
                    double v = k == 0 && j == 0 ? 0 : loss.share(c, s, b, x, y, r);
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
}
