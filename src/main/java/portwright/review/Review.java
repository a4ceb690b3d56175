package portwright.review;

import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;

/**
 * All figures of a design. Sections are null where the design does not allow them; each section's class says what it needs.
 *
 * @param geometry shapes of the kiln
 */
public record Review(Design design, KilnGeometry geometry, List<Assumed> assumed) {
    /** Runs every calculation. */
    public static Review of(Design design) {
        return new Review(design, KilnGeometry.of(design), List.of());
    }
}
