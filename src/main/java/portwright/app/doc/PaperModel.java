package portwright.app.doc;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import portwright.check.CheckResult;
import portwright.file.DesignText;
import portwright.geometry.KilnGeometry;
import portwright.review.Review;
import portwright.sheet.CardBuilder;
import portwright.sheet.CardData;
import portwright.sheet.CardForecast;
import portwright.sheet.ContentMark;
import portwright.sheet.FiringCard;
import portwright.sheet.PagePicture;
import portwright.sheet.Paper;
import portwright.sheet.SheetBook;
import portwright.sheet.SheetOptions;
import portwright.sheet.SheetRefused;

/** What will be printed: paper, parts, faces, the printer's correction, and the pages as made off the window's thread. */
public final class PaperModel {
    /** Paths under which the fields of the Paper step are known to {@link Unread}. */
    public static final String PAPER = "print.paper";

    public static final String ACROSS = "print.across";
    public static final String DOWN = "print.down";

    private final Document doc;
    private final Executor ui;
    private final ExecutorService worker = Background.one("portwright paper");
    private PaperChoice choice;
    private PrinterBars bars = PrinterBars.TRUE;
    private boolean remembered;
    private long wanted;
    private Future<?> running;
    private Pages pages;
    private DesignText pagesOf;
    private Runnable listener = () -> {};

    /**
     * What came of it.
     *
     * @param print null when refused
     * @param refused why nothing prints; null when it does
     * @param preview struck-through pages to look at when refused by a stop; else the print
     * @param card the firing card
     * @param cardRefused why the card does not print; null when it does
     * @param cardPdf its bytes; null when refused
     * @param mark content mark in words
     * @param kiln shapes that the pages show
     */
    public record Pages(
            SheetBook.Print print,
            String refused,
            SheetBook.Print preview,
            PagePicture card,
            String cardRefused,
            byte[] cardPdf,
            String mark,
            KilnGeometry kiln) {}

    public PaperModel(Document doc, PaperChoice choice, Executor ui) {
        this.doc = doc;
        this.choice = choice;
        this.ui = ui;
    }

    /** Hears when pages begin to be made and when they are made. */
    public void listen(Runnable run) {
        listener = run;
    }

    /** The pages made last; null before the first. */
    public Pages pages() {
        return pages;
    }

    /** Paper, parts and faces. */
    public PaperChoice choice() {
        return choice.of(Moves.units(doc.text()));
    }

    /** Sets the paper; answers why it cannot be one, else null. */
    public String paper(String text) {
        try {
            String name = Paper.parse(text).name();
            if (!name.equals(choice().paper())) {
                choice = new PaperChoice(name, choice.part(), choice.face());
                make();
            }
            return told(PAPER, "paper", text, choice().paper(), null);
        } catch (IllegalArgumentException e) {
            return told(PAPER, "paper", text, choice().paper(), e.getMessage());
        }
    }

    public void part(SheetOptions.Part p) {
        choice = new PaperChoice(choice.paper(), p, choice.face());
        make();
    }

    public void face(SheetOptions.Side f) {
        choice = new PaperChoice(choice.paper(), choice.part(), f);
        make();
    }

    public String across() {
        return bars.across();
    }

    public String down() {
        return bars.down();
    }

    /** Takes what was read on the bars at an earlier start. */
    public PaperModel measured(PrinterBars last) {
        bars = last;
        remembered = !last.equals(PrinterBars.TRUE);
        return this;
    }

    /** Whether the printer's correction was read at an earlier start. */
    public boolean remembered() {
        return remembered;
    }

    /** Keeps paper, parts, faces and correction for the next start. */
    public void keep(HomeFolder home) {
        choice.keep(home);
        bars.keep(home);
    }

    /** Takes what the steel rule read on the bars, mm where it is a number alone; answers what is wrong, else null. */
    public String measured(boolean acrossBar, String typed) {
        String text = typed.strip().matches("\\d+(\\.\\d+)?") ? typed.strip() + " mm" : typed.strip();
        String wrong = told(
                acrossBar ? ACROSS : DOWN,
                acrossBar ? "bar across" : "bar down",
                text,
                bars.text(acrossBar),
                PrinterBars.wrong(text));
        if (wrong != null) {
            return wrong;
        }
        if (text.equals(bars.text(acrossBar))) {
            return null;
        }
        bars = bars.with(acrossBar, text);
        make();
        return null;
    }

    /** Lets the document know of an entry; answers what is wrong with it, else null. */
    private String told(String path, String field, String typed, String good, String wrong) {
        if (wrong == null) {
            doc.unread().settle(path);
        } else {
            doc.unread().put(new Unread.Entry(path, field, typed, wrong, good));
        }
        return wrong;
    }

    /** True over printed length. */
    public double factor(boolean acrossBar) {
        return PrinterBars.BAR_MM / bars.mm(acrossBar);
    }

    /** What the bar measured, mm. */
    public double measuredMm(boolean acrossBar) {
        return bars.mm(acrossBar);
    }

    private SheetOptions options(boolean despite) {
        int unmeasured = doc.borrowed().unmeasured();
        return new SheetOptions(
                Paper.parse(choice().paper()),
                choice.part(),
                choice.face(),
                factor(true),
                factor(false),
                despite,
                unmeasured);
    }

    /** Whether pages are being made. */
    public boolean running() {
        return running != null;
    }

    /** Gives up the run under way; the pages made before stay to be looked at. */
    public void cancel() {
        wanted++;
        if (running != null) {
            running.cancel(true);
            running = null;
        }
    }

    /** Whether the pages are those of the design as it stands, checked to the end, and every field can be read: only these may be saved or printed. */
    public boolean fresh() {
        return doc.unread().forbids() == null
                && pages != null
                && !running()
                && !doc.checking()
                && doc.text().equals(pagesOf);
    }

    /** Whether the pages show an earlier design than the one on the board. */
    public boolean stale() {
        return pages != null && !doc.text().equals(pagesOf);
    }

    /** Starts making the pages anew; an older run is dropped. */
    public void make() {
        cancel();
        long mine = wanted;
        DesignText of = doc.text();
        CheckResult result = doc.result();
        Review review = doc.review();
        String title = doc.text().get("title").orElse("design");
        running = worker.submit(() -> {
            if (Thread.currentThread().isInterrupted()) {
                return;
            }
            Pages made = safely(result, review, title);
            ui.execute(() -> {
                if (mine == wanted) {
                    running = null;
                    pages = made;
                    pagesOf = of;
                    listener.run();
                }
            });
        });
        listener.run();
    }

    private Pages safely(CheckResult result, Review review, String title) {
        try {
            return pages(result, review, title);
        } catch (RuntimeException e) {
            return new Pages(
                    null,
                    "The pages could not be laid out: " + e + ". Report it with the design file.",
                    null,
                    null,
                    "The card waits for the pages.",
                    null,
                    "",
                    review.geometry());
        }
    }

    private Pages pages(CheckResult result, Review review, String title) {
        SheetBook.Print print = null;
        SheetBook.Print preview = null;
        String refused = null;
        try {
            print = SheetBook.print(result, review.geometry(), title, options(false));
            preview = print;
        } catch (SheetRefused | IllegalArgumentException e) {
            refused = words(e);
            try {
                preview = SheetBook.print(result, review.geometry(), title, options(true));
            } catch (SheetRefused | IllegalArgumentException nothing) {
                preview = null;
            }
        }
        PagePicture card = null;
        byte[] cardPdf = null;
        String cardRefused = null;
        ContentMark mark = ContentMark.of(review.design());
        try {
            CardData data = CardBuilder.of(
                    result, review.design(), review.fire() == null ? CardForecast.none() : CardForecast.of(review));
            card = FiringCard.picture(data, Paper.parse(choice().paper()), mark);
            cardPdf = FiringCard.print(data, Paper.parse(choice().paper()), mark, false)
                    .pdf();
        } catch (SheetRefused | IllegalArgumentException e) {
            cardRefused = words(e);
        }
        return new Pages(print, refused, preview, card, cardRefused, cardPdf, mark.words(), review.geometry());
    }

    private static String words(RuntimeException e) {
        return e instanceof SheetRefused r ? r.inWindow() : e.getMessage() == null ? "" : e.getMessage();
    }

    /** Ends the work. */
    public void close() {
        worker.shutdownNow();
    }
}
