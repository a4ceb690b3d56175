package portwright.file;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Design;
import portwright.model.Place;
import portwright.model.PlanOutline;
import portwright.model.Shelf;
import portwright.units.Format;

/** Shelves fit into the chamber without meeting the wall, the lid or the floor. */
final class ShelfChecks {
    private static final int ARC_STEPS = 720;

    private ShelfChecks() {}

    static void run(Design d, PlanOutline inner, Faults faults) {
        for (int i = 0; i < CrossChecks.size(d.shelves(), "shelves", faults); i++) {
            Shelf s = d.shelves().get(i);
            String path = "shelves[" + i + "]";
            height(d, s, path, faults);
            plan(s, inner, path, faults);
            for (int k = 0; k < CrossChecks.size(s.posts(), path + ".posts", faults); k++) {
                Place p = s.posts().get(k);
                if (!inner.contains(p.xMm(), p.yMm())) {
                    faults.at(FieldPath.item(path + ".posts", k), "the post stands outside the chamber.");
                }
            }
        }
    }

    private static void height(Design d, Shelf s, String path, Faults faults) {
        if (s.height() == null || d.kiln().height() == null) {
            return;
        }
        double top =
                s.height().mm() + (s.thickness() == null ? 0 : s.thickness().mm());
        if (top > d.kiln().height().mm()) {
            faults.at(
                    path + ".height",
                    "the shelf ends " + Format.plain(top, 1) + " mm above the floor, but the chamber is only "
                            + Format.plain(d.kiln().height().mm(), 1) + " mm high.");
        }
    }

    private static void plan(Shelf s, PlanOutline inner, String path, Faults faults) {
        if (s.shape() == null) {
            return;
        }
        double x = s.at() == null ? 0 : s.at().xMm();
        double y = s.at() == null ? 0 : s.at().yMm();
        boolean fits = switch (s.shape()) {
            case ROUND ->
                s.diameter() == null
                        || inner.contains(x, y)
                                && inner.distanceToRim(x, y) > s.diameter().mm() / 2;
            case HALF ->
                s.diameter() == null
                        || s.turn() == null
                        || inner.holds(
                                half(s.diameter().mm() / 2, s.turn().si()).moved(x, y));
            case POLYGON ->
                s.sides() == null
                        || s.acrossFlats() == null
                        || inner.holds(
                                PlanOutline.regular(s.sides(), s.acrossFlats().mm(), 0, turn(s))
                                        .moved(x, y));
            case RECTANGLE ->
                s.width() == null
                        || s.depth() == null
                        || inner.holds(rectangle(s.width().mm() / 2, s.depth().mm() / 2)
                                .turned(turn(s))
                                .moved(x, y));
        };
        if (!fits) {
            faults.at(
                    s.at() == null ? path : path + ".at",
                    "the shelf \"" + s.name()
                            + "\" meets the wall. Make it smaller or move it inward: flame needs the gap round it.");
        }
    }

    private static double turn(Shelf s) {
        return s.turn() == null ? 0 : s.turn().si();
    }

    private static PlanOutline rectangle(double w, double d) {
        return PlanOutline.of(new double[] {-w, w, w, -w}, new double[] {d, d, -d, -d});
    }

    /** Half a disc whose round side looks to the bearing, its arc by points half a degree apart or closer. */
    private static PlanOutline half(double radius, double bearing) {
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k <= ARC_STEPS; k++) {
            double b = bearing - Math.PI / 2 + Math.PI * k / ARC_STEPS;
            points.add(new double[] {radius * Math.sin(b), radius * Math.cos(b)});
        }
        return PlanOutline.of(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }
}
