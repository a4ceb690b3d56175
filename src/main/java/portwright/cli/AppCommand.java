package portwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Stands in the list of commands; the window itself is opened before the command line is read. */
@Command(
        name = "app",
        mixinStandardHelpOptions = true,
        description = "Opens the window, with a design when one is named.")
final class AppCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "DESIGN", description = "the design to open")
    private Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine()
                .getErr()
                .println("app takes one design" + (file == null ? "." : ", not more than " + file + "."));
        return Cli.MISUSE;
    }
}
