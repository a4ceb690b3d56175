package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/**
 * The kiln. {@code elements} and {@code fittings}: null unknown, empty none. {@code standHeight}: ground to the underside of the floor.
 * {@code elementRise}: how much the elements' resistance has risen over new; null: new.
 */
public record Kiln(
        PlanShape plan,
        Quantity height,
        Wall wall,
        Slab floor,
        Slab lid,
        Quantity leakArea,
        List<ElementRun> elements,
        List<Fitting> fittings,
        Quantity standHeight,
        Quantity power,
        Double lossFactor,
        Quantity elementRise) {
    /** A kiln with new elements. */
    public Kiln(
            PlanShape plan,
            Quantity height,
            Wall wall,
            Slab floor,
            Slab lid,
            Quantity leakArea,
            List<ElementRun> elements,
            List<Fitting> fittings,
            Quantity standHeight,
            Quantity power,
            Double lossFactor) {
        this(plan, height, wall, floor, lid, leakArea, elements, fittings, standHeight, power, lossFactor, null);
    }
}
