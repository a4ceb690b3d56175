package portwright.geometry;

import java.util.List;
import portwright.model.Design;

/** The kiln's shapes, made once from a design. All in mm in the file's unmirrored frame. */
public final class KilnGeometry {
    private final Design design;

    private KilnGeometry(Design design) {
        this.design = design;
    }

    /** Builds the shapes. */
    public static KilnGeometry of(Design design) {
        return new KilnGeometry(design);
    }

    /** The design it was made from. */
    public Design design() {
        return design;
    }

    /** Inner outline of the chamber (hot face of the walls). */
    public Outline inner() {
        throw new UnsupportedOperationException();
    }

    /** Outside of the walls. */
    public Outline wallOuter() {
        throw new UnsupportedOperationException();
    }

    /** Rim of the floor or lid slab. */
    public Outline slab(portwright.model.On on) {
        throw new UnsupportedOperationException();
    }

    /** Wall panels in order. */
    public List<Panel> panels() {
        throw new UnsupportedOperationException();
    }

    /** Proposed holes in file order. */
    public List<Hole> holes() {
        throw new UnsupportedOperationException();
    }
}
