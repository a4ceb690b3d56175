package portwright.cli;

/** Ends a command with a message and an exit status. */
final class UserError extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int exit;

    UserError(int exit, String message) {
        super(message);
        this.exit = exit;
    }

    int exit() {
        return exit;
    }
}
