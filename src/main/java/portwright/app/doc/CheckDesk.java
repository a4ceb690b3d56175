package portwright.app.doc;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.check.rules.RuleBook.Section;
import portwright.model.Design;
import portwright.review.Review;

/**
 * Checks a design: the shapes at once, everything else on a thread of its own. A newer design cancels the run before it, and a
 * result that is no longer wanted is dropped.
 */
public final class CheckDesk implements AutoCloseable {
    private static final Set<Section> QUICK = EnumSet.of(Section.GEOMETRY);

    /** A full answer. */
    public record Answer(Review review, CheckResult result, Extras extras, String fault) {}

    private final RuleBook book;
    private final Executor ui;
    private final ExecutorService worker;
    private long wanted;
    private boolean checking;
    private Future<?> running;

    /**
     * @param ui runs a task on the thread of the window
     */
    public CheckDesk(RuleBook book, Executor ui) {
        this.book = book;
        this.ui = ui;
        this.worker = Background.one("portwright check");
    }

    /** The answer of the shapes alone, now. */
    public Answer quick(Design design) {
        Review review = Review.geometryOnly(design);
        return new Answer(review, book.check(review, QUICK), Extras.NONE, null);
    }

    /** The worst that the shapes of a design say of a part; null for nothing. */
    Severity worst(Design design, String part) {
        return quick(design).result().findings().stream()
                .filter(f -> f.parts().contains(part))
                .map(Finding::severity)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Starts the full run; the answer comes on the window's thread unless a newer run or {@link #cancel} overtakes it. */
    public void full(Design design, Consumer<Answer> then) {
        cancel();
        long mine = wanted;
        checking = true;
        running = worker.submit(() -> {
            Answer answer = run(design);
            if (answer == null) {
                return;
            }
            boolean more = answer.fault() == null;
            tell(mine, answer, then, true);
            if (more) {
                Extras all = curves(answer);
                if (all != null) {
                    tell(mine, new Answer(answer.review(), answer.result(), all, null), then, false);
                }
            }
        });
    }

    private void tell(long mine, Answer answer, Consumer<Answer> then, boolean done) {
        ui.execute(() -> {
            if (mine == wanted) {
                checking = checking && !done;
                then.accept(answer);
            }
        });
    }

    private static Extras curves(Answer a) {
        try {
            Extras e = a.extras().withCurves(a.review());
            return Thread.currentThread().isInterrupted() ? null : e;
        } catch (RuntimeException e) {
            return null;
        }
    }

    private Answer run(Design design) {
        if (Thread.currentThread().isInterrupted()) {
            return null;
        }
        try {
            Review review = Review.of(design);
            return new Answer(review, book.check(review), Extras.quick(review), null);
        } catch (RuntimeException e) {
            if (Thread.currentThread().isInterrupted()) {
                return null;
            }
            return new Answer(
                    null,
                    null,
                    Extras.NONE,
                    e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage());
        }
    }

    /** Gives up the run under way. */
    public void cancel() {
        wanted++;
        checking = false;
        if (running != null) {
            running.cancel(true);
            running = null;
        }
    }

    /** Whether a run is under way. */
    public boolean busy() {
        return checking;
    }

    @Override
    public void close() {
        cancel();
        worker.shutdownNow();
    }
}
