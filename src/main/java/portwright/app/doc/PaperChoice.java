package portwright.app.doc;

import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import portwright.model.UnitSystem;
import portwright.sheet.Paper;
import portwright.sheet.SheetOptions;

/**
 * What is printed on: paper, parts, faces. Kept in the user's folder from one start to the next.
 *
 * @param paper its name; empty where nobody has chosen one: then that of the design's units
 */
public record PaperChoice(String paper, SheetOptions.Part part, SheetOptions.Side face) {
    /** What nobody has chosen yet: of every part with holes the face that it is drilled from, no sheet more than the work needs. */
    public static final PaperChoice USUAL = new PaperChoice("a4", SheetOptions.Part.ALL, SheetOptions.Side.DRILLED);

    private static final String LETTER = "letter";
    private static final String PAPER = "paper";
    private static final String PART = "paper.parts";
    private static final String FACE = "paper.faces";

    /** What was chosen last; what cannot be read is the usual. */
    public static PaperChoice of(HomeFolder home) {
        Properties p = home.settings();
        return new PaperChoice(
                p.containsKey(PAPER) ? paper(p.getProperty(PAPER)) : "",
                word(SheetOptions.Part.values(), p.getProperty(PART), USUAL.part()),
                word(SheetOptions.Side.values(), p.getProperty(FACE), USUAL.face()));
    }

    private static String paper(String name) {
        try {
            return Paper.parse(name).name();
        } catch (IllegalArgumentException e) {
            return USUAL.paper();
        }
    }

    private static <E extends Enum<E>> E word(E[] all, String name, E usual) {
        return Arrays.stream(all).filter(e -> e.name().equals(name)).findFirst().orElse(usual);
    }

    /** With the paper that is usual where a design is measured in these units, unless one was chosen. */
    PaperChoice of(UnitSystem units) {
        return paper.isEmpty() ? new PaperChoice(units == UnitSystem.INCH ? LETTER : USUAL.paper(), part, face) : this;
    }

    /** Part and faces as the beginning of a file's name, with a hyphen behind each; empty for the usual. */
    public String stem() {
        return (part == SheetOptions.Part.ALL ? "" : part.name().toLowerCase(Locale.ROOT) + "-")
                + (face == USUAL.face
                        ? ""
                        : faceWords(part, face).replace(' ', '-') + (face == SheetOptions.Side.BOTH ? "-faces-" : "-"));
    }

    /** A face of the part in the words of the board; of all parts, which faces. */
    public static String faceWords(SheetOptions.Part part, SheetOptions.Side face) {
        boolean hot = face == SheetOptions.Side.HOT;
        return switch (face) {
            case DRILLED -> "to drill from";
            case BOTH -> "both";
            default ->
                switch (part) {
                    case FLOOR -> hot ? "from above" : "from below";
                    case LID -> hot ? "from below" : "from above";
                    case WALL -> hot ? "from inside" : "from outside";
                    default -> hot ? "inner faces" : "outer faces";
                };
        };
    }

    /** Keeps it for the next start. */
    public void keep(HomeFolder home) {
        if (!equals(of(home))) {
            if (!paper.isEmpty()) {
                home.set(PAPER, paper);
            }
            home.set(PART, part.name());
            home.set(FACE, face.name());
        }
    }
}
