package portwright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import portwright.layout.Progress;
import portwright.units.Format;

/** A line on standard error every ten seconds of a search, on a terminal or not, whatever it is at; a search of less says nothing. */
final class SlowProgress implements Progress, AutoCloseable {
    private static final int EVERY_SECONDS = 10;

    private final PrintWriter err;
    private final ScheduledExecutorService clock;
    private final Future<?> beat;
    private volatile Stage stage = new Stage(0, "sizes that fit burners and draft");
    private int told;

    private record Stage(double share, String words) {}

    SlowProgress(PrintWriter err) {
        this(err, EVERY_SECONDS, TimeUnit.SECONDS);
    }

    /** @param every time between two lines */
    SlowProgress(PrintWriter err, long every, TimeUnit unit) {
        this.err = err;
        clock = Executors.newSingleThreadScheduledExecutor(run -> {
            Thread t = new Thread(run, "portwright progress");
            t.setDaemon(true);
            return t;
        });
        beat = clock.scheduleAtFixedRate(this::tell, every, every, unit);
    }

    @Override
    public void at(double share, String words) {
        stage = new Stage(share, words);
    }

    private void tell() {
        Stage now = stage;
        told++;
        err.println("Searching for " + told * EVERY_SECONDS + " s, about " + Format.plain(100 * now.share(), 0) + " %: "
                + now.words() + ". Ctrl-C ends it; nothing is then written.");
        err.flush();
    }

    @Override
    public boolean cancelled() {
        return false;
    }

    /** Says no more. */
    @Override
    public void close() {
        beat.cancel(false);
        clock.shutdownNow();
    }
}
