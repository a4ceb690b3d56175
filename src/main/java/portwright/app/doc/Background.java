package portwright.app.doc;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Threads away from the window that never keep the program alive. */
public final class Background {
    private Background() {}

    /** One thread that runs its tasks one after the other. */
    public static ExecutorService one(String name) {
        return Executors.newSingleThreadExecutor(r -> {
            Thread t = new Thread(r, name);
            t.setDaemon(true);
            return t;
        });
    }
}
