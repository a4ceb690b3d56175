package portwright.drawing;

import portwright.units.Format;
import portwright.units.Inches;

/**
 * How much a painter shows.
 *
 * @param plan a small plan: outlines and numbers, no hatching, no words
 * @param awlDots the 3 mm dots that are pricked through; none on sheets that must not be drilled from
 * @param keepOutMm sound brick to keep round a drilled hole, mm
 * @param inch whether distances are written in inches, as on a screen; on paper they are in mm
 */
public record PartLook(boolean plan, boolean awlDots, double keepOutMm, boolean inch) {
    /** Distances in mm. */
    public PartLook(boolean plan, boolean awlDots, double keepOutMm) {
        this(plan, awlDots, keepOutMm, false);
    }

    /** Full size with everything. */
    public static PartLook full(double keepOutMm) {
        return new PartLook(false, true, keepOutMm);
    }

    /** Small plan. */
    public static PartLook small() {
        return new PartLook(true, false, 0);
    }

    /** A distance with its unit. */
    String distance(double mm) {
        return inch ? Inches.told(mm) : Format.plain(mm, 1) + " mm";
    }
}
