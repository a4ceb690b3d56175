package portwright.app;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import portwright.app.paint.Fonts;

/** Starts the toolkit once and runs on its thread. */
final class Toolkit {
    private static boolean started;

    private Toolkit() {}

    static synchronized void start() {
        if (started) {
            return;
        }
        started = true;
        java.util.logging.Logger.getLogger("javafx").setLevel(java.util.logging.Level.OFF);
        CountDownLatch up = new CountDownLatch(1);
        Platform.startup(up::countDown);
        Platform.setImplicitExit(false);
        try {
            up.await(30, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        Fonts.load();
    }

    /** Runs on the toolkit's thread and waits. */
    static <T> T call(Callable<T> task) {
        start();
        FutureTask<T> f = new FutureTask<>(task);
        Platform.runLater(f);
        try {
            return f.get(60, TimeUnit.SECONDS);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    static void run(Runnable task) {
        call(() -> {
            task.run();
            return null;
        });
    }

    /** Waits until something holds on the toolkit's thread. */
    static void until(Callable<Boolean> holds) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!call(holds)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("did not come true in 30 s");
            }
            try {
                Thread.sleep(10);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
