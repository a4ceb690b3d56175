package portwright.review;

import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.On;
import portwright.model.Shelf;
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
        List<Shelf> shelves = design.shelves();
        for (int i = 0; shelves != null && i < shelves.size(); i++) {
            if (shelves.get(i).at() == null) {
                assume.add("shelves[" + i + "].at", "0 in, 0 in", "a shelf set in the middle of the chamber");
            }
        }
    }

    private static void slab(Slab slab, String field, Assumptions assume) {
        if (slab.overhang() == null) {
            assume.add(field + ".overhang", "0 in", "a slab flush with the outside of the wall");
        }
        if (slab.joints() != null && slab.joints().bond() == null) {
            assume.add(field + ".joints.bond", "half", "rows shifted by half a brick");
        }
        if (slab.joints() != null && slab.joints().offset() == null) {
            assume.add(field + ".joints.offset", "0 in, 0 in", "a joint crossing in the middle; measure one joint");
        }
    }
}
