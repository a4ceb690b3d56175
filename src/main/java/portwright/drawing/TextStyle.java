package portwright.drawing;

/**
 * How words look.
 *
 * @param px size on screen
 * @param mm size on paper
 * @param halo a rim of the ground round the letters, so that lines under them do not hide them
 */
public record TextStyle(Face face, double px, double mm, Ink ink, boolean halo) {
    /** Type faces; all DejaVu. */
    public enum Face {
        SANS,
        SANS_BOLD,
        SERIF_BOLD
    }

    public static final TextStyle LABEL = new TextStyle(Face.SANS, 13, 3.4, Ink.INK, true);
    public static final TextStyle LABEL_BOLD = new TextStyle(Face.SANS_BOLD, 13, 3.4, Ink.INK, true);
    public static final TextStyle SMALL = new TextStyle(Face.SANS, 12.5, 3.0, Ink.INK2, true);
    public static final TextStyle BAR = new TextStyle(Face.SANS, 12.5, 2.8, Ink.INK, false);
    public static final TextStyle BAR_BOLD = new TextStyle(Face.SANS_BOLD, 12.5, 2.8, Ink.INK, false);
    public static final TextStyle PLAIN = new TextStyle(Face.SANS, 13, 3.4, Ink.INK, false);
    public static final TextStyle BOLD = new TextStyle(Face.SANS_BOLD, 13, 3.4, Ink.INK, false);
    public static final TextStyle NAME = new TextStyle(Face.SANS_BOLD, 14.5, 4.6, Ink.INK, false);
    public static final TextStyle TAPE = new TextStyle(Face.SANS_BOLD, 13, 4.6, Ink.INK, false);

    public TextStyle withInk(Ink other) {
        return new TextStyle(face, px, mm, other, halo);
    }

    public TextStyle size(double newPx, double newMm) {
        return new TextStyle(face, newPx, newMm, ink, halo);
    }

    public TextStyle plainGround() {
        return new TextStyle(face, px, mm, ink, false);
    }
}
