package portwright.sheet;

/** The sheets are not printed, and why. */
public final class SheetRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String inWindow;

    public SheetRefused(String message) {
        this(message, "", "");
    }

    /** Words with a part for the command line or the file alone between them. */
    public SheetRefused(String words, String besides, String end) {
        super(words + besides + end);
        inWindow = words + end;
    }

    /** The words for a window, where the advice to who types commands has no place. */
    public String inWindow() {
        return inWindow;
    }
}
