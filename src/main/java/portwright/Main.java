package portwright;

/** Entry point: no argument opens the window, anything else is a command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(2);
    }
}
