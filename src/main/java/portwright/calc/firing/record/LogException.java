package portwright.calc.firing.record;

/** A log that cannot be read as a whole; the message says what to write instead. */
public final class LogException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public LogException(String message) {
        super(message);
    }
}
