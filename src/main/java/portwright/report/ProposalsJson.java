package portwright.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import portwright.check.Severity;
import portwright.layout.CutJoint;
import portwright.layout.DrillOutlook;
import portwright.layout.OwnLayout;
import portwright.layout.Proposal;
import portwright.layout.Proposals;
import portwright.layout.Term;
import portwright.model.Port;

/** What a search for places found as one JSON object; lengths in mm, shares from 0 to 1. */
public final class ProposalsJson {
    private ProposalsJson() {}

    /**
     * Pretty-printed object with a final newline; numbers that do not exist are null.
     *
     * @param written number of the proposal that was written, from 1; null where none was
     * @param missWritten whether the nearest miss was written
     */
    public static String write(Proposals found, Integer written, boolean missWritten) {
        ObjectNode root = Json.object();
        root.put("portwright", 1).put("written", written);
        OwnLayout own = found.own();
        if (own == null) {
            root.putNull("own");
        } else {
            ObjectNode o = root.putObject("own").put("margin", own.margin());
            Json.number(o, "lambdaLow", own.lambdaLow());
            term(o.putObject("limiting"), own.limiting());
            own.stops().forEach(o.putArray("stops")::add);
            o.putArray("notChecked");
            own.unknown()
                    .all()
                    .forEach(n -> CheckJson.notChecked(o.withArray("notChecked").addObject(), n));
        }
        root.putArray("proposals");
        for (Proposal p : found.best()) {
            ObjectNode o = root.withArray("proposals").addObject();
            proposal(o, p);
            o.put("besideOwn", found.besideOwn(p));
            CheckJson.allInside(o, DrillOutlook.oddsAlone(p.design(), p.check()));
        }
        if (found.widest() == null) {
            root.putNull("widest");
        } else {
            root.putObject("widest")
                    .put("arrangement", found.widest().arrangement())
                    .put("margin", found.widest().margin());
        }
        root.putArray("impossible");
        found.impossible()
                .forEach(i -> root.withArray("impossible")
                        .addObject()
                        .put("rule", i.rule())
                        .put("alone", i.alone())
                        .put("message", i.words()));
        if (found.nearestMiss() == null) {
            root.putNull("nearestMiss");
        } else {
            proposal(root.putObject("nearestMiss").put("written", missWritten), found.nearestMiss());
            found.misses().forEach(root.withObject("/nearestMiss").withArray("misses")::add);
        }
        return Json.text(Json.codes(root.put("tried", found.tried()).put("few", found.few())));
    }

    private static void proposal(ObjectNode o, Proposal p) {
        o.put("arrangement", p.arrangement()).put("margin", p.margin());
        Json.number(o, "lambdaLow", p.lambdaLow());
        term(o.putObject("limiting"), p.limiting());
        o.put("reason", p.reason());
        o.putObject("verdict")
                .put("drilling", p.check().drilling().id())
                .put("lighting", p.check().lighting().id());
        o.putArray("findings");
        p.check().findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .forEach(f -> o.withArray("findings")
                        .addObject()
                        .put("rule", f.rule())
                        .put("severity", f.severity().id())
                        .put("message", f.message()));
        o.putArray("ports");
        for (Port port : p.ports()) {
            o.withArray("ports")
                    .addObject()
                    .put("name", port.name())
                    .put("role", port.role().id())
                    .put("on", port.on().id())
                    .put("panel", port.panel())
                    .put("diameterMm", port.diameter().mm())
                    .put("xMm", port.at().xMm())
                    .put("yMm", port.at().yMm());
        }
        o.putArray("cutsJoints");
        for (CutJoint c : CutJoint.of(p.design())) {
            o.withArray("cutsJoints")
                    .addObject()
                    .put("hole", c.hole())
                    .put("bricksAt", c.sides())
                    .put("overMm", c.overMm())
                    .put("stated", c.stated());
        }
    }

    private static void term(ObjectNode o, Term t) {
        o.put("rule", t.rule());
        t.parts().forEach(o.putArray("parts")::add);
        Json.number(o, "measured", t.measured());
        Json.number(o, "stop", t.stop());
        Json.number(o, "caution", t.caution());
        o.put("unit", t.unit());
    }
}
