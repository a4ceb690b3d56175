package portwright.app.doc;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.LogException;
import portwright.calc.firing.log.LogFile;
import portwright.calc.firing.log.RecordResult;
import portwright.file.DesignText;
import portwright.file.FittedText;
import portwright.file.Problem;
import portwright.review.Known;
import portwright.review.RecordReview;
import portwright.review.Review;

/**
 * Logged firings beside the forecast of the open design: reads files, follows them through the heat balance off the window's thread, and puts the
 * two fitted numbers into the document as one step that can be undone. Follows the design: a new forecast reads the logs anew.
 */
public final class RecordDesk {
    private final Document doc;
    private final OneJob job;
    private final Runnable listener;
    private List<Entry> entries = List.of();
    private int chosen = -1;
    private List<String> faults = List.of();
    private Answer answer;
    private Review readFor;
    private List<Entry> readOf = List.of();
    private boolean loading;
    private List<Path> reading = List.of();
    private boolean stopped;

    /** A log and the name of its file. */
    public record Entry(String name, FiringLog log) {}

    /** Records of all logs, and a fit of each. */
    private record Answer(RecordReview record, List<Fit> fits, List<String> needs, List<String> faults) {}

    /**
     * @param work runs the reading, away from the window
     * @param ui runs a task on the thread of the window
     * @param listener hears, on that thread, that something changed
     */
    public RecordDesk(Document doc, Executor work, Executor ui, Runnable listener) {
        this.doc = doc;
        this.job = new OneJob(work, ui);
        this.listener = listener;
    }

    /** Reads files and adds them, oldest first, to the logs there are; the last one is shown. A file that is no log is named in {@link #faults}. */
    public void load(List<Path> files) {
        faults = List.of();
        List<Path> asked = new ArrayList<>(loading ? reading : List.of());
        asked.addAll(files);
        reading = asked;
        giveUp();
        loading = true;
        job.start(() -> {
            List<Entry> read = new ArrayList<>();
            List<String> wrong = new ArrayList<>();
            for (Path f : asked) {
                try {
                    read.add(new Entry(f.getFileName().toString(), LogFile.read(f)));
                } catch (LogException e) {
                    wrong.add(f.getFileName() + ": " + e.getMessage() + ".");
                }
            }
            return () -> {
                loading = false;
                List<Entry> all = new ArrayList<>(entries);
                all.addAll(read);
                entries = List.copyOf(all);
                faults = wrong;
                if (!read.isEmpty()) {
                    chosen = entries.size() - 1;
                }
                follow();
                listener.run();
            };
        });
        listener.run();
    }

    private void giveUp() {
        if (job.running() && !loading) {
            readFor = null;
        }
        job.giveUp();
        loading = false;
        stopped = false;
    }

    /** Gives up reading or fitting; {@link #again} starts it anew. */
    public void cancel() {
        Review of = readFor;
        giveUp();
        readFor = of;
        stopped = true;
        listener.run();
    }

    /** Reads and fits the logs that lie here anew. */
    public void again() {
        readFor = null;
        stopped = false;
        follow();
        listener.run();
    }

    /** Whether reading was given up by hand. */
    public boolean stopped() {
        return stopped;
    }

    /** Lets go of a log. */
    public void remove(int index) {
        List<Entry> all = new ArrayList<>(entries);
        all.remove(index);
        entries = List.copyOf(all);
        chosen = Math.min(chosen > index ? chosen - 1 : chosen, entries.size() - 1);
        faults = List.of();
        follow();
        listener.run();
    }

    /** Shows another of the logs. */
    public void choose(int index) {
        chosen = index;
        listener.run();
    }

    /** Hears that the design or its review changed. */
    public void changed() {
        follow();
    }

    private void follow() {
        Review review = doc.review();
        if (loading) {
            return;
        }
        if (entries.isEmpty()) {
            giveUp();
            answer = null;
            readFor = null;
            readOf = List.of();
            return;
        }
        if (doc.checking() || review.firing() == null || review == readFor && readOf.equals(entries)) {
            return;
        }
        List<Entry> of = entries;
        giveUp();
        job.start(() -> {
            Answer a = read(review, of);
            return () -> {
                take(of, a);
                listener.run();
            };
        });
        readFor = review;
        readOf = of;
    }

    private void take(List<Entry> of, Answer a) {
        if (a.faults().isEmpty()) {
            answer = a;
            return;
        }
        faults = a.faults();
        entries = of.stream()
                .filter(e -> a.faults().stream().noneMatch(f -> f.startsWith(e.name() + ": ")))
                .toList();
        chosen = entries.size() - 1;
        follow();
    }

    private static Answer read(Review review, List<Entry> entries) {
        List<FiringLog> logs = entries.stream().map(Entry::log).toList();
        try {
            Known<RecordReview> record = RecordReview.of(review, logs);
            return record.known()
                    ? new Answer(
                            record.value(),
                            logs.stream().map(l -> RecordReview.fit(review, l)).toList(),
                            List.of(),
                            List.of())
                    : new Answer(null, List.of(), record.needs(), List.of());
        } catch (LogException e) {
            return new Answer(null, List.of(), List.of(), culprits(review, entries));
        } catch (RuntimeException e) {
            return new Answer(
                    null,
                    List.of(),
                    List.of(),
                    List.of("The reading failed: " + e + ". Report it with the design and the log."));
        }
    }

    /** The logs that cannot be followed, each with the reason. */
    private static List<String> culprits(Review review, List<Entry> entries) {
        List<String> out = new ArrayList<>();
        for (Entry e : entries) {
            try {
                RecordReview.of(review, List.of(e.log()));
            } catch (LogException wrong) {
                out.add(e.name() + ": " + wrong.getMessage() + ".");
            }
        }
        return out;
    }

    public List<Entry> entries() {
        return entries;
    }

    /** Index of the log that is shown; −1 without any. */
    public int chosen() {
        return chosen;
    }

    public boolean running() {
        return job.running();
    }

    /** Files that are not used, each with the reason. */
    public List<String> faults() {
        return faults;
    }

    /** Fields that the forecast lacks; empty when it is there. */
    public List<String> needs() {
        return answer == null ? List.of() : answer.needs();
    }

    /** All records; null while they are not read or the forecast lacks fields. */
    public RecordReview record() {
        return answer == null
                        || answer.record() == null
                        || answer.record().logs().size() != entries.size()
                ? null
                : answer.record();
    }

    /** What the log that is shown says; null while it is not read. */
    public RecordResult result() {
        return record() == null ? null : record().results().get(chosen);
    }

    /** The fit of the log that is shown; null while it is not read. */
    public Fit fit() {
        return record() == null ? null : answer.fits().get(chosen);
    }

    /** Whether the fit has a number. */
    public boolean fits() {
        Fit f = fit();
        return f != null && f.fits();
    }

    /** Whether the design already has the fitted numbers. */
    public boolean taken() {
        return fits() && fitted(doc.text()).equals(doc.text());
    }

    private DesignText fitted(DesignText text) {
        return FittedText.put(text, fit().lossFactor(), fit().leakM2());
    }

    /** Puts the fitted numbers into the document; answers what is wrong with them, nothing when they were taken. */
    public List<Problem> takeFit() {
        return doc.edit("take the fit of " + entries.get(chosen).name(), this::fitted);
    }
}
