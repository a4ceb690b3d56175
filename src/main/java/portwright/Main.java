package portwright;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import portwright.app.WindowLauncher;
import portwright.cli.Cli;
import portwright.cli.QuietPipe;

/** Entry point: no argument opens the window, {@code app [DESIGN]} too, anything else is a command line. */
public final class Main {
    private static final int MOST_APP_WORDS = 2;

    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(QuietPipe.standardOut(), false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        List<String> words = Arrays.asList(args);
        boolean window = words.isEmpty()
                || words.get(0).equals("app")
                        && words.size() <= MOST_APP_WORDS
                        && words.stream().noneMatch(w -> w.startsWith("-"));
        System.exit(window ? window(err, words) : Cli.run(out, err, args));
    }

    private static int window(PrintWriter err, List<String> words) {
        try {
            WindowLauncher.open(words.stream().skip(1).toArray(String[]::new));
            return Cli.OK;
        } catch (UnsupportedOperationException | IllegalStateException e) {
            err.println("The window cannot open: there is no screen here (" + e.getMessage()
                    + "). The commands work without one: portwright --help");
            return Cli.MISUSE;
        }
    }
}
