package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/** Inside plan of the chamber, hot face to hot face. {@code turn} is clockwise seen from above; 0: a panel faces the back. */
public sealed interface PlanShape {
    /** Regular polygon. */
    record PolygonPlan(int sides, Quantity acrossFlats, Quantity turn) implements PlanShape {}

    /** Rectangle: width along x, depth along y; panels 1 back, 2 right, 3 front, 4 left. */
    record RectanglePlan(Quantity width, Quantity depth, Quantity turn) implements PlanShape {}

    /** Even-sided polygon cut through the middle of panel 1 and of panel n/2+1, which grow by {@code stretch} along x. */
    record OvalPlan(int sides, Quantity acrossFlats, Quantity stretch, Quantity turn) implements PlanShape {}

    /** Free outline, points clockwise seen from above; panel 1 from point 1 to point 2. */
    record OutlinePlan(List<Place> points) implements PlanShape {}
}
