package portwright.drawing;

/**
 * How much a painter shows.
 *
 * @param plan a small plan: outlines and numbers, no hatching, no words
 * @param awlDots the 3 mm dots that are pricked through; none on sheets that must not be drilled from
 * @param keepOutMm sound brick to keep round a drilled hole, mm
 */
public record PartLook(boolean plan, boolean awlDots, double keepOutMm) {
    /** Full size with everything. */
    public static PartLook full(double keepOutMm) {
        return new PartLook(false, true, keepOutMm);
    }

    /** Small plan. */
    public static PartLook small() {
        return new PartLook(true, false, 0);
    }

    public PartLook withoutAwlDots() {
        return new PartLook(plan, false, keepOutMm);
    }
}
