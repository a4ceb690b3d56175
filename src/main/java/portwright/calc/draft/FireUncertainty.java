package portwright.calc.draft;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.Equilibrium;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Products;

/**
 * Seeded random draws over the spreads of the inputs. Draw n uses the same random numbers in every call, so that bands
 * move smoothly when a hole or the damper moves. Not for several threads at once.
 */
public final class FireUncertainty {
    /** Draws that a figure on paper rests on. */
    public static final int USUAL_DRAWS = 2000;

    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final double LARGEST_BASE_MOMENTUM = 1;

    private static final double CUT = 2.5;

    private final Spread spread;
    private final long seed;
    private final int draws;
    private final double[] lambda;
    private final double[] co;
    private final double[] emf;
    private final double[] floor;
    private final double[] lid;
    private final double[] drive;
    private final double[] neutral;
    private DraftSolver solver;

    /** Prepares the draws. */
    public FireUncertainty(Spread spread, long seed, int draws) {
        if (draws < 20) {
            throw new IllegalArgumentException("a 5 to 95 % range needs at least 20 draws, not " + draws);
        }
        this.spread = spread;
        this.seed = seed;
        this.draws = draws;
        lambda = new double[draws];
        co = new double[draws];
        emf = new double[draws];
        floor = new double[draws];
        lid = new double[draws];
        drive = new double[draws];
        neutral = new double[draws];
    }

    /** The band of one state; an interrupted thread ends it with a {@link CancellationException}. */
    public FireBand of(DraftCase kiln) {
        if (solver == null) {
            solver = new DraftSolver(kiln);
        }
        int spills = 0;
        int clean = 0;
        DraftCase base = spread.leak() > 0 ? kiln : withLeaks(kiln);
        Fuel fuel = burning(kiln);
        for (int n = 0; n < draws; n++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("the band was called off");
            }
            solver.set(base);
            double kelvin = draw(n, base);
            solver.solve();
            double d = Double.POSITIVE_INFINITY;
            boolean spilt = false;
            for (int i = 0; i < solver.inlets; i++) {
                HoleFlow h = solver.holes[i];
                d = Math.min(d, h.zeroPressure - solver.floor - solver.gradient * h.height);
                spilt |= h.flow < 0 || h.gasFlow > h.flow;
            }
            floor[n] = solver.floor;
            lid[n] = solver.floor + solver.gradient * kiln.chamberHeight();
            neutral[n] = Math.abs(solver.gradient) > 1e-9 ? -solver.floor / solver.gradient : Double.POSITIVE_INFINITY;
            drive[n] = d;
            lambda[n] = spilt ? 0 : solver.airNeed > 0 ? solver.airFlow / solver.airNeed : Double.POSITIVE_INFINITY;
            spills += spilt ? 1 : 0;
            clean += lambda[n] >= 1 ? 1 : 0;
            // a draw without the figure counts as the highest, as the richest states do for CO
            co[n] = Double.POSITIVE_INFINITY;
            emf[n] = Double.POSITIVE_INFINITY;
            if (lambda[n] >= Products.LAMBDA_VALID
                    && lambda[n] < Double.POSITIVE_INFINITY
                    && kelvin >= Equilibrium.T_LOWEST) {
                Products p = Equilibrium.at(kelvin).burn(fuel, Air.ROOM, lambda[n], kiln.atmosphericPressure());
                co[n] = p.dryCo();
                emf[n] = p.probeMv();
            }
        }
        return new FireBand(
                range(lambda, true),
                range(co, false),
                range(emf, false),
                range(floor, false),
                range(lid, false),
                range(drive, false),
                range(neutral, false),
                (double) spills / draws,
                (double) clean / draws);
    }

    /** Lid joints and one peephole that every draw sets anew. */
    private static DraftCase withLeaks(DraftCase k) {
        List<LeakHole> leaks =
                k.leaks().isEmpty() ? List.of(new LeakHole(0.5 * k.chamberHeight(), 0, 0.06)) : k.leaks();
        return k.withLeaks(k.cracks(), leaks);
    }

    /** The one fuel, or the mixture of several as the nominal state burns them. */
    private static Fuel burning(DraftCase k) {
        Fuel entering = FireState.fuel(DraftBalance.of(k));
        return entering != null
                ? entering
                : k.inlets().stream()
                        .filter(i -> i.gasFlow() > 0)
                        .map(Inlet::fuel)
                        .findFirst()
                        .orElse(null);
    }

    /** Sets the solver to draw n; answers the chamber temperature, K. */
    private double draw(int n, DraftCase k) {
        SplittableRandom r = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + n);
        double cd = factor(r);
        double bore = spread.holeSize() * normal(r);
        double gas = 1 + spread.gas() * normal(r);
        double kelvin = k.chamberTemperature() + spread.temperature() * normal(r);
        double damper = spread.damper() * normal(r);
        double crack = r.nextDouble();
        double peep = r.nextDouble();
        double wind = spread.wind() * normal(r);
        double momentum = r.nextDouble();
        double place = r.nextDouble();
        solver.chamber(kelvin);
        for (int i = 0; i < solver.inlets; i++) {
            Inlet h = k.inlets().get(i);
            double d = h.diameter() > 0 ? Math.max(1e-4, h.diameter() + bore) : 0;
            double low = Math.max(
                    0, Math.min(LARGEST_BASE_MOMENTUM - spread.momentum(), h.momentumShare() - spread.momentum() / 2));
            double stream = h.streamTemperature();
            if (spread.flamePlace() && h.gasFlow() > 0 && stream == 0) {
                stream = place < 1 / 3.0 ? 0 : place < 2 / 3.0 ? Spread.STREAM_IN_HOLE : Spread.STREAM_BELOW;
            }
            solver.inlet(
                    i,
                    h.fuel(),
                    d,
                    h.length(),
                    h.height(),
                    h.outsidePressure() + spread.portWind() * normal(r),
                    h.gasFlow() * gas,
                    h.jetThrust() * gas * gas,
                    low + spread.momentum() * momentum,
                    stream,
                    cd);
        }
        for (int i = 0; i < solver.flues; i++) {
            Flue h = k.flues().get(i);
            double d = h.diameter() > 0 ? Math.max(1e-4, h.diameter() + bore) : 0;
            double open = h.openShare() > 0 ? Math.max(0, Math.min(1, h.openShare() + damper)) : 0;
            solver.flue(i, d, h.length(), h.height(), open, h.outsidePressure() + wind, cd);
        }
        leaks(k, crack, peep);
        return kelvin;
    }

    /** Leaks of one draw from two random numbers: all of a stated leak by one factor, else lid joint and first peephole. */
    private void leaks(DraftCase k, double crack, double peep) {
        List<LeakHole> holes = k.leaks();
        if (spread.leak() > 0) {
            double factor = Math.sqrt(1 + spread.leak() * (2 * crack - 1));
            for (int i = 0; i < holes.size(); i++) {
                LeakHole h = holes.get(i);
                solver.leak(i, h.diameter() * factor, h.length(), h.height());
            }
            return;
        }
        for (CrackFlow c : solver.cracks) {
            c.width = spread.crackWidth() * crack;
        }
        LeakHole first = holes.get(0);
        solver.leak(0, 2 * Math.sqrt(spread.peepholeArea() * peep / Math.PI), first.length(), first.height());
    }

    private static double even(SplittableRandom r) {
        return 2 * r.nextDouble() - 1;
    }

    /** Normal, cut at 2.5. */
    private static double normal(SplittableRandom r) {
        return Math.max(-CUT, Math.min(CUT, r.nextGaussian()));
    }

    /** Two-sided: half the draws below one, half above. */
    private double factor(SplittableRandom r) {
        double u = even(r);
        return u < 0 ? 1 + u * (1 - spread.cdLow()) : 1 + u * (spread.cdHigh() - 1);
    }

    private static Range range(double[] values, boolean zeroMeansNone) {
        Arrays.sort(values);
        return new Range(finite(quantile(values, LOW), zeroMeansNone), finite(quantile(values, HIGH), zeroMeansNone));
    }

    private static Double finite(double value, boolean zeroMeansNone) {
        return !Double.isFinite(value) || zeroMeansNone && value == 0 ? null : Double.valueOf(value);
    }

    /** The value below which a share of the sorted values lies, between two of them in a straight line. */
    static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int i = (int) at;
        double f = at - i;
        return f == 0 || sorted[i] == sorted[i + 1] ? sorted[i] : sorted[i] + f * (sorted[i + 1] - sorted[i]);
    }
}
