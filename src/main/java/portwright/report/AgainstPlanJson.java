package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import portwright.review.AgainstPlan;

/** What a record tells against its plan, as JSON. */
final class AgainstPlanJson {
    private AgainstPlanJson() {}

    /** Adds them to the object of a record. */
    static void write(ObjectNode o, AgainstPlan p) {
        ArrayNode slow = o.putArray("slowerThanAsked");
        p.slow().forEach(s -> {
            ObjectNode n = slow.addObject().put("index", s.index());
            Json.number(n, "climbKPerH", s.climbKPerS() * 3600);
            Json.number(n, "askedKPerH", s.askedKPerS() * 3600);
        });
        ArrayNode off = o.putArray("offForecast");
        p.off()
                .forEach(f -> f.steps().forEach(c -> {
                    ObjectNode n = off.addObject().put("index", c.index()).put("fast", f.fast());
                    Json.number(n, "climbKPerH", c.climbKPerS() * 3600);
                    Json.number(n, "forecastKPerH", c.forecastKPerS() * 3600);
                }));
        p.lit().ifPresent(l -> {
            Json.number(o, "gasLitLateMinutes", l.lateS() / 60);
            Json.number(o, "gasLitC", l.kelvin() - ZERO_C);
        });
        ArrayNode notes = o.putArray("notes");
        PlanNotes.cautions(p).forEach(notes::add);
        PlanNotes.words(p).forEach(notes::add);
    }
}
