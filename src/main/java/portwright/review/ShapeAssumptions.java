package portwright.review;

import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Slab;

/** Lists the measures that the shapes take where a design gives none. */
final class ShapeAssumptions {
    private ShapeAssumptions() {}

    static void list(Design design, Assumptions assume) {
        if (design.drilling() == null || design.drilling().oversize() == null) {
            assume.add(
                    "drilling.oversize",
                    (long) KilnGeometry.USUAL_OVERSIZE_MM + " mm",
                    "what a hole drilled by hand in soft brick grows");
        }
        if (turnable(design.kiln().plan())) {
            assume.add("kiln.plan.turn", "0 deg", "a panel that faces the back");
        }
        slab(design.kiln().floor(), "kiln.floor", assume);
        slab(design.kiln().lid(), "kiln.lid", assume);
        List<ElementRun> elements = design.kiln().elements();
        for (int i = 0; elements != null && i < elements.size(); i++) {
            ElementRun e = elements.get(i);
            if (e.on() == On.WALL && e.groove() != null && e.groove().slope() == null) {
                assume.add(
                        "kiln.elements[" + i + "].groove.slope",
                        "0 deg",
                        "a groove cut straight in; measure it where a port comes near");
            }
        }
        List<Fitting> fittings = design.kiln().fittings();
        for (int i = 0; fittings != null && i < fittings.size(); i++) {
            Fitting f = fittings.get(i);
            if (f.size() != null
                    && f.turn() == null
                    && f.size().width().mm() != f.size().depth().mm()) {
                assume.add(
                        "kiln.fittings[" + i + "].turn",
                        "0 deg",
                        "the first side of " + f.name()
                                + " lies left to right; measure how it lies where a hole comes near");
            }
        }
        List<Shelf> shelves = design.shelves();
        for (int i = 0; shelves != null && i < shelves.size(); i++) {
            if (shelves.get(i).at() == null) {
                assume.add("shelves[" + i + "].at", "0 in, 0 in", "a shelf set in the middle of the chamber");
            }
            if (shelves.get(i).turn() == null
                    && (shelves.get(i).shape() == ShelfShape.POLYGON
                            || shelves.get(i).shape() == ShelfShape.RECTANGLE)) {
                assume.add("shelves[" + i + "].turn", "0 deg", "a shelf whose side faces the back");
            }
        }
    }

    private static boolean turnable(PlanShape plan) {
        return plan instanceof PlanShape.PolygonPlan p && p.turn() == null
                || plan instanceof PlanShape.RectanglePlan r && r.turn() == null
                || plan instanceof PlanShape.OvalPlan o && o.turn() == null;
    }

    private static void slab(Slab slab, String field, Assumptions assume) {
        if (slab.overhang() == null) {
            assume.add(field + ".overhang", "0 in", "a slab flush with the outside of the wall");
        }
        if (slab.joints() != null && slab.joints().bond() == null) {
            assume.add(field + ".joints.bond", "half", "rows shifted by half a brick");
        }
        if (slab.joints() != null && slab.joints().turn() == null) {
            assume.add(field + ".joints.turn", "0 deg", "rows that run from left to right");
        }
        if (slab.joints() != null && slab.joints().offset() == null) {
            assume.add(field + ".joints.offset", "0 in, 0 in", "a joint crossing in the middle; measure one joint");
        }
    }
}
