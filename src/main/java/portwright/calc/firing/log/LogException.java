package portwright.calc.firing.log;

/** A log that cannot be used at all; the message says what to write instead. */
public final class LogException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    LogException(String message) {
        super(message);
    }
}
