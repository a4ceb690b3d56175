package portwright.cli;

/** Ends a command with a message and an exit status. */
final class UserError extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int exit;
    private final boolean inOptions;

    private UserError(int exit, boolean inOptions, String message) {
        super(message);
        this.exit = exit;
        this.inOptions = inOptions;
    }

    UserError(int exit, String message) {
        this(exit, false, message);
    }

    /** A fault in what was typed after the command. */
    static UserError option(String message) {
        return new UserError(Cli.MISUSE, true, message);
    }

    /** Whether the command's help would show what to write. */
    boolean inOptions() {
        return inOptions;
    }

    int exit() {
        return exit;
    }
}
