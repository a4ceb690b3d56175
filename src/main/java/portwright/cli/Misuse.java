package portwright.cli;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import portwright.file.Nearest;
import portwright.units.PlainSigns;

/** What is wrong with a command line, in two lines: what, where and what to write instead; then where all options stand. */
final class Misuse {
    private Misuse() {}

    /** The two lines for words that cannot be read as the command's options. */
    static String words(ParameterException e) {
        CommandSpec command = e.getCommandLine().getCommandSpec();
        String fault;
        if (e instanceof UnmatchedArgumentException u) {
            fault = unmatched(u, command);
        } else if (e instanceof MissingParameterException m) {
            fault = wanted(m.getMissing());
        } else if (e instanceof OverwrittenOptionException o) {
            fault = name(o.getOverwritten()) + " stands there twice. Write it once.";
        } else if (e.getArgSpec() != null && e.getValue() != null) {
            fault = value(e.getArgSpec(), e.getValue());
        } else {
            fault = e.getMessage() + ".";
        }
        return words(command, fault);
    }

    /** The two lines for a fault in one command's options. */
    static String words(CommandSpec command, String fault) {
        return (command.parent() == null ? "" : command.name() + ": ") + PlainSigns.shown(fault)
                + System.lineSeparator() + "See " + command.qualifiedName() + " --help";
    }

    private static String unmatched(UnmatchedArgumentException e, CommandSpec command) {
        String word = e.getUnmatched().get(0);
        if (e.isUnknownOption()) {
            List<String> known = command.options().stream()
                    .flatMap(o -> Stream.of(o.names()))
                    .filter(n -> n.startsWith("--"))
                    .toList();
            return "there is no option " + word + "." + hint(word.replaceAll("=.*", ""), known);
        }
        if (command.parent() == null) {
            Collection<String> known = command.subcommands().keySet();
            return "There is no command \"" + word + "\"." + hint(word, known) + " Commands: "
                    + String.join(", ", known) + ".";
        }
        return "\"" + word
                + "\" is one word too many. A value with a space in it stands in quotes, such as \"1 3/8 in\" or \"1100 °C\".";
    }

    private static String hint(String word, Collection<String> known) {
        return Nearest.of(word, known).map(n -> " Did you mean " + n + "?").orElse("");
    }

    private static String wanted(List<ArgSpec> missing) {
        return missing.stream().map(a -> label(a) + " (" + about(a) + ")").collect(Collectors.joining(", "))
                + (missing.size() == 1 ? " is missing." : " are missing.");
    }

    private static String value(ArgSpec arg, String typed) {
        Class<?> type = arg.isMultiValue() ? arg.auxiliaryTypes()[0] : arg.type();
        String kind;
        if (type.isEnum()) {
            kind = "none of "
                    + Stream.of(type.getEnumConstants())
                            .map(c -> c.toString().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", "));
        } else if (type == double.class || type == Double.class) {
            kind = "no number with a decimal point";
        } else if (type == int.class || type == Integer.class) {
            kind = "no whole number";
        } else {
            kind = "not usable";
        }
        return name(arg) + " \"" + typed + "\" is " + kind + ". Write " + label(arg) + ": " + about(arg) + ".";
    }

    private static String name(ArgSpec arg) {
        return arg instanceof OptionSpec o ? o.longestName() : arg.paramLabel();
    }

    private static String label(ArgSpec arg) {
        return arg instanceof OptionSpec o && o.arity().max() > 0 ? name(arg) + " " + arg.paramLabel() : name(arg);
    }

    private static String about(ArgSpec arg) {
        return String.join(" ", arg.description())
                .replaceAll(" \\(default [^)]*\\)", "")
                .replace("%%", "%");
    }
}
