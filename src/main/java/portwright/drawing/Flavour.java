package portwright.drawing;

/** Paper is black only and names everything; the screen has colour and keeps long words in its side panel. */
public enum Flavour {
    PAPER,
    SCREEN
}
