package portwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.data.LocalCodes;
import portwright.file.DesignText;
import portwright.file.Starters;

/** Writes a starter design, or lists them. */
@Command(name = "new", description = "A starter design to change into your own kiln.", mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "NAME", arity = "0..1", description = "name of the starter (see --list)")
    private String name;

    @Option(names = "-o", paramLabel = "FILE.json", description = "where to write")
    private Path out;

    @Option(names = "--list", description = "the starters with their titles")
    private boolean list;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        if (list) {
            int width = Starters.names().stream().mapToInt(String::length).max().orElse(0);
            Starters.names().forEach(n -> print.printf("%-" + width + "s  %s%n", n, Starters.title(n)));
            return Cli.OK;
        }
        if (name == null || out == null) {
            throw UserError.option(
                    "a starter's name and a place to write it are wanted. Write new NAME -o FILE.json, or new --list to see the names.");
        }
        DesignText starter = Starters.find(name)
                .orElseThrow(() -> new UserError(
                        Cli.MISUSE,
                        "There is no starter \"" + name + "\"."
                                + Starters.nearest(name)
                                        .map(n -> " Did you mean " + n + "?")
                                        .orElse("") + " Starters: " + String.join(", ", Starters.names()) + "."));
        write(starter);
        print.println(Output.name(out) + ": " + starter.get("title").orElse(name)
                + ". Measure your kiln and change the figures before you check it.");
        print.println(LocalCodes.FIRST);
        return Cli.OK;
    }

    private void write(DesignText starter) {
        Output.ready(out, "NEW.json");
        OldFile.stands(out, starter.toText().getBytes(StandardCharsets.UTF_8));
        Output.write(out, starter.toText());
    }
}
