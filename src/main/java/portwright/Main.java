package portwright;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import portwright.cli.Cli;

/** Entry point: no argument opens the window, anything else is a command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(Cli.run(out, err, args));
    }
}
