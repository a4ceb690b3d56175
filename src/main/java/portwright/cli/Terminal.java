package portwright.cli;

import java.io.Console;

/** What is known of the terminal. */
final class Terminal {
    private Terminal() {}

    /** Columns, from COLUMNS; 96 where it is not set. */
    static int width() {
        try {
            return Math.max(40, Math.min(160, Integer.parseInt(System.getenv().getOrDefault("COLUMNS", "96"))));
        } catch (NumberFormatException e) {
            return 96;
        }
    }

    /** From Java 22 on there is a console without a terminal too, and a method that tells them apart. */
    private static boolean onTerminal() {
        Console console = System.console();
        try {
            return console != null
                    && (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    /** Colour only on a terminal that wants it. */
    static boolean colour() {
        return onTerminal() && System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
    }
}
