package portwright.app.doc;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import portwright.file.DesignText;
import portwright.file.PortsText;
import portwright.file.Problem;
import portwright.layout.DrillOutlook;
import portwright.layout.Progress;
import portwright.layout.Proposal;
import portwright.layout.Proposals;
import portwright.layout.Proposer;
import portwright.layout.Wishes;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;

/**
 * Searches places for the ports of the open design on a thread of its own, keeps their number and sizes or leaves them open, and puts a chosen proposal into the
 * document as one step that can be undone. A proposal belongs to the design it was made for: while that is edited it is out of sight.
 */
public final class ProposalDesk {
    private final Document doc;
    private final Executor ui;
    private final Runnable listener;
    private On inletsOn;
    private boolean keepNumbers = true;
    private boolean keepSizes = true;
    private AtomicBoolean stop = new AtomicBoolean();
    private DesignText asked;
    /** Whether the design is the one asked about. */
    private boolean there;

    private boolean running;
    private double share;
    private String stage = "";
    private Proposals found;
    private List<DrillOutlook> outlooks = List.of();
    private String fault;

    /**
     * @param ui runs a task on the thread of the window
     * @param listener hears, on that thread, that something changed
     */
    public ProposalDesk(Document doc, Executor ui, Runnable listener) {
        this.doc = doc;
        this.ui = ui;
        this.listener = listener;
    }

    /** Why nothing can be proposed for the open design; null when it can. */
    public String refusal() {
        return doc.design().ports().stream().anyMatch(p -> p.role() == Role.INLET ? p.on() == On.LID : p.on() != On.LID)
                ? "Only inlets in floor or wall and flues in the lid are proposed; this design has others."
                : null;
    }

    /** The part in which inlets are wanted: floor or wall; null where that is left open. */
    public On inletsOn() {
        return inletsOn;
    }

    /** Chooses the part for the inlets of the next search. */
    public void inletsOn(On part) {
        inletsOn = part;
    }

    /** Whether the next search keeps the number of inlets and of flues. */
    public boolean keepNumbers() {
        return keepNumbers;
    }

    /** Keeps the numbers, or leaves them open. */
    public void keepNumbers(boolean keep) {
        keepNumbers = keep;
    }

    /** Whether the next search keeps sizes, where all inlets, or all flues, have one. */
    public boolean keepSizes() {
        return keepSizes;
    }

    /** Keeps the sizes, or leaves them open. */
    public void keepSizes(boolean keep) {
        keepSizes = keep;
    }

    /** Starts the search; a search under way is given up. */
    public void start() {
        cancel();
        AtomicBoolean mine = new AtomicBoolean();
        stop = mine;
        asked = doc.text();
        there = true;
        running = true;
        share = 0;
        stage = "";
        found = null;
        fault = null;
        Design design = doc.design();
        Wishes wishes = wishes(design);
        Thread t = new Thread(() -> search(design, wishes, mine), "portwright proposals");
        t.setDaemon(true);
        t.start();
        listener.run();
    }

    private void search(Design design, Wishes wishes, AtomicBoolean mine) {
        Proposals result = null;
        List<DrillOutlook> drills = List.of();
        String wrong = null;
        try {
            result = Proposer.propose(design, wishes, progress(mine));
            drills = result.best().stream()
                    .map(p -> DrillOutlook.of(p.design(), p.check()))
                    .toList();
        } catch (RuntimeException e) {
            wrong = "The search failed: " + e + ". Report it with the design file.";
        }
        Proposals answer = result;
        List<DrillOutlook> chances = drills;
        String words = wrong;
        ui.execute(() -> {
            if (!mine.get()) {
                running = false;
                found = answer;
                outlooks = chances;
                fault = words;
                listener.run();
            }
        });
    }

    /** The outlook in words; where more than one hole is stopped now and then, each of them. */
    private static String drilled(DrillOutlook outlook) {
        List<String> lines = outlook.lines();
        return lines.size() < 2 ? outlook.words() : outlook.words() + "\n" + String.join("\n", lines);
    }

    /** What is kept of the design's own number of ports, and of its sizes where all of one kind are alike. */
    private Wishes wishes(Design d) {
        return new Wishes(
                keepNumbers ? count(d, Role.INLET) : null,
                keepNumbers ? count(d, Role.FLUE) : null,
                keepSizes ? size(d, Role.INLET) : null,
                keepSizes ? size(d, Role.FLUE) : null,
                inletsOn);
    }

    private static Integer count(Design d, Role role) {
        int n = (int) d.ports().stream().filter(p -> p.role() == role).count();
        return n == 0 || n > Wishes.MOST ? null : Integer.valueOf(n);
    }

    private static Double size(Design d, Role role) {
        List<Double> all = d.ports().stream()
                .filter(p -> p.role() == role)
                .map(p -> p.diameter().mm())
                .distinct()
                .toList();
        return all.size() == 1 && all.get(0) >= 5 && all.get(0) <= 200 ? all.get(0) : null;
    }

    private Progress progress(AtomicBoolean mine) {
        return new Progress() {
            @Override
            public void at(double done, String words) {
                ui.execute(() -> {
                    if (!mine.get() && running) {
                        share = done;
                        stage = words;
                        listener.run();
                    }
                });
            }

            @Override
            public boolean cancelled() {
                return mine.get();
            }
        };
    }

    /** Gives up a search under way. */
    public void cancel() {
        stop.set(true);
        if (running) {
            running = false;
            listener.run();
        }
    }

    /** Gives up a search when the design is no longer the one asked about; what was found is out of sight until that design is there again, as by undo. */
    public void changed() {
        boolean now = asked != null && asked == doc.text();
        if (asked != null && now != there) {
            there = now;
            if (running) {
                stop.set(true);
                running = false;
                asked = null;
            }
            listener.run();
        }
    }

    /** Puts a proposal into the document; answers what is wrong with it, nothing when it was taken. */
    public List<Problem> take(Proposal p) {
        return doc.edit("take a proposal", text -> PortsText.put(text, p.ports(), p.renamed()));
    }

    public boolean running() {
        return running;
    }

    /** Share of the search that is done. */
    public double share() {
        return share;
    }

    /** What is being tried, in words; empty at first. */
    public String stage() {
        return stage;
    }

    /** What was found for the open design; null before that. */
    public Proposals found() {
        return there ? found : null;
    }

    /** What a drill by hand may make of a proposal, in words; by its number from 0. */
    public String outlook(int index) {
        return drilled(outlooks.get(index));
    }

    /** The same in one short sentence. */
    public String odds(int index) {
        return outlooks.get(index).brief();
    }

    /** What went wrong; null when nothing did. */
    public String fault() {
        return there ? fault : null;
    }
}
