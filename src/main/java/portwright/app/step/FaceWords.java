package portwright.app.step;

import java.util.List;
import portwright.app.doc.PaperChoice;
import portwright.sheet.SheetOptions;

/** The faces of the parts that are printed, in the words of the board. */
final class FaceWords {
    private static final String DRILLED = "to drill from";
    private static final String BOTH = "both";

    private FaceWords() {}

    /** The one that is drilled from, both, the one at the chamber, the one outside. */
    static List<String> of(SheetOptions.Part part) {
        return switch (part) {
            case FLOOR -> List.of(DRILLED, BOTH, "from above", "from below");
            case LID -> List.of(DRILLED, BOTH, "from below", "from above");
            case WALL -> List.of(DRILLED, BOTH, "from inside", "from outside");
            default -> List.of(DRILLED, BOTH, "inner faces", "outer faces");
        };
    }

    /** Which faces the words stand for, where they do not say it; else empty. */
    static String remark(PaperChoice choice) {
        if (choice.face() == SheetOptions.Side.DRILLED) {
            return switch (choice.part()) {
                case FLOOR -> "The floor from below: tape it under the kiln.";
                case LID -> "The lid from above.";
                case WALL -> "Walls from inside: the pilot is bored from there.";
                default ->
                    "One face of each part with holes: floor from below, lid from above, walls from inside. It is all that drilling needs.";
            };
        }
        return choice.part() == SheetOptions.Part.ALL
                ? "Inner: floor from above, lid from below, walls from inside. Outer: floor from below, lid from above, walls from outside."
                : "";
    }
}
