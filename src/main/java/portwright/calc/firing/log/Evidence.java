package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import portwright.calc.firing.Replay;

/**
 * How well a lasting loss of element power explains the missing power of a record, against what a sound kiln may show.
 *
 * <p>A sound kiln differs from its design within what the inputs are good to: loss factor, heat of load and furniture, full power, gas flow
 * and the probe's lag, each moving the missing power along the whole record as the heat balance says; voltage and draught wander over the hour, and
 * readings have noise, taken from the record itself. With these as standard deviations (this project's judgement of what a potter's figures
 * are good to) the loss that begins at an interval has a best size and a standard deviation by generalised least squares.
 */
final class Evidence {
    /** Below this the probe's lag and the skin of brick and load hide the power. */
    private static final double WARM_K = 723.15;

    static final double WANDER = 0.02;
    private static final double WANDER_S = 3600;
    private static final double NOISE_S = 600;
    private static final double LEAST_NOISE = 0.01;
    private static final int APART = 3;
    private static final int NEAR = 3;

    /**
     * A loss that begins at an interval.
     *
     * @param at first interval
     * @param share of the element power lost from there on
     * @param sd standard deviation of that share
     * @param before intervals that tell of the time before
     * @param after intervals that tell of the time after
     */
    record Loss(int at, double share, double sd, int before, int after) {
        double sigmas() {
            return share / sd;
        }
    }

    private final int[] told;
    private final double[] asked;
    private final Followed f;
    private final RealMatrix inverse;
    private final Unsure unsure;

    /**
     * @param end first interval not looked at
     * @param probe whether the thermocouple, too, may be off as far as {@link ProbeBand} says
     */
    Evidence(Followed f, int end, boolean probe) {
        this.f = f;
        List<Integer> list = new ArrayList<>();
        for (int i = 0; i < end; i++) {
            if (!Double.isNaN(f.asked[i]) && f.kelvin[i] > WARM_K && !nothing(i)) {
                list.add(i);
            }
        }
        told = list.stream().mapToInt(Integer::intValue).toArray();
        unsure = new Unsure(f, told);
        int n = told.length;
        double full = f.c.kiln().elements().fullW();
        asked = column(i -> f.asked[told[i]] / full);
        if (n == 0) {
            inverse = null;
            return;
        }
        List<double[]> columns =
                new ArrayList<>(List.of(unsure.loss(), unsure.load(), unsure.lagging(), unsure.power(), unsure.gas()));
        if (probe) {
            columns.addAll(unsure.probe());
        }
        double noise = noise(column(i -> f.missing(told[i], true)));
        inverse = new CholeskyDecomposition(covariance(told, noise, columns))
                .getSolver()
                .getInverse();
    }

    /**
     * The covariance of the missing power at intervals: voltage and draught that wander, noise, and inputs that are unsure.
     *
     * @param noise standard deviation of one interval, as a share of full power
     */
    static RealMatrix covariance(int[] told, double noise, List<double[]> columns) {
        int n = told.length;
        double[][] s = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double dt = Math.abs(told[i] - told[j]) * Grid.SPACING_S;
                s[i][j] = WANDER * WANDER * Math.exp(-dt / WANDER_S) + noise * noise * Math.exp(-dt / NOISE_S);
                for (double[] u : columns) {
                    s[i][j] += u[i] * u[j];
                }
            }
        }
        return new Array2DRowRealMatrix(s, false);
    }

    /** Whether next to no power is needed thereabouts: a jump of the reading or a relay, but no lost element. */
    private boolean nothing(int i) {
        for (int k = Math.max(0, i - NEAR); k <= Math.min(f.intervals() - 1, i + NEAR); k++) {
            if (f.logged.get(k).neededW() == 0) {
                return true;
            }
        }
        return false;
    }

    private interface At {
        double of(int i);
    }

    private double[] column(At a) {
        double[] out = new double[told.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = a.of(i);
        }
        return out;
    }

    /** Largest share of the power asked that a thermocouple as low as {@link ProbeBand} allows can pretend is lost. */
    double pretended() {
        double[] low = unsure.reading(t -> f.band.lowShare() * t);
        double most = 0;
        for (int i = 0; i < low.length; i++) {
            most = Math.max(most, low[i] / asked[i]);
        }
        return most;
    }

    /**
     * The air that stands farthest above what a sound kiln may show, from some time of the gas on, as a share of what a damper all open
     * lets in beyond the plan's; null where the record tells too little.
     *
     * @param logged beyond what the logged damper lets in, else beyond the plan's
     */
    Loss air(int least, boolean logged) {
        if (inverse == null) {
            return null;
        }
        List<Replay.Need> wide = wide(f, logged);
        double[] open = column(i -> f.gasOn(told[i])
                ? Math.max(
                                0,
                                wide.get(told[i]).neededW()
                                        - (logged ? f.logged : f.planned)
                                                .get(told[i])
                                                .neededW())
                        / f.c.kiln().elements().fullW()
                : 0);
        double[] weighed = inverse.operate(column(i -> f.missing(told[i], logged)));
        Loss best = null;
        for (int k = 0; k <= told.length - least; k++) {
            if (f.gasOn(told[k])) {
                Loss x = from(k, weighed, open);
                best = best == null || x.sigmas() > best.sigmas() ? x : best;
            }
        }
        return best;
    }

    /** What the elements would give with the damper all open while gas burns. */
    static List<Replay.Need> wide(Followed f, boolean logged) {
        return Replay.run(f.c.kiln(), f.c.gas(), f.grid.timeS(), f.kelvin, i -> {
            Replay.Setting s = f.setting(i, logged);
            return s.gas() ? new Replay.Setting(true, true, 1) : s;
        });
    }

    /** Whether a damper that stands farther open than the log says would explain a loss by no more than so many deviations worse. */
    boolean airAsWell(Loss loss, int least, double deviations) {
        Loss air = air(least, true);
        return air != null
                && air.share() - air.sd() < 1
                && air.sigmas() > 0
                && loss.sigmas() * loss.sigmas() - air.sigmas() * air.sigmas() < deviations * deviations;
    }

    /** Noise of an interval, from its height over its neighbours a quarter of an hour off, which the smoothing leaves nearly independent. */
    private double noise(double[] y) {
        return noise(f, told, y);
    }

    /** The same for other intervals. */
    static double noise(Followed f, int[] told, double[] y) {
        List<Double> d = new ArrayList<>();
        for (int i = APART; i + APART < told.length; i++) {
            if (told[i + APART] - told[i - APART] == 2 * APART
                    && f.tracker.step[told[i - APART]] == f.tracker.step[told[i + APART]]) {
                d.add(Math.abs(y[i + APART] - 2 * y[i] + y[i - APART]));
            }
        }
        double median = Followed.median(d);
        return Double.isNaN(median) ? 3 * LEAST_NOISE : Math.max(LEAST_NOISE, 1.4826 * median / Math.sqrt(6));
    }

    /**
     * The loss that stands farthest above what a sound kiln may show; null where the record tells too little.
     *
     * @param logged air as the logged damper gives it, else as planned
     * @param leastBefore intervals that must tell of the time before
     */
    Loss strongest(boolean logged, int leastBefore, int leastAfter) {
        if (inverse == null) {
            return null;
        }
        double[] weighed = inverse.operate(column(i -> f.missing(told[i], logged)));
        Loss best = null;
        for (int k = leastBefore; k <= told.length - leastAfter; k++) {
            Loss x = from(k, weighed);
            best = best == null || x.sigmas() > best.sigmas() ? x : best;
        }
        return best;
    }

    /** Standard deviation of the share of a loss that begins half way through what is told; NaN where the record tells too little. */
    double sd(int least) {
        if (inverse == null || told.length < 2 * least) {
            return Double.NaN;
        }
        return from(told.length / 2, new double[told.length]).sd();
    }

    /** The loss that begins at a told interval; its edge is smeared as wide as the readings that an interval rests on. */
    private Loss from(int k, double[] weighed) {
        return from(k, weighed, asked);
    }

    private Loss from(int k, double[] weighed, double[] whole) {
        int wide = (int) Math.ceil(f.grid.reachS()[told[k]] / Grid.SPACING_S);
        int n = told.length;
        double[] lost = column(i -> whole[i] * Math.max(0, Math.min(1, 0.5 + (told[i] - told[k]) / (2.0 * wide))));
        double top = 0;
        double bottom = 0;
        for (int i = 0; i < n; i++) {
            top += lost[i] * weighed[i];
            for (int j = 0; j < n; j++) {
                bottom += lost[i] * inverse.getEntry(i, j) * lost[j];
            }
        }
        return new Loss(told[k], top / bottom, 1 / Math.sqrt(bottom), k, n - k);
    }
}
