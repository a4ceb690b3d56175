package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogOrder;
import portwright.calc.firing.log.PowerTrend;
import portwright.calc.firing.log.RecordResult;
import portwright.review.AgainstPlan;
import portwright.review.RecordReview;
import portwright.review.RecordView;

/** Records of firings as JSON, and record beside forecast as CSV. */
public final class RecordJson {
    private RecordJson() {}

    /** One object: records, ledger, fit ({@code null}: not asked for). */
    public static String write(RecordReview r, List<String> names, Fit fit) {
        ObjectNode root = Json.object();
        root.put("portwright", 1).put("title", r.review().design().title());
        ArrayNode records = root.putArray("records");
        for (int i = 0; i < r.logs().size(); i++) {
            ObjectNode o = records.addObject().put("file", names.get(i));
            record(o, r, i);
            AgainstPlanJson.write(o, AgainstPlan.of(r, i));
        }
        ledger(root.putObject("ledger"), r.ledger());
        if (fit != null) {
            ObjectNode o = root.putObject("fit");
            Json.number(o, "lossFactor", fit.lossFactor());
            Json.number(o, "lossFactorLow", fit.lossLow());
            Json.number(o, "lossFactorHigh", fit.lossHigh());
            why(o, "lossFactorWhy", fit.whyNoLoss());
            Json.number(o, "leakAreaCm2", fit.leakM2() * 1e4);
            Json.number(o, "leakAreaLowCm2", fit.leakLowM2() * 1e4);
            Json.number(o, "leakAreaHighCm2", fit.leakHighM2() * 1e4);
            why(o, "leakAreaWhy", fit.whyNoLeak());
            Json.number(o, "minutesWithoutGas", fit.plainMinutes());
            Json.number(o, "minutesWithGas", fit.gasMinutes());
            Json.number(o, "minutesOpenWithoutGas", fit.airMinutes());
            Json.number(o, "leftShare", fit.leftShare());
        }
        return Json.text(Json.codes(root));
    }

    private static void record(ObjectNode o, RecordReview r, int i) {
        FiringLog log = r.logs().get(i);
        RecordResult x = r.results().get(i);
        List<RecordView> views = r.views().get(i);
        o.put("rowsUsed", log.linesUsed()).put("rowsSkipped", log.linesSkipped());
        ArrayNode faults = o.putArray("faults");
        log.faults()
                .forEach(f -> faults.addObject()
                        .put("line", f.line())
                        .put("skipped", f.skipped())
                        .put("reason", f.reason()));
        ArrayNode remarks = o.putArray("remarks");
        log.remarks().forEach(remarks::add);
        o.put("firingOfThePlan", x.own() == null);
        if (x.own() == null) {
            o.put("reached", x.goalKnown() ? Boolean.valueOf(x.reached() && x.kept()) : null);
            why(o, "reachedWhy", x.kept() ? "" : "the last hold ends over 10 K under what it was to hold");
        } else {
            o.put(
                    "firingOtherWhy",
                    x.own().why().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            o.putNull("reached");
            Json.number(o, "mostPowerShare", x.own().mostShare());
            Json.number(o, "mostPowerC", x.own().mostK() - ZERO_C);
        }
        Json.number(o, "topC", x.topK() - ZERO_C);
        Json.number(o, "powerShare", x.powerShare());
        why(o, "powerShareWhy", Double.isNaN(x.powerShare()) ? "no 5 minutes at full or fixed element power" : "");
        boolean gas = x.gasUnread() == 0;
        o.put("gasCellsNotRead", x.gasUnread());
        Json.number(o, "gasKg", gas ? Double.valueOf(x.gasKg()) : null);
        Json.number(o, "gasLeastKg", gas ? Double.valueOf(x.gas().leastKg()) : null);
        Json.number(o, "gasMostKg", gas ? Double.valueOf(x.gas().mostKg()) : null);
        Json.number(o, "smallestLossShown", x.smallestLoss());
        why(o, "smallestLossShownWhy", Double.isNaN(x.smallestLoss()) ? "too little time at full or fixed power" : "");
        Json.number(o, "smallestDamperShown", x.smallestAir());
        why(
                o,
                "smallestDamperShownWhy",
                Double.isNaN(x.smallestAir()) ? "the damper is logged, or the record tells of none" : "");
        ArrayNode gaps = o.putArray("gaps");
        x.gaps().forEach(g -> {
            ObjectNode n = gaps.addObject().put("fromLine", g.fromLine()).put("toLine", g.toLine());
            Json.number(n, "fromHours", g.fromS() / 3600);
            Json.number(n, "toHours", g.toS() / 3600);
        });
        ArrayNode turned = o.putArray("turnedBetweenRows");
        x.turned().forEach(g -> {
            ObjectNode n = turned.addObject().put("fromLine", g.fromLine()).put("toLine", g.toLine());
            Json.number(n, "fromHours", g.fromS() / 3600);
            Json.number(n, "toHours", g.toS() / 3600);
        });
        Json.number(o, "gasHoursUnderController", x.ledGasS() / 3600);
        ArrayNode dead = o.putArray("thermocoupleDead");
        log.dead().forEach(d -> {
            ObjectNode n = dead.addObject().put("fromLine", d.fromLine()).put("toLine", d.toLine());
            Json.number(n, "fromHours", d.fromS() / 3600);
            Json.number(n, "toHours", d.toS() / 3600);
            Json.number(n, "shownC", d.kelvin() - ZERO_C);
        });
        ObjectNode air = o.putObject("atmosphereMinutes");
        x.atmosphereS().forEach((l, s) -> Json.number(air, l.id(), s / 60));
        Json.number(air, "unknown", x.unknownAtmosphereS() / 60);
        if (x.damperLogged() || x.gasLogged()) {
            ObjectNode band = o.putObject("atmosphereMinutesBand");
            x.atmosphereBandS()
                    .forEach((l, s) -> band.putArray(l.id()).add(s[0] / 60).add(s[1] / 60));
        }
        o.put(
                "atmosphereFrom",
                x.damperLogged()
                        ? "logged damper"
                        : x.gasLogged()
                                ? "the card's damper settings; no damper is logged"
                                : "plan only; neither damper nor gas is logged");
        ArrayNode findings = o.putArray("findings");
        x.findings().forEach(f -> {
            ObjectNode n = findings.addObject()
                    .put("kind", f.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .put("severity", RecordText.note(f) ? "note" : "caution");
            Json.number(n, "hours", f.timeS() / 3600);
            Json.number(n, "readingC", f.kelvin() - ZERO_C);
            Json.number(n, "lostKw", f.lostW() / 1000);
            Json.number(n, "lostShare", f.lostShare());
            boolean cone = f.kind() == LogFinding.Kind.CONE;
            boolean over = !cone && f.cone() != null;
            Json.number(n, "thermocoupleLowK", over ? Double.NaN : f.offsetK());
            if (over) {
                Json.number(n, "overK", f.offsetK());
                n.put("planCone", f.planCone()).put("cone", f.cone()).put("gas", f.gas());
            }
            if (cone) {
                n.put("cone", f.cone());
            }
            Json.number(n, "notSeenToHours", f.soundS() > 0 ? f.soundS() / 3600 : Double.NaN);
            n.put("orDamper", f.orAir());
            n.put("fromStart", f.fromStart())
                    .put("falls", f.falls())
                    .put("orThermocouple", f.orProbe())
                    .put("message", RecordText.words(f, x.elements()));
        });
        ArrayNode spells = o.putArray("spells");
        x.spells().forEach(s -> {
            ObjectNode n = spells.addObject().put("kind", s.falls() ? "falls" : "stands");
            Json.number(n, "fromHours", s.fromS() / 3600);
            Json.number(n, "toHours", s.toS() / 3600);
            Json.number(n, "fromC", s.fromK() - ZERO_C);
            Json.number(n, "toC", s.toK() - ZERO_C);
        });
        ArrayNode cones = o.putArray("cones");
        x.offsets()
                .forEach(c -> Json.number(
                        Json.number(
                                Json.number(cones.addObject().put("cone", c.cone()), "hours", c.timeS() / 3600),
                                "readingC",
                                c.readingK() - ZERO_C),
                        "thermocoupleLowK",
                        c.tells() ? c.offsetK() : Double.NaN));
        ArrayNode steps = o.putArray("steps");
        x.steps().forEach(s -> {
            ObjectNode n = steps.addObject().put("index", s.index());
            Json.number(n, "startHours", s.startS() / 3600);
            Json.number(n, "endHours", s.endS() / 3600);
            Json.number(n, "startC", s.startK() - ZERO_C);
            Json.number(n, "endC", s.endK() - ZERO_C);
            Json.number(n, "climbKPerH", s.climbKPerS() * 3600);
            Json.number(n, "forecastClimbKPerH", r.forecastClimbKPerS(s.index()) * 3600);
            Json.number(n, "gasKg", s.gasKg());
            Json.number(n, "sagK", s.sagK());
        });
        ArrayNode series = o.putArray("series");
        views.forEach(v -> {
            ObjectNode n = series.addObject();
            Json.number(n, "hours", v.hours());
            Json.number(n, "measuredC", v.measuredC());
            Json.number(n, "forecastC", v.forecastC());
            Json.number(n, "lowC", v.lowC());
            Json.number(n, "highC", v.highC());
        });
    }

    private static void ledger(ObjectNode o, Ledger l) {
        order(o, l.order());
        ArrayNode unread = o.putArray("recordsNotRead");
        l.notRead().forEach(unread::add);
        ArrayNode ended = o.putArray("recordsStoppedShort");
        l.stoppedShort().forEach(ended::add);
        ArrayNode kept = o.putArray("recordsLastHoldNotKept");
        l.notKept().forEach(kept::add);
        Json.number(
                o, "reductionHoursSinceOxidising", l.gasUnread().isEmpty() ? Double.valueOf(l.reductionHours()) : null);
        Json.number(o, "neutralHoursSinceOxidising", l.gasUnread().isEmpty() ? Double.valueOf(l.neutralHours()) : null);
        ArrayNode unreadGas = o.putArray("recordsGasNotRead");
        l.gasUnread().forEach(unreadGas::add);
        ArrayNode silent = o.putArray("recordsWithoutWordOfGas");
        l.notTold().forEach(silent::add);
        o.put("oxidisingFiringAmongRecords", l.oxidisedSince());
        boolean over = l.gasLeftKg() < 0;
        boolean read = l.gasUnread().isEmpty();
        Json.number(o, "gasUsedKg", read ? Double.valueOf(l.gasUsed().kg()) : null);
        Json.number(o, "gasUsedLeastKg", read ? Double.valueOf(l.gasUsed().leastKg()) : null);
        Json.number(o, "gasUsedMostKg", read ? Double.valueOf(l.gasUsed().mostKg()) : null);
        Json.number(o, "gasLeftKg", over || !read ? null : Double.valueOf(l.gasLeftKg()));
        Json.number(o, "gasLeftLeastKg", over || !read ? null : Double.valueOf(l.gasLeftLeastKg()));
        Json.number(o, "gasLeftMostKg", over || !read ? null : Double.valueOf(l.gasLeftMostKg()));
        why(
                o,
                "gasLeftWhy",
                Double.isNaN(l.gasLeftKg())
                        ? "add supply.cylinder.capacity and fill"
                        : !read
                                ? "cells of the gas column are not read"
                                : over
                                        ? "more was used than the cylinders held; in the log's notes column, in the row where one was changed, write: new cylinder"
                                        : "");
        if (l.refilled() >= 0) {
            o.put("refilledInRecord", l.refilled());
        }
        ArrayNode shares = o.putArray("powerShares");
        l.powerShares().forEach(s -> {
            if (Double.isNaN(s)) {
                shares.addNull();
            } else {
                shares.add(s);
            }
        });
        trend(o, l.trend());
        Json.number(o, "thermocoupleLowK", l.thermocoupleK());
        why(
                o,
                "thermocoupleWhy",
                !Double.isNaN(l.thermocoupleK())
                        ? ""
                        : l.conesLogged() ? "no cone logged tells of it" : "no cone is logged");
        ArrayNode due = o.putArray("due");
        l.due()
                .forEach(d -> due.addObject()
                        .put("what", d.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .put("message", RecordText.words(l, d)));
    }

    private static void order(ObjectNode o, LogOrder order) {
        ArrayNode counted = o.putArray("recordsInOrder");
        order.counted().forEach(counted::add);
        o.put("orderFrom", order.byDate() ? "dates" : "given").put("datesAgainstOrder", order.against());
        ArrayNode repeats = o.putArray("repeats");
        order.repeats().forEach(repeats::add);
        ArrayNode overlap = o.putArray("overlapping");
        order.overlap().forEach(overlap::add);
    }

    private static void trend(ObjectNode o, PowerTrend t) {
        Json.number(o, "resistanceRise", t == null ? Double.NaN : t.rise());
        Json.number(o, "resistanceRiseLow", t == null ? Double.NaN : t.low());
        Json.number(o, "resistanceRiseHigh", t == null ? Double.NaN : t.high());
        o.put("resistanceChangeShown", t != null && t.tells());
        why(o, "resistanceRiseWhy", t == null ? "no two records show known power in the same heat" : "");
    }

    private static void why(ObjectNode o, String field, String why) {
        if (!why.isEmpty()) {
            o.put(field, why);
        }
    }

    /** Record beside forecast, one row in five minutes. */
    public static String csv(List<RecordView> views) {
        StringBuilder b = new StringBuilder("hours,measuredC,forecastC,lowC,highC\n");
        for (RecordView v : views) {
            b.append(String.format(
                    Locale.ROOT,
                    "%.4f,%s,%s,%s,%s\n",
                    v.hours(),
                    c(v.measuredC()),
                    c(v.forecastC()),
                    c(v.lowC()),
                    c(v.highC())));
        }
        return b.toString();
    }

    private static String c(Double v) {
        return v == null ? "" : String.format(Locale.ROOT, "%.1f", v);
    }
}
