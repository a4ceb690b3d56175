package portwright.layout;

import portwright.model.On;
import portwright.units.Format;

/**
 * What the potter asks for; null leaves the choice open.
 *
 * @param inlets number of floor inlets
 * @param flues number of lid flues
 * @param inletMm diameter of the inlets, mm
 * @param flueMm diameter of the flues, mm
 * @param inletsOn floor or wall; null: where the design has them, else the floor, the wall where the floor has no place, and behind the floor where that is not safe from a wandering drill
 */
public record Wishes(Integer inlets, Integer flues, Double inletMm, Double flueMm, On inletsOn) {
    /** Most holes of one role that are placed. */
    public static final int MOST = 16;

    public Wishes {
        count(inlets, "inlets");
        count(flues, "flues");
        size(inletMm, "inlet");
        size(flueMm, "flue");
        if (inletsOn == On.LID) {
            throw new IllegalArgumentException("Inlets in the lid are not proposed: ask for floor or wall.");
        }
    }

    /** Inlets wherever they suit. */
    public Wishes(Integer inlets, Integer flues, Double inletMm, Double flueMm) {
        this(inlets, flues, inletMm, flueMm, null);
    }

    /** Everything open. */
    public static Wishes none() {
        return new Wishes(null, null, null, null);
    }

    private static void count(Integer n, String what) {
        if (n != null && (n < 1 || n > MOST)) {
            throw new IllegalArgumentException(n + " " + what + ": ask for 1 to " + MOST + ".");
        }
    }

    private static void size(Double mm, String what) {
        if (mm != null && !(mm >= 5 && mm <= 200)) {
            throw new IllegalArgumentException(
                    "A hole of " + Format.plain(mm, 1) + " mm as " + what + ": ask for 5 mm to 200 mm.");
        }
    }
}
