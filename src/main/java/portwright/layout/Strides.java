package portwright.layout;

import java.util.SplittableRandom;

/**
 * Random steps that learn from those that gained: the cloud they are drawn from grows along directions that gained and shrinks across, so that a ridge
 * is followed. Covariance adaptation with one parent and one child after Igel, Suttorp and Hansen, "A computational efficient covariance matrix update
 * and a (1+1)-CMA for evolution strategies" (2006), with
 * their constants (from memory) but for patience, which was found by trial.
 */
final class Strides {
    /** How much more slowly the steps change in length than theirs: the least of many margins has kinks, where few steps gain. */
    private static final double PATIENCE = 2.5;

    private static final double WANTED = 2.0 / 11;
    private static final double FORGETS = 1.0 / 12;
    private static final double OFTEN = 0.44;

    private final int n;
    private final double damping;
    private final double pathForgets;
    private final double learns;
    private final double[][] cloud;
    private final double[][] inverse;
    private final double[] path;
    private final double[] drawn;
    private double length;
    private double success = WANTED;

    /** @param length of the first steps along each number */
    Strides(int n, double length) {
        this.n = n;
        this.length = length;
        damping = PATIENCE * (1 + n / 2.0);
        pathForgets = 2.0 / (n + 2);
        learns = 2.0 / (n * n + 6.0);
        cloud = new double[n][n];
        inverse = new double[n][n];
        for (int i = 0; i < n; i++) {
            cloud[i][i] = 1;
            inverse[i][i] = 1;
        }
        path = new double[n];
        drawn = new double[n];
    }

    double length() {
        return length;
    }

    /** Writes a place one step from {@code from}. */
    void step(double[] from, double[] to, SplittableRandom random) {
        double[] z = new double[n];
        for (int i = 0; i < n; i++) {
            z[i] = random.nextGaussian();
        }
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += cloud[i][j] * z[j];
            }
            drawn[i] = sum;
            to[i] = from[i] + length * sum;
        }
    }

    /** What became of the last step. */
    void learn(boolean gained) {
        success += FORGETS * ((gained ? 1 : 0) - success);
        length *= Math.exp((success - WANTED) / (1 - WANTED) / damping);
        if (gained) {
            turn();
        }
    }

    private void turn() {
        boolean often = success >= OFTEN;
        double add = often ? 0 : Math.sqrt(pathForgets * (2 - pathForgets));
        for (int i = 0; i < n; i++) {
            path[i] = (1 - pathForgets) * path[i] + add * drawn[i];
        }
        double keep = 1 - learns + (often ? learns * pathForgets * (2 - pathForgets) : 0);
        double[] w = new double[n];
        double square = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                w[i] += inverse[i][j] * path[j];
            }
            square += w[i] * w[i];
        }
        if (square < 1e-20) {
            return;
        }
        double[] left = new double[n];
        for (int j = 0; j < n; j++) {
            for (int i = 0; i < n; i++) {
                left[j] += w[i] * inverse[i][j];
            }
        }
        double grown = Math.sqrt(1 + learns * square / keep);
        double a = Math.sqrt(keep);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                cloud[i][j] = a * cloud[i][j] + a / square * (grown - 1) * path[i] * w[j];
                inverse[i][j] = inverse[i][j] / a - (1 - 1 / grown) / (a * square) * w[i] * left[j];
            }
        }
    }
}
