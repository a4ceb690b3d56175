package portwright.drawing;

/** Colour by meaning. Paper prints every ink black but {@link #PAPER} (white) and {@link #SHADE} (grey 7 %); area inks are left out there. */
public enum Ink {
    INK(false),
    INK2(false),
    EDGE(false),
    HAIR(false),
    COBALT(false),
    UMBER(false),
    EMBER(false),
    OXBLOOD(false),
    RUTILE(false),
    CELADON(false),
    BOXINK(false),
    /** The ground: white on paper. */
    PAPER(false),
    SHADE(false),
    BRICK(true),
    BISQUE(true),
    FLAME(true),
    COBALT_FILL(true),
    OXBLOOD_FILL(true),
    RUTILE_FILL(true),
    CELADON_FILL(true),
    BOXWOOD(true);

    private final boolean screenOnly;

    Ink(boolean screenOnly) {
        this.screenOnly = screenOnly;
    }

    /** Whether it is an area colour that paper leaves out. */
    public boolean screenOnly() {
        return screenOnly;
    }
}
