package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.sheet.Paper;
import portwright.sheet.SheetOptions;

/** Only pages of the design as it stands may be saved or printed. */
class PaperModelTest {
    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();

    private void until(BooleanSupplier holds) throws InterruptedException {
        while (!holds.getAsBoolean()) {
            Runnable next = window.poll(60, TimeUnit.SECONDS);
            assertThat(next).as("an answer comes").isNotNull();
            next.run();
        }
    }

    @Test
    void pagesOfAnEarlierDesignAreNotFresh() throws Exception {
        try (CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), window::add)) {
            DesignText text = Starters.find("hexagon-27cm").orElseThrow();
            Document doc = new Document(text, text.read().design(), desk);
            PaperModel model = new PaperModel(doc, PaperChoice.USUAL, window::add);
            doc.start();
            until(() -> !doc.checking());
            assertThat(model.fresh()).isFalse();
            model.make();
            assertThat(model.running()).isTrue();
            until(() -> !model.running());
            assertThat(model.fresh()).isTrue();
            doc.unread().put(new Unread.Entry("kiln.height", "height", "tall", "wrong", "18 in"));
            assertThat(model.fresh()).as("a field is unreadable").isFalse();
            doc.unread().settle("kiln.height");
            assertThat(model.fresh()).isTrue();
            doc.edit("title", t -> t.setText("title", "another"));
            assertThat(model.fresh()).as("before the check").isFalse();
            until(() -> !doc.checking());
            assertThat(model.fresh()).as("before new pages").isFalse();
            PaperModel.Pages old = model.pages();
            model.make();
            model.cancel();
            assertThat(model.running()).isFalse();
            assertThat(model.fresh()).as("called off").isFalse();
            assertThat(model.pages()).isSameAs(old);
            model.make();
            until(() -> !model.running());
            assertThat(model.fresh()).isTrue();
            assertThat(model.pages()).isNotSameAs(old);
            model.close();
        }
    }

    /** A file is called by the face as the board calls it. */
    @Test
    void filesAreNamedAsTheFacesOnTheBoard() {
        assertThat(PaperChoice.USUAL.stem()).isEmpty();
        assertThat(new PaperChoice("a4", SheetOptions.Part.FLOOR, SheetOptions.Side.COLD).stem())
                .isEqualTo("floor-from-below-");
        assertThat(new PaperChoice("a4", SheetOptions.Part.WALL, SheetOptions.Side.HOT).stem())
                .isEqualTo("wall-from-inside-");
        assertThat(new PaperChoice("a4", SheetOptions.Part.ALL, SheetOptions.Side.BOTH).stem())
                .isEqualTo("both-faces-");
    }

    /** What is offered is taken, and shown as it is offered. */
    @Test
    void everyPaperOfferedCanBeTaken() {
        assertThat(Offers.papers())
                .hasSizeGreaterThan(4)
                .allSatisfy(o -> assertThat(Paper.parse(o.value()).words()).isEqualTo(o.value()));
    }

    /** A printer is off by the same tomorrow; what could not be corrected is not kept. */
    @Test
    void theCorrectionIsKeptAndThePaperFollowsTheUnits(@TempDir Path folder) throws Exception {
        HomeFolder home = new HomeFolder(folder);
        Document doc = Open.starter("octagon-17");
        PaperModel model = new PaperModel(doc, PaperChoice.of(home), window::add).measured(PrinterBars.of(home));
        assertThat(model.remembered()).isFalse();
        assertThat(model.choice().paper()).as("a kiln in inches").isEqualTo("letter");
        doc.edit("units", t -> t.setText("units", "metric"));
        assertThat(model.choice().paper()).isEqualTo("a4");
        assertThat(model.measured(true, "99.4")).isNull();
        assertThat(model.measured(false, "120 mm")).contains("More than 1.5 %");
        doc.unread().settle(PaperModel.DOWN);
        model.keep(home);
        PrinterBars next = PrinterBars.of(home);
        assertThat(next).isEqualTo(new PrinterBars("99.4 mm", "100 mm"));
        assertThat(PaperChoice.of(home).paper()).as("nobody chose one").isEmpty();
        assertThat(model.paper("A3")).isNull();
        model.keep(home);
        doc.edit("units", t -> t.setText("units", "inch"));
        assertThat(new PaperModel(doc, PaperChoice.of(home), window::add)
                        .choice()
                        .paper())
                .isEqualTo("a3");
        model.close();
    }
}
