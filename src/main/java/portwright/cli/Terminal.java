package portwright.cli;

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

    /** Colour only on a terminal that wants it. */
    static boolean colour() {
        return System.console() != null && System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
    }
}
