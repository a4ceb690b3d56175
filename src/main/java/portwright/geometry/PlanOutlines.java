package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.PlanShape.OutlinePlan;
import portwright.model.PlanShape.OvalPlan;
import portwright.model.PlanShape.PolygonPlan;
import portwright.model.PlanShape.RectanglePlan;
import portwright.units.Quantity;

/** Inner outline of each plan shape; edge k is panel k. */
final class PlanOutlines {
    private PlanOutlines() {}

    static Outline inner(PlanShape plan) {
        if (plan instanceof PolygonPlan p) {
            return regular(p.sides(), p.acrossFlats().mm(), 0, angle(p.turn()));
        }
        if (plan instanceof OvalPlan o) {
            return regular(
                    o.sides(),
                    o.acrossFlats().mm(),
                    o.stretch() == null ? 0 : o.stretch().mm(),
                    angle(o.turn()));
        }
        if (plan instanceof RectanglePlan r) {
            return rectangle(new Pt(0, 0), r.width().mm(), r.depth().mm(), angle(r.turn()));
        }
        return new Outline(
                ((OutlinePlan) plan).points().stream().map(PlanOutlines::pt).toList());
    }

    /** A regular polygon with the middle of edge 1 at the back, its halves moved apart by {@code stretch} along x, then turned. */
    static Outline regular(int sides, double acrossFlats, double stretch, double turn) {
        double half = Math.PI / sides;
        double radius = acrossFlats / 2 / Math.cos(half);
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            double bearing = (2 * i - 1) * half;
            double x = radius * Math.sin(bearing);
            boolean right = i >= 1 && i <= sides / 2;
            out.add(new Pt(x + (right ? stretch / 2 : -stretch / 2), radius * Math.cos(bearing)).turned(turn));
        }
        return new Outline(out);
    }

    /** A rectangle round a centre; edges back, right, front, left before turning. */
    static Outline rectangle(Pt centre, double width, double depth, double turn) {
        List<Pt> out = new ArrayList<>();
        for (Pt p : List.of(
                new Pt(-width / 2, depth / 2),
                new Pt(width / 2, depth / 2),
                new Pt(width / 2, -depth / 2),
                new Pt(-width / 2, -depth / 2))) {
            Pt t = p.turned(turn);
            out.add(centre.plus(t.x(), t.y()));
        }
        return new Outline(out);
    }

    static double angle(Quantity turn) {
        return turn == null ? 0 : turn.si();
    }

    static Pt pt(Place place) {
        return new Pt(place.xMm(), place.yMm());
    }
}
