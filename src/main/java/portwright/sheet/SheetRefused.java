package portwright.sheet;

/** The sheets are not printed, and why. */
public final class SheetRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public SheetRefused(String message) {
        super(message);
    }
}
