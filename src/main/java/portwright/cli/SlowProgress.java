package portwright.cli;

import java.io.PrintWriter;
import portwright.layout.Progress;
import portwright.units.Format;

/** A line on standard error every ten seconds of a search, on a terminal or not; a search of less says nothing. */
final class SlowProgress implements Progress {
    private static final long EVERY_NANOS = 10_000_000_000L;

    private final PrintWriter err;
    private long last = System.nanoTime();

    SlowProgress(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void at(double share, String words) {
        long now = System.nanoTime();
        if (now - last >= EVERY_NANOS) {
            last = now;
            err.println("Searching, about " + Format.plain(100 * share, 0) + " %: " + words
                    + ". Ctrl-C ends it; nothing is then written.");
            err.flush();
        }
    }

    @Override
    public boolean cancelled() {
        return false;
    }
}
