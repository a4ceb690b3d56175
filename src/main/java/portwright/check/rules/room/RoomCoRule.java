package portwright.check.rules.room;

import java.util.Optional;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.data.ExposureLimit;
import portwright.data.SafetyNumber;
import portwright.review.CoEnd;
import portwright.review.LedOutdoors;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.source.Source;
import portwright.units.Quantity;

/** Carbon monoxide in the room over the firing. */
public final class RoomCoRule implements Rule {

    /** A lead outdoors that takes less is none (judgement). */
    private static final double LEAST_LED = 0.5;

    /** Level at which the firing card sends everybody out (judgement). */
    private static final double EVERYBODY_OUT_PPM = 100;

    private static final Source NOT_BY_AIR_ALONE =
            Source.judgement("worked cases of room air against flue gas in reduction need more air than rooms have");
    private static final Source BROKEN_OFF =
            Source.judgement("a firing that must be broken off is not begun; at 100 ppm everybody leaves");
    private static final Source FLAME_AT_FLUE = Source.judgement("a flame at the flue goes out unseen");

    @Override
    public String id() {
        return "room-co";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        RoomReview room = review.room();
        Boolean indoors = room.indoors();
        if (Boolean.FALSE.equals(indoors)) {
            return;
        }
        if (indoors == null) {
            out.lacks(this, "room.place");
            return;
        }
        if (!room.co().known()) {
            out.lacks(this, room.co().lacking());
            return;
        }
        RoomReview.Co co = room.co().value();
        if (co.worstStep() < 0) {
            return;
        }
        Unstated.freeAreas(this, review, out);
        UnstatedGas.jets(this, review, out);
        Unstated.gasTime(this, review, out);
        UnstatedGas.altitude(this, review, out);
        String unsaid = LedOutdoors.unsaid(review.design().room(), room.hood());
        if (unsaid != null) {
            out.lacks(this, unsaid);
        }
        RoomReview.Air air = room.air().value();
        LedShare.check(this, review, co, out);
        double ceiling = limits.value(id(), "stop");
        burnt(co, ceiling, out);
        double calm = co.calm().peakPpm();
        double eight = co.calm().average8hPpm();
        String made = "Step " + (co.worstStep() + 1) + " makes up to " + Say.n(co.madeM3PerS() * 3600)
                + " m³/h of CO, counted at lambda " + Say.n(co.worstLambda())
                + " in gas of " + Say.told(SafetyNumber.value("hottest-flue"), "°C")
                + " (rich end of the level; where that is richer, the leanest that the flues allow, or the rich end of the forecast's band, 5 % of the draws lie beyond: more than burn shows for the middle); "
                + Say.n(co.shareInRoom() * 100) + " % stays in the room (led outdoors "
                + Say.n(co.ledShare() * 100) + " %" + byHood(room, co) + stated(review, co) + ", burnt at the flue "
                + Say.n(co.burntShare() * 100) + " %)";
        String levels = " The room reaches " + Say.n(calm) + " ppm with no wind"
                + (review.design().room().wind() == null
                        ? ""
                        : " (" + Say.n(co.stated().peakPpm()) + " ppm with the stated wind)")
                + ", " + Say.n(eight)
                + " ppm over 8 h, the air counted through " + Say.n(SafetyNumber.value("mixing-factor"))
                + " (mixing factor: a room is not stirred evenly).";
        if (Say.over(calm, EVERYBODY_OUT_PPM)) {
            levels += " At " + Say.n(EVERYBODY_OUT_PPM)
                    + " ppm everybody leaves and gas is shut from outside: this firing would be broken off.";
        }
        levels += CoPeople.words(room, co, co.gasOnS());
        String has = " The larger of openings (" + Say.flow(air.stackM3PerS()) + " by warmth) and fan gives "
                + Say.flow(air.calmM3PerS()) + " with no wind"
                + (Say.under(air.countedFanM3PerS(), air.fanM3PerS())
                        ? " (of the fan's " + Say.flow(air.fanM3PerS()) + " only " + Say.flow(air.countedFanM3PerS())
                                + " can come in through " + Say.told(air.freeAreaM2() * 1e4, "cm²") + " of openings)."
                        : ".");
        if (Say.over(calm, ceiling)) {
            out.add(Say.finding(
                    this,
                    Severity.STOP,
                    new Measure(calm, "ppm"),
                    new Measure(ceiling, "ppm"),
                    made + "." + levels + has + " Over " + Say.n(ceiling) + " ppm within "
                            + Say.time(co.calm().firstOverS(ceiling) - co.gasOnS()) + " of gas.",
                    remedy(
                            review,
                            co,
                            co.flowForCeilingM3PerS() * co.ceiling().value() / ceiling,
                            ceiling,
                            calm,
                            ceiling),
                    limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
        } else if (Say.under(co.ledShare(), LEAST_LED) && co.madeM3PerS() > 0) {
            out.add(Say.stop(
                    this,
                    new Measure(calm, "ppm"),
                    null,
                    made + "." + levels + has
                            + (co.ledShare() == 0
                                    ? " No hood and no flue leads the gas outdoors:"
                                    : " Less than half of the gas is led outdoors:")
                            + " the air of a room alone does not make a gas firing safe, whatever is computed.",
                    "Hang a hood over the lid that leads outdoors, or fire outdoors.",
                    NOT_BY_AIR_ALONE));
        } else if (Say.over(unburnt(co), ceiling)) {
            out.add(Say.stop(
                    this,
                    new Measure(unburnt(co), "ppm"),
                    new Measure(ceiling, "ppm"),
                    made + "." + levels + has + " With the flame at the flue out, which nobody notices at once, it is "
                            + Say.n(unburnt(co)) + " ppm.",
                    "Lead the flue gas outdoors by a hood; count on a flame at the flue for nothing.",
                    FLAME_AT_FLUE));
        } else if (Say.over(calm, EVERYBODY_OUT_PPM)) {
            out.add(Say.stop(
                    this,
                    new Measure(calm, "ppm"),
                    new Measure(EVERYBODY_OUT_PPM, "ppm"),
                    made + "." + levels + has,
                    remedy(
                            review,
                            co,
                            co.flowForCeilingM3PerS() * co.ceiling().value() / EVERYBODY_OUT_PPM,
                            EVERYBODY_OUT_PPM,
                            calm,
                            ceiling),
                    BROKEN_OFF));
        } else {
            boolean overEightHours = overEightHours(review, co, made + "." + levels + has, ceiling, out);
            CoEnds.check(this, review, ceiling, overEightHours, out);
        }
    }

    /**
     * The limit over 8 h: whether it is passed. That over 15 min cannot be here, whatever the family: none lies under the level at which everybody leaves, which
     * the peak keeps, and no average is over the peak.
     */
    private boolean overEightHours(Review review, RoomReview.Co co, String told, double ceiling, Findings out) {
        double eight = co.calm().average8hPpm();
        ExposureLimit l8 = co.eightHours();
        if (Say.over(eight, l8.value())) {
            out.add(Say.caution(
                    this,
                    new Measure(eight, "ppm"),
                    new Measure(l8.value(), "ppm"),
                    told + " The limit over 8 h is " + Say.n(l8.value()) + " ppm (" + l8.body() + ").",
                    remedy(review, co, co.flowForEightHoursM3PerS(), l8.value(), eight, ceiling),
                    l8.source()));
            return true;
        }
        return false;
    }

    /** Peak with the flame at the flue out, ppm: what burns there is in the room then. */
    private static double unburnt(RoomReview.Co co) {
        double left = co.shareInRoom();
        return left > 0 ? co.calm().peakPpm() * (1 - co.ledShare()) / left : 0;
    }

    /** A share stated to burn at the flue is said aloud. */
    private void burnt(RoomReview.Co co, double ceiling, Findings out) {
        if (co.burntShare() > 0 && !Say.over(unburnt(co), ceiling)) {
            out.add(Say.caution(
                    this,
                    new Measure(unburnt(co), "ppm"),
                    null,
                    Say.n(co.burntShare() * 100)
                            + " % of what leaves the flue is taken to burn there, as stated; with that flame out the room reaches "
                            + Say.n(unburnt(co)) + " ppm.",
                    "Watch the flame at the flue; where nobody does, take room.burntAtFlue away.",
                    FLAME_AT_FLUE));
        }
    }

    private static String stated(Review review, RoomReview.Co co) {
        Quantity given = review.design().room().ledOutdoors();
        return given != null && Say.under(co.ledShare(), given.share())
                ? ", stated " + Say.n(given.share() * 100) + " %"
                        + (LedOutdoors.sealed(review.design().room())
                                ? " but no opening to outdoors lets in the air that it would draw"
                                : "")
                : "";
    }

    private static String byHood(RoomReview room, RoomReview.Co co) {
        return room.hood().known() && room.hood().value().capturedShare() == co.ledShare() ? " by the hood" : "";
    }

    /** How much air, or what share led outdoors, keeps every limit: the ceiling in force, 15 min and 8 h. */
    private static String remedy(
            Review review, RoomReview.Co co, double flow, double limitPpm, double levelPpm, double ceilingPpm) {
        double led = led(co, limitPpm, levelPpm);
        double all = Math.max(led, led(co, co.eightHours().value(), co.calm().average8hPpm()));
        if (co.quarterHour() != null) {
            all = Math.max(all, led(co, co.quarterHour().value(), co.calm().average15MinPpm()));
        }
        Optional<CoEnd> slow = CoEnd.of(review);
        all = Math.max(all, slow.map(e -> CoEnds.led(co, e, ceilingPpm)).orElse(0.0));
        boolean more = Say.over(co.flowForEightHoursM3PerS(), flow);
        return "Needs " + Say.flow(flow) + " of fresh air indoors"
                + (more
                        ? " for " + Say.n(limitPpm) + " ppm, " + Say.flow(co.flowForEightHoursM3PerS()) + " for "
                                + Say.n(co.eightHours().value()) + " ppm over 8 h"
                        : "")
                + ": lead the flue gas outdoors by a hood (at least " + percent(led) + " % of it"
                + (Say.over(all, led)
                        ? " for " + Say.n(limitPpm) + " ppm, " + percent(all)
                                + " % to keep every limit"
                                + (slow.isPresent() ? " at the slow end of the forecast too" : "")
                        : "")
                + (Say.over(all, SafetyNumber.value("hood-capture"))
                        ? "; over " + Say.n(SafetyNumber.value("hood-capture") * 100)
                                + " % counts where the hood meets hood-capture and room.ledOutdoors states it"
                        : "")
                + "), or fire outdoors. Opening a window is not enough. At " + Say.n(EVERYBODY_OUT_PPM)
                + " ppm leave and shut gas from outside.";
    }

    /** Share to lead outdoors for a limit, from the level now. */
    static double led(RoomReview.Co co, double limitPpm, double levelPpm) {
        return 1 - (1 - co.ledShare()) * Math.min(1, limitPpm / levelPpm);
    }

    /** Rounded up to a tenth. */
    static String percent(double share) {
        return Say.n(Math.ceil(share * 1000 - 1e-9) / 10);
    }
}
