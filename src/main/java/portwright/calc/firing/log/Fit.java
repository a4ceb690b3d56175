package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import portwright.calc.firing.GasExchange;

/**
 * Two numbers of a kiln from a record.
 *
 * @param lossFactor fitted; NaN where the record does not tell
 * @param leakM2 fitted leak area; NaN where the record does not tell
 * @param whyNoLoss words where the loss factor is not fitted, else empty
 * @param whyNoLeak words where the leak area is not fitted, else empty
 * @param leftShare scatter of the element power left after the fit, as a share of full power; NaN without a fit
 */
public record Fit(double lossFactor, double leakM2, String whyNoLoss, String whyNoLeak, double leftShare) {
    /** Loss factors tried; what a sound kiln has is 1.0 to 1.5. */
    public static final double LEAST_LOSS = 0.6;

    public static final double MOST_LOSS = 2.5;
    private static final double[] LEAKS_CM2 = {1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40};
    private static final int LEAST = 6;
    private static final double WARM_K = 900;
    private static final double TELLS_SHARE = 0.005;

    /**
     * Fits the loss factor to full power without gas (else with gas, the leak area kept), then the leak area to full power with gas.
     * Elements are taken as the design states them: aged ones read as loss.
     *
     * @param draft the draft of the kiln with a leak area in m²; the design's own is kept unless another one follows the
     *     record better by 0.5 % of full power
     * @throws CancellationException when its thread is interrupted
     */
    public static Fit of(RecordCase c, DoubleFunction<GasExchange> draft) {
        Followed base = new Followed(c);
        for (LogFinding f : Diagnosis.of(base).findings()) {
            if (f.kind() != LogFinding.Kind.WEAK && f.kind() != LogFinding.Kind.THERMOCOUPLE) {
                String why = "the record shows a fault; fit one without";
                return new Fit(Double.NaN, Double.NaN, why, why, Double.NaN);
            }
        }
        List<Integer> plain = told(base, false);
        List<Integer> gas = told(base, true);
        List<Integer> use = plain.size() >= LEAST ? plain : gas;
        if (use.size() < LEAST) {
            String why =
                    "the record has less than 30 minutes at full or fixed power above 630 °C; in a step with a rate the controller"
                            + " chooses the power and no log tells it. Fire one step with \"rate\": \"full\" or a fixed \"elements\" share";
            return new Fit(Double.NaN, Double.NaN, why, why, Double.NaN);
        }
        double loss = loss(base, use);
        if (Double.isNaN(loss)) {
            String why = "no loss factor from " + LEAST_LOSS + " to " + MOST_LOSS
                    + " gives the climbs of the record: check power, load and brick of the design";
            return new Fit(Double.NaN, Double.NaN, why, why, Double.NaN);
        }
        if (use == gas || gas.size() < LEAST) {
            return new Fit(
                    loss,
                    Double.NaN,
                    "",
                    use == gas
                            ? "the record has no full power without gas, so loss and leak cannot be told apart; the loss factor carries both"
                            : "the record has less than 30 minutes at full or fixed power with gas",
                    left(with(base, loss, c.gas()), use));
        }
        return leak(base, draft, loss, gas);
    }

    private static Fit leak(Followed base, DoubleFunction<GasExchange> draft, double loss, List<Integer> gas) {
        double[] left = new double[LEAKS_CM2.length];
        int best = 0;
        for (int i = 0; i < left.length; i++) {
            left[i] = left(with(base, loss, draft.apply(LEAKS_CM2[i] * 1e-4)), gas);
            best = left[i] < left[best] ? i : best;
        }
        double same = left(with(base, loss, base.c.gas()), gas);
        if (same - left[best] < TELLS_SHARE) {
            return new Fit(
                    loss,
                    Double.NaN,
                    "",
                    "the climbs with gas are those of the design's leak area within 0.5 % of full power; a smaller difference is no news",
                    same);
        }
        double lo = LEAKS_CM2[Math.max(0, best - 1)];
        double hi = LEAKS_CM2[Math.min(left.length - 1, best + 1)];
        for (int k = 0; k < 8; k++) {
            double a = lo + (hi - lo) / 3;
            double b = hi - (hi - lo) / 3;
            if (left(with(base, loss, draft.apply(a * 1e-4)), gas)
                    < left(with(base, loss, draft.apply(b * 1e-4)), gas)) {
                hi = b;
            } else {
                lo = a;
            }
        }
        double cm2 = (lo + hi) / 2;
        return new Fit(loss, cm2 * 1e-4, "", "", left(with(base, loss, draft.apply(cm2 * 1e-4)), gas));
    }

    private static double loss(Followed base, List<Integer> use) {
        double lo = LEAST_LOSS;
        double hi = MOST_LOSS;
        if (bias(with(base, lo, base.c.gas()), use) < 0 || bias(with(base, hi, base.c.gas()), use) > 0) {
            return Double.NaN;
        }
        for (int k = 0; k < 18; k++) {
            double mid = (lo + hi) / 2;
            if (bias(with(base, mid, base.c.gas()), use) > 0) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return (lo + hi) / 2;
    }

    private static Followed with(Followed base, double loss, GasExchange gas) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the fit was given up");
        }
        return base.with(base.c.with(base.c.kiln().withLossFactor(loss), gas));
    }

    private static List<Integer> told(Followed f, boolean gas) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < f.intervals(); i++) {
            if (!Double.isNaN(f.asked[i]) && f.kelvin[i] > WARM_K && f.gasOn(i) == gas) {
                out.add(i);
            }
        }
        return out;
    }

    private static double bias(Followed f, List<Integer> use) {
        return Followed.median(use.stream().map(i -> f.missing(i, true)).toList());
    }

    private static double left(Followed f, List<Integer> use) {
        return Math.sqrt(use.stream()
                .mapToDouble(i -> f.missing(i, true) * f.missing(i, true))
                .average()
                .orElseThrow());
    }
}
