package portwright.app.step;

import java.util.List;
import portwright.app.doc.PaperChoice;
import portwright.sheet.SheetOptions;

/** The faces of the parts that are printed, in the words of the board. */
final class FaceWords {
    /** As they can be chosen, in this order. */
    static final List<SheetOptions.Side> SIDES =
            List.of(SheetOptions.Side.DRILLED, SheetOptions.Side.BOTH, SheetOptions.Side.HOT, SheetOptions.Side.COLD);

    private FaceWords() {}

    /** The faces of a part in the order of {@link #SIDES}. */
    static List<String> of(SheetOptions.Part part) {
        return SIDES.stream().map(side -> PaperChoice.faceWords(part, side)).toList();
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
