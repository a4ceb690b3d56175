package portwright.check.rules.room;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import portwright.calc.room.RoomCo;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.review.CoEnd;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.source.Source;

/**
 * A room that keeps the limits only as long as brick and draught are as usual: what the forecast is not sure of is told as one caution, with the default
 * behind it. The ceiling goes before the limits over time; of the causes, one alone goes before both together.
 */
final class CoEnds {
    private static final Source BAND =
            Source.judgement("brick conductivity ±20 %; 5 to 95 % of seeded draws of the kiln's draught");

    private final Rule rule;
    private final Review review;
    private final RoomReview.Co co;
    private final List<CoEnd> ends;

    private CoEnds(Rule rule, Review review) {
        this.rule = rule;
        this.review = review;
        this.co = review.room().co().value();
        this.ends = CoEnd.all(review);
    }

    /**
     * Adds the caution where an end of the band passes a limit.
     *
     * @param ceiling ppm
     * @param overTime whether a limit over time is passed already as counted, and told
     */
    static void check(Rule rule, Review review, double ceiling, boolean overTime, Findings out) {
        CoEnds all = new CoEnds(rule, review);
        Optional<Finding> worst = all.over(ceiling, " ppm", RoomCo::peakPpm);
        if (!overTime) {
            worst = worst.or(() -> all.over(all.co.eightHours().value(), " ppm over 8 h", RoomCo::average8hPpm))
                    .or(() -> all.co.quarterHour() == null
                            ? Optional.empty()
                            : all.over(all.co.quarterHour().value(), " ppm over 15 min", RoomCo::average15MinPpm));
        }
        worst.ifPresent(out::add);
    }

    /** Share to lead outdoors so that every limit holds at the ends of the forecast's band too, 0 to 1; 0 where no end is worse than what is counted. */
    static double led(Review review, double ceilingPpm) {
        RoomReview.Co co = review.room().co().value();
        double all = 0;
        for (CoEnd e : CoEnd.all(review)) {
            RoomCo c = e.course();
            all = Math.max(all, RoomCoRule.led(co, ceilingPpm, c.peakPpm()));
            all = Math.max(all, RoomCoRule.led(co, co.eightHours().value(), c.average8hPpm()));
            if (co.quarterHour() != null) {
                all = Math.max(all, RoomCoRule.led(co, co.quarterHour().value(), c.average15MinPpm()));
            }
        }
        return all;
    }

    private Optional<Finding> over(double limit, String unit, ToDoubleFunction<RoomCo> level) {
        return ends.stream()
                .filter(e -> Say.over(level.applyAsDouble(e.course()), limit))
                .findFirst()
                .map(e -> finding(
                        e,
                        level.applyAsDouble(e.course()),
                        limit,
                        unit,
                        ends.stream()
                                .mapToDouble(k -> level.applyAsDouble(k.course()))
                                .max()
                                .orElseThrow()));
    }

    private Finding finding(CoEnd end, double level, double limit, String unit, double worst) {
        return Say.caution(
                rule,
                new Measure(level, "ppm"),
                new Measure(limit, "ppm"),
                words(end) + ": the room would reach " + Say.n(level) + unit + " with no wind; the limit is "
                        + Say.n(limit) + unit + ".",
                "Lead at least " + RoomCoRule.percent(RoomCoRule.led(co, limit, worst)) + " % of the flue gas outdoors"
                        + (end.rich()
                                ? ", or ask for a leaner level; watch a CO meter and set the plate by the flame."
                                : "; watch a CO meter and shut gas when the time counted is over.")
                        + (end.slow() && review.design().kiln().lossFactor() == null
                                ? " A logged firing teaches kiln.lossFactor."
                                : ""),
                BAND);
    }

    private String words(CoEnd end) {
        return !end.rich() ? slow(end) : !end.slow() ? rich(end) : slow(end) + ". " + rich(end);
    }

    private String slow(CoEnd end) {
        return slowWords(
                review, "gas burns " + Say.time(end.gasS()) + " instead of " + Say.time(CoEnd.countedGasS(review)));
    }

    private String rich(CoEnd end) {
        return "Set as asked, step " + (end.step() + 1) + " may still burn as rich as lambda " + Say.n(end.lambda())
                + " (the rich end of the forecast's band, 5 % of the draws lie beyond"
                + (review.design().kiln().leakArea() == null
                        ? "; kiln.leakArea is not stated, hairline cracks are drawn"
                        : "")
                + ")";
    }

    /** What brick does that conducts more than tabled, and the default that was taken for it. */
    static String slowWords(Review review, String effect) {
        return "Where the brick conducts 20 % more than tabled, " + effect
                + (review.design().kiln().lossFactor() == null
                        ? " (kiln.lossFactor is not stated, the usual one is taken)"
                        : "");
    }
}
