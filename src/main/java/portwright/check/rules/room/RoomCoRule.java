package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.calc.room.AlarmWindow;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.CoEffect;
import portwright.data.ExposureLimit;
import portwright.data.SafetyNumber;
import portwright.review.Review;
import portwright.review.RoomReview;

/** Carbon monoxide in the room over the firing. */
public final class RoomCoRule implements Rule {

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
        RoomReview.Air air = room.air().value();
        double caught = room.hood().known() ? room.hood().value().capturedShare() : 0;
        if (Say.over(co.ledShare(), 1 - SafetyNumber.value("lid-leak-share")) && Say.over(co.ledShare(), caught)) {
            out.add(Say.caution(
                    this,
                    new Measure(co.ledShare(), "1"),
                    new Measure(1 - SafetyNumber.value("lid-leak-share"), "1"),
                    "The share led outdoors, " + Say.n(co.ledShare() * 100)
                            + " %, is taken as stated; the cracks of the lid alone carry up to "
                            + Say.n(SafetyNumber.value("lid-leak-share") * 100) + " % of the gas past any pipe.",
                    "Prove it with a CO meter at head height through the first firing.",
                    SafetyNumber.named("lid-leak-share").source()));
        }
        double ceiling = limits.value(id(), "stop");
        double calm = co.calm().peakPpm();
        double eight = co.calm().average8hPpm();
        ExposureLimit l8 = co.eightHours();
        String made = "Step " + (co.worstStep() + 1) + " makes " + Say.n(co.madeMolPerS() * 0.02405 * 3600)
                + " m³/h of CO at lambda " + Say.n(co.worstLambda())
                + ", the rich end of what it asks for, in the hottest flue (more than the middle that burn prints); "
                + Say.n(co.shareInRoom() * 100) + " % stays in the room (led outdoors "
                + Say.n(co.ledShare() * 100) + " %" + byHood(room, co) + ", burnt at the flue "
                + Say.n(co.burntShare() * 100) + " %)";
        String levels = " The room reaches " + Say.n(calm) + " ppm with no wind ("
                + Say.n(co.stated().peakPpm()) + " ppm with the stated wind), " + Say.n(eight)
                + " ppm over 8 h, with one part in " + Say.n(SafetyNumber.value("mixing-factor"))
                + " of the air counted as mixing (mixing factor).";
        levels += people(room, co, startOfGas(review));
        String has = " Openings and fan give " + Say.flow(air.calmM3PerS()) + " with no wind.";
        if (Say.over(calm, ceiling)) {
            out.add(Say.finding(
                    this,
                    Severity.STOP,
                    new Measure(calm, "ppm"),
                    new Measure(ceiling, "ppm"),
                    made + "." + levels + has + " Over " + Say.n(ceiling) + " ppm after "
                            + Say.time(co.calm().firstOverS(ceiling) - startOfGas(review)) + " of gas.",
                    remedy(co, co.flowForCeilingM3PerS() * co.ceiling().value() / ceiling, ceiling, calm),
                    limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
        } else if (Say.over(eight, l8.value())) {
            out.add(Say.caution(
                    this,
                    new Measure(eight, "ppm"),
                    new Measure(l8.value(), "ppm"),
                    made + "." + levels + has + " The limit over 8 h is " + Say.n(l8.value()) + " ppm (" + l8.body()
                            + ").",
                    remedy(co, co.flowForEightHoursM3PerS(), l8.value(), eight),
                    l8.source()));
        } else if (co.quarterHour() != null
                && Say.over(co.calm().average15MinPpm(), co.quarterHour().value())) {
            double q = co.calm().average15MinPpm();
            out.add(Say.caution(
                    this,
                    new Measure(q, "ppm"),
                    new Measure(co.quarterHour().value(), "ppm"),
                    made + "." + levels + " Over 15 min it is " + Say.n(q) + " ppm; the limit is "
                            + Say.n(co.quarterHour().value()) + " ppm ("
                            + co.quarterHour().body() + ").",
                    remedy(
                            co,
                            co.flowForCeilingM3PerS()
                                    * co.ceiling().value()
                                    / co.quarterHour().value(),
                            co.quarterHour().value(),
                            q),
                    co.quarterHour().source()));
        }
    }

    /** What the peak does to people, and whether a house alarm would say so. */
    private static String people(RoomReview room, RoomReview.Co co, double gasOnS) {
        String effect = CoEffect.at(co.calm().peakPpm())
                .map(e -> " At " + Say.n(e.ppm()) + " ppm: " + e.effect() + " ("
                        + e.source().title() + ").")
                .orElse("");
        String standard = AlarmWindow.standard(room.family());
        List<AlarmWindow> windows = AlarmWindow.all(co.calm(), standard);
        double may = windows.stream().mapToDouble(AlarmWindow::earliestS).min().orElse(Double.NaN);
        double must = windows.stream()
                .flatMapToDouble(w -> w.latestS().stream())
                .min()
                .orElse(Double.NaN);
        return effect
                + (windows.isEmpty()
                        ? " A house alarm to " + standard + " may stay silent throughout."
                        : " A house alarm to " + standard + " sounds " + Say.time(may - gasOnS)
                                + " after the first gas at the earliest"
                                + (Double.isNaN(must)
                                        ? " and need not sound at all."
                                        : ", " + Say.time(must - gasOnS) + " at the latest."));
    }

    private static String byHood(RoomReview room, RoomReview.Co co) {
        return room.hood().known() && room.hood().value().capturedShare() == co.ledShare() ? " by the hood" : "";
    }

    private static double startOfGas(Review review) {
        double t = 0;
        for (var s : review.supply().steps().value()) {
            if (s.gas()) {
                return t;
            }
            t += s.seconds();
        }
        return t;
    }

    /** How much air, or what share led outdoors, keeps every limit: the ceiling, 15 min and 8 h. */
    private static String remedy(RoomReview.Co co, double flow, double limitPpm, double levelPpm) {
        double led = led(co, limitPpm, levelPpm);
        double all = Math.max(led, led(co, co.eightHours().value(), co.calm().average8hPpm()));
        if (co.quarterHour() != null) {
            all = Math.max(all, led(co, co.quarterHour().value(), co.calm().average15MinPpm()));
        }
        boolean more = Say.over(co.flowForEightHoursM3PerS(), flow);
        return "Needs " + Say.flow(flow) + " of fresh air indoors"
                + (more
                        ? " for " + Say.n(limitPpm) + " ppm, " + Say.flow(co.flowForEightHoursM3PerS()) + " for "
                                + Say.n(co.eightHours().value()) + " ppm over 8 h"
                        : "")
                + ": lead the flue gas outdoors by a hood (at least " + percent(led) + " % of it"
                + (Say.over(all, led)
                        ? " for " + Say.n(limitPpm) + " ppm, " + percent(all) + " % to keep every limit"
                        : "")
                + "), or fire outdoors. Opening a window is not enough. At 100 ppm shut gas and leave.";
    }

    private static double led(RoomReview.Co co, double limitPpm, double levelPpm) {
        return 1 - (1 - co.ledShare()) * Math.min(1, limitPpm / levelPpm);
    }

    /** Rounded up to a tenth. */
    private static String percent(double share) {
        return Say.n(Math.ceil(share * 1000 - 1e-9) / 10);
    }
}
