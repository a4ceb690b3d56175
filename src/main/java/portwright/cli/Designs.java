package portwright.cli;

import java.nio.file.Path;
import portwright.model.Design;

/** Reads the design that a command names. */
final class Designs {
    private Designs() {}

    /** The design; ends the command with all problems of the file when it cannot be used. */
    static Design read(Path file) {
        throw new UserError(Cli.MISUSE, "reading designs is not there yet");
    }
}
