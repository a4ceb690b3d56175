package portwright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line as a whole. */
@Command(
        name = "portwright",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description =
                "Plans the conversion of an electric kiln for gas reduction: checks ports and flues, computes the fire, prints the drilling template.",
        subcommands = {
            CheckCommand.class,
            SheetCommand.class,
            CardCommand.class,
            ExportCommand.class,
            BurnCommand.class,
            ForecastCommand.class,
            RecordCommand.class,
            NewCommand.class,
            ProposeCommand.class,
            AppCommand.class
        })
public final class Cli implements Runnable {
    /** Done, no stop. */
    public static final int OK = 0;
    /** At least one stop, or refused. */
    public static final int STOP = 1;
    /** Wrong use, unreadable or invalid input. */
    public static final int MISUSE = 2;
    /** A fault of the program, or a file or output that cannot be written. */
    public static final int FAULT = 3;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getErr());
    }

    /** Runs one command; results go to {@code out}, messages to {@code err}; answers the exit status. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        PrintWriter plainErr = new PrintWriter(new PlainWriter(err, false));
        int exit = plain(new PrintWriter(new PlainWriter(out, Terminal.colour())), plainErr, args);
        if (!out.checkError()) {
            return exit;
        }
        plainErr.println("The output could not be written whole: the disk is full, or what it goes to has failed.");
        plainErr.flush();
        return FAULT;
    }

    private static int plain(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Cli());
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((e, cmd, parsed) -> {
            if (e instanceof UserError u) {
                err.println(u.inOptions() ? Misuse.words(cmd.getCommandSpec(), u.getMessage()) : u.getMessage());
                return u.exit();
            }
            err.println("A fault of the program: " + e + ". Nothing was changed. Report it with the design file.");
            return FAULT;
        });
        line.setParameterExceptionHandler((e, typed) -> {
            err.println(Misuse.words(e));
            return MISUSE;
        });
        int exit = line.execute(args);
        out.flush();
        err.flush();
        return exit;
    }
}
