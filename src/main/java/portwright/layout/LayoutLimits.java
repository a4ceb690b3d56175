package portwright.layout;

import java.util.Map;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.UserLimit;

/** Limits of the geometry rules as numbers, the design's own in their place. mm unless named otherwise. */
final class LayoutLimits {
    /** Clear width that a hole keeps from the chamber's wall line for a margin of 1; beyond what the rule asks. Judgement: a few times a drill's wander. */
    static final double INSIDE_MM = 10;
    /** Half angle of the flame's envelope: free jet, 11° (flame research, free-jet measurements). */
    static final double FLAME_TAN = Math.tan(Math.toRadians(11));

    private final LimitTable table;
    private final Map<String, Map<String, UserLimit>> own;

    LayoutLimits(Design design, LimitTable table) {
        this.table = table;
        this.own = design.limits() == null ? Map.of() : design.limits();
    }

    /** The design's own limit, else the table's, else the rule book's as printed here. */
    double value(String rule, String name, double printed) {
        Map<String, UserLimit> mine = own.getOrDefault(rule, Map.of());
        if (mine.containsKey(name)) {
            return mine.get(name).value();
        }
        return table.find(rule, name).map(r -> r.value()).orElse(printed);
    }

    double elementStop() {
        return value("element-clearance", "limit", 25);
    }

    double elementCaution() {
        return value("element-clearance", "caution-factor", 1.4) * elementStop();
    }

    /** Clearance that a fitting asks: its own, else its kind's. */
    double fitting(Fitting f) {
        return f.clear() != null
                ? f.clear().mm()
                : value("fitting-clearance", f.kind().id(), fitting(f.kind()));
    }

    /** Clearance of a fitting's kind: judgement of the rule book. */
    static double fitting(FittingKind kind) {
        return switch (kind) {
            case THERMOCOUPLE, SPYHOLE, HINGE, LATCH, VENT -> 50;
            case HANDLE -> 100;
            case TERMINALS -> 75;
            case CONTROL_BOX -> 150;
            default -> 25;
        };
    }
}
