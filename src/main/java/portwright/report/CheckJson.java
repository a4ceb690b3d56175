package portwright.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Measure;
import portwright.check.NotChecked;
import portwright.check.OwnLimit;
import portwright.layout.DrillOutlook;
import portwright.layout.HoleOdds;
import portwright.review.Assumed;
import portwright.review.Figures;
import portwright.source.Source;

/** A check's result as one JSON object. */
public final class CheckJson {
    private CheckJson() {}

    /**
     * Pretty-printed object with a final newline; numbers that do not exist are null.
     *
     * @param drill the odds of drilling by hand; null for none
     */
    public static String write(CheckResult r, DrillOutlook drill) {
        ObjectNode root = Json.object();
        root.put("portwright", 1).put("title", r.title());
        root.putObject("verdict")
                .put("drilling", r.drilling().id())
                .put("lighting", r.lighting().id());
        r.findings().forEach(f -> finding(root.withArray("findings").addObject(), f));
        root.withArray("findings");
        root.withArray("notChecked");
        r.notChecked().forEach(n -> notChecked(root.withArray("notChecked").addObject(), n));
        root.withArray("assumed");
        for (Assumed a : r.assumed()) {
            root.withArray("assumed")
                    .addObject()
                    .put("field", a.field())
                    .put("value", a.value())
                    .put("why", a.why());
        }
        root.withArray("ownLimits");
        for (OwnLimit l : r.ownLimits()) {
            root.withArray("ownLimits")
                    .addObject()
                    .put("rule", l.rule())
                    .put("limit", l.name())
                    .put("value", l.value())
                    .put("ruleBook", l.ruleBook());
        }
        figures(root.putObject("figures"), r.figures());
        root.withObject("/figures").put("weakestSectionAtLeast", r.openSections());
        if (drill != null) {
            drill(root.putObject("drillingByHand"), drill);
        }
        return Json.text(Json.codes(root));
    }

    /** Shares from 0 to 1; shifts of a mark along the axes in which its place is written. */
    private static void drill(ObjectNode o, DrillOutlook drill) {
        allInside(o, drill);
        o.put("target", HoleOdds.TARGET);
        o.putObject("within95")
                .put("centreMm", drill.error().centreMm())
                .put("tiltDeg", Math.toDegrees(drill.error().tiltRad()))
                .put("measuredMm", drill.error().measureMm());
        o.put("oversizeUpToMm", drill.error().oversizeMm());
        for (HoleOdds h : drill.odds()) {
            ObjectNode hole = o.withArray("holes")
                    .addObject()
                    .put("hole", h.hole())
                    .put("stop", h.stop())
                    .put("standardError", h.stopError());
            ObjectNode rules = hole.putObject("byRule");
            new TreeMap<>(h.byRule()).forEach(rules::put);
            if (h.meetsTarget() || !h.hasNudge()) {
                hole.putNull("nudge");
            } else {
                hole.putObject("nudge")
                        .put("xMm", h.nudgeX())
                        .put("yMm", h.nudgeY())
                        .put("stop", h.stopNudged());
            }
        }
    }

    /** The share, null with the reason where it is not told, and what it leaves out. */
    static void allInside(ObjectNode o, DrillOutlook drill) {
        Json.number(o, "allInside", drill.allInside());
        if (!drill.told()) {
            o.put("whyNot", drill.whyNot());
        }
        ArrayNode open = o.putArray("notChecked");
        Stream.of(drill.unknown().places(), drill.unknown().others())
                .flatMap(List::stream)
                .forEach(n -> notChecked(open.addObject(), n));
    }

    static void notChecked(ObjectNode o, NotChecked n) {
        o.put("rule", n.rule());
        n.needs().forEach(o.putArray("needs")::add);
        o.put("forbids", n.forbids().id());
        if (!n.cause().isEmpty()) {
            o.put("cause", n.cause());
        }
    }

    private static void finding(ObjectNode o, Finding f) {
        o.put("rule", f.rule())
                .put("severity", f.severity().id())
                .put("forbids", f.forbids().id());
        f.parts().forEach(o.putArray("parts")::add);
        measure(o, "measured", f.measured());
        measure(o, "limit", f.limit());
        o.put("message", f.message()).put("remedy", f.remedy());
        Source s = f.source();
        o.putObject("source")
                .put("title", s.title())
                .put("edition", s.edition())
                .put("place", s.place())
                .put("standing", s.standing().id());
        o.put("limitSetByUser", f.limitSetByUser());
    }

    private static void measure(ObjectNode o, String name, Measure m) {
        if (m == null) {
            o.putNull(name);
        } else {
            Json.number(o.putObject(name), "value", m.value()).put("unit", m.unit());
        }
    }

    private static void figures(ObjectNode o, Figures f) {
        ObjectNode all = new ObjectMapper().valueToTree(f);
        all.properties()
                .forEach(e -> Json.number(
                        o,
                        e.getKey(),
                        e.getValue().isNull() ? null : e.getValue().asDouble()));
    }
}
