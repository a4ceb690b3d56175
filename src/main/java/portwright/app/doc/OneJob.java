package portwright.app.doc;

import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** One piece of work at a time away from the window. A newer one, or a hand, gives it up; then its answer is dropped. */
final class OneJob {
    private final Executor work;
    private final Executor ui;
    private FutureTask<?> running;

    /**
     * @param work runs the work, away from the window
     * @param ui runs a task on the thread of the window
     */
    OneJob(Executor work, Executor ui) {
        this.work = work;
        this.ui = ui;
    }

    /** Starts work whose result is what the window does with its answer. */
    void start(Supplier<Runnable> job) {
        giveUp();
        Object[] mine = new Object[1];
        FutureTask<?> task = new FutureTask<>(
                () -> {
                    Runnable answer = job.get();
                    ui.execute(() -> {
                        if (running == mine[0]) {
                            running = null;
                            answer.run();
                        }
                    });
                },
                null);
        mine[0] = task;
        running = task;
        work.execute(task);
    }

    /** Gives up the work under way. */
    void giveUp() {
        if (running != null) {
            running.cancel(true);
            running = null;
        }
    }

    boolean running() {
        return running != null;
    }
}
