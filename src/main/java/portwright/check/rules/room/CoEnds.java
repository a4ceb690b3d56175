package portwright.check.rules.room;

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
 * A room that keeps the limits only as long as the brick is as usual: gas that burns longer is told as one caution, with the default behind it. The ceiling goes
 * before the limits over time. How rich the fire may be is counted by the rule itself.
 */
final class CoEnds {
    private static final Source BAND = Source.judgement("brick conductivity ±20 %");

    private final Rule rule;
    private final Review review;
    private final RoomReview.Co co;
    private final Optional<CoEnd> end;

    private CoEnds(Rule rule, Review review) {
        this.rule = rule;
        this.review = review;
        this.co = review.room().co().value();
        this.end = CoEnd.of(review);
    }

    /**
     * Adds the caution where the slow end passes a limit.
     *
     * @param ceiling ppm
     * @param overEightHours whether the limit over 8 h is passed already as counted, and told
     */
    static void check(Rule rule, Review review, double ceiling, boolean overEightHours, Findings out) {
        CoEnds all = new CoEnds(rule, review);
        Optional<Finding> worst = all.over(ceiling, " ppm", RoomCo::peakPpm);
        if (!overEightHours) {
            worst = worst.or(() -> all.over(all.co.eightHours().value(), " ppm over 8 h", RoomCo::average8hPpm))
                    .or(() -> all.co.quarterHour() == null
                            ? Optional.empty()
                            : all.over(all.co.quarterHour().value(), " ppm over 15 min", RoomCo::average15MinPpm));
        }
        worst.ifPresent(out::add);
    }

    /** Share to lead outdoors so that every limit holds at the slow end of the forecast too, 0 to 1. */
    static double led(RoomReview.Co co, CoEnd end, double ceilingPpm) {
        RoomCo c = end.course();
        double all = Math.max(
                RoomCoRule.led(co, ceilingPpm, c.peakPpm()),
                RoomCoRule.led(co, co.eightHours().value(), c.average8hPpm()));
        return co.quarterHour() == null
                ? all
                : Math.max(all, RoomCoRule.led(co, co.quarterHour().value(), c.average15MinPpm()));
    }

    private Optional<Finding> over(double limit, String unit, ToDoubleFunction<RoomCo> level) {
        return end.filter(e -> Say.over(level.applyAsDouble(e.course()), limit))
                .map(e -> finding(e, level.applyAsDouble(e.course()), limit, unit));
    }

    private Finding finding(CoEnd slow, double level, double limit, String unit) {
        return Say.caution(
                rule,
                new Measure(level, "ppm"),
                new Measure(limit, "ppm"),
                slowWords(
                                review,
                                "gas burns " + Say.time(slow.gasS()) + " instead of "
                                        + Say.time(CoEnd.countedGasS(review)))
                        + ": the room would reach " + Say.n(level) + unit + " with no wind; the limit is "
                        + Say.n(limit) + unit + ".",
                "Lead at least " + RoomCoRule.percent(RoomCoRule.led(co, limit, level))
                        + " % of the flue gas outdoors; watch a CO meter and shut gas when the time counted is over."
                        + (review.design().kiln().lossFactor() == null
                                ? " A logged firing teaches kiln.lossFactor."
                                : ""),
                BAND);
    }

    /** What brick does that conducts more than tabled, and the default that was taken for it. */
    static String slowWords(Review review, String effect) {
        return "Where the brick conducts 20 % more than tabled, " + effect
                + (review.design().kiln().lossFactor() == null
                        ? " (kiln.lossFactor is not stated, the usual one is taken)"
                        : "");
    }
}
