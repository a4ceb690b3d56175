package portwright.sheet;

import java.util.List;
import portwright.model.On;
import portwright.units.Format;

/**
 * What to print.
 *
 * @param part which parts: floor, lid, wall or all
 * @param face which faces: hot, cold, both, or the one that each part is drilled from
 * @param scaleX wanted over printed length across, to correct a printer that is off; 1 where it is right
 * @param scaleY the same down the page
 * @param despiteStops print although a stop forbids drilling: every page struck through, no awl dots
 * @param unmeasured how many values of the kiln are known to be a starter's still; 0 where that is not known
 */
public record SheetOptions(
        Paper paper, Part part, Side face, double scaleX, double scaleY, boolean despiteStops, int unmeasured) {
    /** A printer that is further off is not corrected: its error is hardly the same all over the page. */
    public static final double LARGEST_CORRECTION = 0.015;

    private static final double ROUNDING = 1e-9;

    /** Parts to print. */
    public enum Part {
        FLOOR,
        LID,
        WALL,
        ALL
    }

    /** Faces to print. {@code DRILLED} is the one face of each part that a hole is begun from: a wall's inside, of floor and lid the outside. */
    public enum Side {
        HOT,
        COLD,
        BOTH,
        DRILLED;

        List<Boolean> hot(On on) {
            return switch (this) {
                case HOT -> List.of(true);
                case COLD -> List.of(false);
                case BOTH -> List.of(true, false);
                case DRILLED -> List.of(on == On.WALL);
            };
        }
    }

    public SheetOptions {
        correction("--scale-x", scaleX);
        correction("--scale-y", scaleY);
    }

    public SheetOptions(Paper paper, Part part, Side face, double scaleX, double scaleY, boolean despiteStops) {
        this(paper, part, face, scaleX, scaleY, despiteStops, 0);
    }

    /** All parts, both faces, no correction. */
    public static SheetOptions plain(Paper paper) {
        return new SheetOptions(paper, Part.ALL, Side.BOTH, 1, 1, false);
    }

    private static void correction(String name, double factor) {
        if (!Double.isFinite(factor) || Math.abs(factor - 1) > LARGEST_CORRECTION + ROUNDING) {
            throw new IllegalArgumentException(
                    name + " " + factor
                            + " corrects more than 1.5 %. A printer that far off scales or slips on the way: "
                            + "set it to 100 % (no fit to page), mend that first, then measure again. Write a factor from 0.985 to 1.015: true length over printed length.");
        }
    }

    boolean corrected() {
        return scaleX != 1 || scaleY != 1;
    }

    String correctionWords() {
        return "corrected × " + Format.plain(scaleX, 4) + " across, × " + Format.plain(scaleY, 4) + " down";
    }
}
