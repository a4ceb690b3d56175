package portwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import portwright.units.PlainSigns;

/** Ends a command with a message and an exit status. A word of the user in it, such as a path, begins no line of its own. */
final class UserError extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int exit;
    private final boolean inOptions;

    private UserError(int exit, boolean inOptions, List<String> lines) {
        super(lines.stream().map(PlainSigns::shown).collect(Collectors.joining(System.lineSeparator())));
        this.exit = exit;
        this.inOptions = inOptions;
    }

    UserError(int exit, String message) {
        this(exit, List.of(message));
    }

    UserError(int exit, List<String> lines) {
        this(exit, false, lines);
    }

    /** A fault in what was typed after the command. */
    static UserError option(String message) {
        return new UserError(Cli.MISUSE, true, List.of(message));
    }

    /** Whether the command's help would show what to write. */
    boolean inOptions() {
        return inOptions;
    }

    int exit() {
        return exit;
    }
}
