package portwright.units;

/** A text that is no quantity of the wanted kind; the message says what to write instead. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public QuantityException(String message) {
        super(message);
    }
}
