package portwright.calc.firing;

import java.util.Arrays;

/**
 * One part of the shell on a grid of nodes from the hot face (node 0) to the cold face, each layer cut into equal
 * intervals. Implicit Euler; the inner nodes are eliminated from the cold side so that only the hot face, shared by all
 * parts, is left to solve.
 */
final class PartGrid {
    private final ShellPart part;
    private final double roomK;
    private final double lossFactor;
    private final int intervals;
    private final int n;
    private final double[] dx;
    private final double[] midArea;
    private final Conductivity[] k;
    private final double[] capacity;
    private final double[] old;
    private final double[] now;
    private final double[] g;
    private final double[] alpha;
    private final double[] beta;
    private double film;
    private double faceSlope;
    private double faceOffset;

    PartGrid(ShellPart part, double lossFactor, double roomK, double startK, int intervalsPerLayer) {
        this.part = part;
        this.roomK = roomK;
        this.lossFactor = lossFactor;
        intervals = intervalsPerLayer;
        n = intervalsPerLayer * part.layers().size();
        dx = new double[n];
        midArea = new double[n];
        k = new Conductivity[n];
        capacity = new double[n + 1];
        old = new double[n + 1];
        now = new double[n + 1];
        g = new double[n];
        alpha = new double[n + 1];
        beta = new double[n + 1];
        double x = 0;
        double total = part.thicknessM();
        for (int j = 0; j < n; j++) {
            Layer l = part.layers().get(j / intervalsPerLayer);
            dx[j] = l.thicknessM() / intervalsPerLayer;
            midArea[j] = area((x + dx[j] / 2) / total);
            k[j] = l.conductivity();
            double c = l.densityKgPerM3() * l.heatCapacityJPerKgK() * dx[j] / 2;
            capacity[j] += c * area((x + dx[j] / 4) / total);
            capacity[j + 1] += c * area((x + 3 * dx[j] / 4) / total);
            x += dx[j];
        }
        Arrays.fill(old, startK);
        Arrays.fill(now, startK);
    }

    /** The same accepted state, to be carried on apart. */
    PartGrid copy() {
        PartGrid g = new PartGrid(part, lossFactor, roomK, roomK, intervals);
        System.arraycopy(old, 0, g.old, 0, n + 1);
        g.reject();
        return g;
    }

    private double area(double share) {
        return part.innerAreaM2() + (part.outerAreaM2() - part.innerAreaM2()) * share;
    }

    /** Heat capacity of the hot face node, J/K. */
    double faceCapacity() {
        return capacity[0];
    }

    /** Sets every conductance from the temperatures of the last pass and eliminates; perSecond 0 gives the steady state. */
    void eliminate(double perSecond) {
        for (int j = 0; j < n; j++) {
            g[j] = lossFactor * k[j].at((now[j] + now[j + 1]) / 2) * midArea[j] / dx[j];
        }
        film = part.film().coefficient(now[n], roomK) * part.outerAreaM2();
        double c = capacity[n] * perSecond;
        double d = c + g[n - 1] + film;
        alpha[n] = g[n - 1] / d;
        beta[n] = (c * old[n] + film * roomK) / d;
        for (int i = n - 1; i >= 1; i--) {
            c = capacity[i] * perSecond;
            d = c + g[i - 1] + g[i] * (1 - alpha[i + 1]);
            alpha[i] = g[i - 1] / d;
            beta[i] = (c * old[i] + g[i] * beta[i + 1]) / d;
        }
        faceSlope = g[0] * (1 - alpha[1]);
        faceOffset = g[0] * beta[1];
    }

    /** Heat into the part behind the face node is slope × face − offset, W. */
    double faceSlope() {
        return faceSlope;
    }

    double faceOffset() {
        return faceOffset;
    }

    /** Fills the inner temperatures for a face temperature. */
    void complete(double faceK) {
        now[0] = faceK;
        for (int i = 1; i <= n; i++) {
            now[i] = alpha[i] * now[i - 1] + beta[i];
        }
    }

    /** Heat given to the room in the state last completed, W. */
    double lossW() {
        return film * (now[n] - roomK);
    }

    double outsideK() {
        return now[n];
    }

    void accept() {
        System.arraycopy(now, 0, old, 0, n + 1);
    }

    void reject() {
        System.arraycopy(old, 0, now, 0, n + 1);
    }

    /** Heat stored against a uniform temperature, J. */
    double storedJ(double referenceK) {
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            sum += capacity[i] * (now[i] - referenceK);
        }
        return sum;
    }

    double temperatureK(int node) {
        return now[node];
    }
}
