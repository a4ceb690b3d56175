package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import java.util.function.IntPredicate;
import portwright.calc.firing.GasExchange;

/**
 * Two numbers of a kiln from a record. Full or fixed power without gas bears on the loss factor; only then does the same with gas bear on
 * the leak area. Leaks draw with the ports plugged too, and what they take reads as loss: the band of one number carries the other. Bands are 5 to 95 %
 * and carry what else may be off: load, element power, gas flow, the thermocouple, voltage and noise.
 *
 * @param lossFactor fitted, with the leak area beside it or, where that is not told, with the design's; NaN where the record does not tell
 * @param lossLow 5 % of its band
 * @param lossHigh 95 %
 * @param leakM2 fitted leak area; NaN where the record does not tell
 * @param leakLowM2 5 % of its band, also where that is too wide for a number; NaN where none was sought
 * @param leakHighM2 95 %
 * @param whyNoLoss words where the loss factor is not fitted, else empty
 * @param whyNoLeak words where the leak area is not fitted, else empty
 * @param plainMinutes of the record at known power without gas, which bear on the loss factor
 * @param gasMinutes at known power with gas, which bear on the leak area once the loss factor is known
 * @param airMinutes at known power with ports open and no gas, which bear on it best
 * @param leftShare scatter of the element power left after the fit, as a share of full power; NaN without a fit
 */
public record Fit(
        double lossFactor,
        double lossLow,
        double lossHigh,
        double leakM2,
        double leakLowM2,
        double leakHighM2,
        String whyNoLoss,
        String whyNoLeak,
        double plainMinutes,
        double gasMinutes,
        double airMinutes,
        double leftShare) {
    /** Loss factors tried; what a sound kiln has is 1.0 to 1.5. */
    public static final double LEAST_LOSS = 0.6;

    public static final double MOST_LOSS = 2.5;
    private static final int LEAST = 6;
    private static final double WARM_K = 900;
    private static final double TELLS_SHARE = 0.005;
    /** A band wider than this to either side is no news beside the 1.0 to 1.5 of any sound kiln. */
    private static final double WIDEST_LOSS = 0.25;

    /** Over this share of full power most of the heat is stored, not lost. */
    private static final double FAST_SHARE = 0.7;

    static final double SIGMAS = 1.645;

    private static final String LIKE = "this log cannot tell leak from wall: ";

    private static final String SINKS =
            ". It must climb: where it sinks or stands nobody can tell which step is in force";

    /** Which log would tell the second number. */
    private static final String TELLS_LEAK =
            ". To learn it, put two holds of an hour or more one after the other before the gas, both over 750 °C at one fixed share of the elements that keeps it climbing (say \"elements\": \"60 %\"):"
                    + " the first with the ports plugged, the second with \"ports\": \"open\", the gas off and the plate shut; write damper 0 into the log when the inlets are opened";

    /**
     * Fits the loss factor and, where full power without gas went before, the leak area. Elements are taken as the design states them: aged
     * ones read as loss.
     *
     * @param draft the draft of the kiln with a leak area in m²; the design's own is kept unless another one follows the record better by
     *     0.5 % of full power
     * @param designLeakM2 leak area that the design states, m²; NaN for none. It is kept where the band of the fitted one holds it
     * @throws CancellationException when its thread is interrupted
     */
    public static Fit of(RecordCase c, DoubleFunction<GasExchange> draft, double designLeakM2) {
        if (c.log().scaleDoubted()) {
            return none("the temperature scale of the log is in doubt", 0, 0);
        }
        if (!(c.kiln().elements().fullW() > 0)) {
            return none(
                    "the kiln has no elements, and the heat of gas is not known well enough: more leak, more loss and less gas look the same",
                    0,
                    0);
        }
        Followed base = Followed.of(c);
        List<Integer> plain =
                told(base, i -> !base.gasOn(i) && !base.setting(i, true).portsOpen());
        List<Integer> air =
                told(base, i -> !base.gasOn(i) && base.setting(i, true).portsOpen());
        List<Integer> gas = told(base, base::gasOn);
        double plainMin = plain.size() * Grid.SPACING_S / 60;
        double gasMin = gas.size() * Grid.SPACING_S / 60;
        for (LogFinding f : Diagnosis.of(base).findings()) {
            if (f.kind() != LogFinding.Kind.WEAK
                    && f.kind() != LogFinding.Kind.AIR_OR_ELEMENT
                    && f.kind() != LogFinding.Kind.THERMOCOUPLE
                    && f.kind() != LogFinding.Kind.OVER
                    && f.kind() != LogFinding.Kind.OVER_WITH_LESS_WARE) {
                return none("the record shows a fault; fit one without", plainMin, gasMin);
            }
        }
        if (plain.size() < LEAST && gas.size() < LEAST) {
            return none(
                    "the record has less than 30 minutes at full or fixed power above 630 °C; in a step with a rate the controller"
                            + " chooses the power and no log tells it. Fire one electric step with \"rate\": \"full\" or a fixed \"elements\" share"
                            + SINKS,
                    plainMin,
                    gasMin);
        }
        if (plain.size() < LEAST) {
            return none(
                    "the record has less than 30 minutes at full or fixed power without gas above 630 °C. With gas burning, more leak and more"
                            + " loss look the same, and neither can be told. Give one electric step before the gas \"rate\": \"full\" or a fixed"
                            + " \"elements\" share, fire it for 30 minutes or more, and fit that record"
                            + SINKS,
                    plainMin,
                    gasMin);
        }
        boolean byAir = air.size() >= LEAST;
        FitSearch.Found loss = (byAir
                        ? FitSearch.ofLeak(base, plain, draft)
                        : FitSearch.ofLoss(base, plain, draft, designLeakM2))
                .loss();
        if (loss == null) {
            return none(
                    "no loss factor from " + LEAST_LOSS + " to " + MOST_LOSS
                            + " gives the climbs of the record: check power, load and brick of the design",
                    plainMin,
                    gasMin);
        }
        if (SIGMAS * loss.lossSd() > WIDEST_LOSS) {
            return none(
                    String.format(
                            java.util.Locale.ROOT,
                            "known power without gas leaves the loss factor anywhere from %.2f to %.2f%s. %s",
                            Math.max(0, loss.loss() - SIGMAS * loss.lossSd()),
                            loss.loss() + SIGMAS * loss.lossSd(),
                            beside(c.kiln().lossFactor(), loss),
                            narrower(base, plain)),
                    plainMin,
                    gasMin);
        }
        if (byAir) {
            return byAir(base, plain, air, draft, loss, plainMin, gasMin);
        }
        if (gas.size() < LEAST) {
            return new Fit(
                    loss.loss(),
                    loss.loss() - SIGMAS * loss.lossSd(),
                    loss.loss() + SIGMAS * loss.lossSd(),
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    "",
                    LIKE
                            + "the record has less than 30 minutes at full or fixed power with gas, and none with ports open and the gas off"
                            + TELLS_LEAK,
                    plainMin,
                    gasMin,
                    0,
                    loss.left());
        }
        List<Integer> all = new ArrayList<>(plain);
        all.addAll(gas);
        FitSearch.Found leaky = FitSearch.ofLeak(base, all, draft).leak(loss.loss());
        String why = leaky == null
                ? "no leak area from " + FitSearch.LEAST_CM2 + " to " + FitSearch.MOST_CM2
                        + " cm2 gives the climbs with gas; gas flow or damper are not as the design has them"
                : leaky.designFits()
                        ? String.format(
                                java.util.Locale.ROOT,
                                LIKE
                                        + "the climbs with gas leave the leak area anywhere from %.1f to %.1f cm2, and the design's lies between%s",
                                leaky.leakLowM2() * 1e4,
                                leaky.leakHighM2() * 1e4,
                                TELLS_LEAK)
                        : leaky.leftOfDesign() - leaky.left() < TELLS_SHARE
                                ? "the climbs with gas are those of the design's leak area within 0.5 % of full power; a smaller difference is no news"
                                : "";
        boolean leak = why.isEmpty();
        FitSearch.Found told = leak ? leaky : loss;
        return new Fit(
                told.loss(),
                told.loss() - SIGMAS * told.lossSd(),
                told.loss() + SIGMAS * told.lossSd(),
                leak ? leaky.leakM2() : Double.NaN,
                leaky == null ? Double.NaN : leaky.leakLowM2(),
                leaky == null ? Double.NaN : leaky.leakHighM2(),
                "",
                why,
                plainMin,
                gasMin,
                0,
                told.left());
    }

    /** The leak from minutes with open ports and no gas, and the loss factor that goes with it. */
    private static Fit byAir(
            Followed base,
            List<Integer> plain,
            List<Integer> air,
            DoubleFunction<GasExchange> draft,
            FitSearch.Found loss,
            double plainMin,
            double gasMin) {
        List<Integer> both = new ArrayList<>(plain);
        both.addAll(air);
        LeakProfile.Found f = new LeakProfile(base, both, draft, loss.loss()).find();
        boolean tells = f.tells();
        double factor = tells ? f.loss() : loss.loss();
        double sd = SIGMAS * (tells ? f.lossSd() : loss.lossSd());
        return new Fit(
                factor,
                factor - (tells ? sd : Math.hypot(sd, Math.max(0, factor - f.lossAtHigh()))),
                factor + (tells ? sd : Math.hypot(sd, Math.max(0, f.lossAtLow() - factor))),
                tells ? f.leakM2() : Double.NaN,
                f.lowM2(),
                f.highM2(),
                "",
                tells
                        ? ""
                        : String.format(
                                java.util.Locale.ROOT,
                                LIKE
                                        + "the minutes with ports open and no gas leave the leak area anywhere from %.1f cm2 (loss factor %.2f with it) to %.1f cm2 (%.2f)%s",
                                f.lowM2() * 1e4,
                                f.lossAtLow(),
                                f.highM2() * 1e4,
                                f.lossAtHigh(),
                                TELLS_LEAK),
                plainMin,
                gasMin,
                air.size() * Grid.SPACING_S / 60,
                tells ? f.left() : loss.left());
    }

    /** Whether a number is fitted. */
    public boolean fits() {
        return !Double.isNaN(lossFactor) || !Double.isNaN(leakM2);
    }

    private static Fit none(String why, double plainMinutes, double gasMinutes) {
        return new Fit(
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                why,
                why,
                plainMinutes,
                gasMinutes,
                0,
                Double.NaN);
    }

    /** What a band too wide to be written down says of the design's factor. */
    private static String beside(double design, FitSearch.Found loss) {
        boolean holds = Math.abs(design - loss.loss()) <= SIGMAS * loss.lossSd();
        return holds
                ? ", which holds the design's %.2f and is no news".formatted(design)
                : ". That leaves out the design's %.2f: this kiln loses %s, or its elements give %s, than the design says, but the band is too wide to be written into it"
                        .formatted(
                                design, design < loss.loss() ? "more" : "less", design < loss.loss() ? "less" : "more");
    }

    /** What to do that the record has not: at full power the heat goes into brick and ware, and little of it tells of the loss. */
    private static String narrower(Followed f, List<Integer> plain) {
        double share = Followed.median(plain.stream().map(i -> f.asked[i]).toList())
                / f.c.kiln().elements().fullW();
        boolean load = Double.isNaN(Notes.loadKg(f.c.log()));
        return (share > FAST_SHARE
                        ? "In so fast a climb brick and ware take most of the power and the loss hardly shows: give the electric step before the gas a fixed share"
                                + " that keeps it climbing (\"rate\": \"full\" with \"elements\": \"60 %\") and fit that record"
                        : "Give the electric step before the gas more time at its fixed share, or a smaller one that keeps it climbing, and fit that record")
                + (load && f.offsets.isEmpty()
                        ? "; a note of what the ware weighs (as: load 30 kg) and cones beside the thermocouple narrow it a little more"
                        : load
                                ? "; a note of what the ware weighs (as: load 30 kg) narrows it a little more"
                                : f.offsets.isEmpty() ? "; cones beside the thermocouple narrow it a little more" : "");
    }

    private static List<Integer> told(Followed f, IntPredicate which) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < f.intervals(); i++) {
            if (!Double.isNaN(f.asked[i]) && f.kelvin[i] > WARM_K && which.test(i)) {
                out.add(i);
            }
        }
        return out;
    }
}
