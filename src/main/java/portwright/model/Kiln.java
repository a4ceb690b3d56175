package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/**
 * The kiln. {@code elements} and {@code fittings}: null unknown, empty none. {@code standHeight}: ground to the underside of the floor.
 * {@code elementRise}: how much the elements' resistance has risen over new; null: new. {@code fittingsComplete}: whether the list of fittings
 * holds all there are; null: not stated.
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
        Quantity elementRise,
        Boolean fittingsComplete) {

    /** Whether it is known to have no elements: then nothing heats it by electricity, whatever power is stated. */
    public boolean noElements() {
        return elements != null && elements.isEmpty();
    }

    /** Electric heat at full, W: 0 without elements, else the stated power; null where that is not stated. */
    public Double electricW() {
        return noElements() ? Double.valueOf(0) : power == null ? null : Double.valueOf(power.si());
    }

    /** Whether fittings may be there that no list names. */
    public boolean fittingsOpen() {
        return fittings == null || Boolean.FALSE.equals(fittingsComplete);
    }

    /** A kiln with new elements, whose fittings are all listed. */
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
        this(plan, height, wall, floor, lid, leakArea, elements, fittings, standHeight, power, lossFactor, null, true);
    }
}
