package portwright.app.step;

import java.util.List;
import portwright.sheet.SheetOptions;

/** The faces of the parts that are printed, in the words of the board. */
final class FaceWords {
    /** What inner and outer faces are, where all parts are printed. */
    static final String ALL =
            "Inner: floor from above, lid from below, walls from inside. Outer: floor from below, lid from above, walls from outside.";

    private FaceWords() {}

    /** Both faces, the one at the chamber, the one outside. */
    static List<String> of(SheetOptions.Part part) {
        return switch (part) {
            case FLOOR -> List.of("both", "from above", "from below");
            case LID -> List.of("both", "from below", "from above");
            case WALL -> List.of("both", "from inside", "from outside");
            default -> List.of("both", "inner faces", "outer faces");
        };
    }
}
