package portwright.layout;

import portwright.check.LimitsInForce;
import portwright.data.LimitTable;
import portwright.geometry.Flame;
import portwright.model.Design;
import portwright.model.Fitting;

/** Limits of the geometry rules as numbers, the design's own in their place. mm unless named otherwise. */
final class LayoutLimits {
    /** Clear width that a hole keeps from the chamber's wall line for a margin of 1; beyond what the rule asks. Judgement: a few times a drill's wander. */
    static final double INSIDE_MM = 10;
    /** How fast the flame's envelope widens. */
    static final double FLAME_TAN = Math.tan(Flame.HALF_ANGLE);

    private final LimitsInForce inForce;

    LayoutLimits(Design design, LimitTable table) {
        inForce = new LimitsInForce(table, design);
    }

    /** The design's own limit, else the table's, as the rule has it. */
    double value(String rule, String name) {
        return inForce.value(rule, name);
    }

    double elementStop() {
        return value("element-clearance", "limit");
    }

    double elementCaution() {
        return value("element-clearance", "caution-factor") * elementStop();
    }

    /** Clearance that a fitting asks: its own, else its kind's. */
    double fitting(Fitting f) {
        return f.clear() != null
                ? f.clear().mm()
                : value("fitting-clearance", f.kind().id());
    }
}
