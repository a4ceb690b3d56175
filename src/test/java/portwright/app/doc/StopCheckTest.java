package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** A check that was called off leaves what it would have answered unchecked, also when an older answer is there. */
class StopCheckTest {
    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();

    private void settle(Document doc) throws InterruptedException {
        while (doc.checking()) {
            Runnable next = window.poll(60, TimeUnit.SECONDS);
            assertThat(next).as("an answer comes").isNotNull();
            next.run();
        }
    }

    @Test
    void nothingThatWasNotCheckedIsShownClearOrPrinted() throws Exception {
        try (CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), window::add)) {
            DesignText text = Starters.find("hexagon-27cm").orElseThrow();
            Document doc = new Document(text, text.read().design(), desk);
            doc.stopCheck();
            assertThat(doc.stopped()).as("nothing runs").isFalse();
            doc.start();
            doc.stopCheck();
            assertStopped(doc);
            doc.start();
            assertThat(doc.stopped()).isFalse();
            settle(doc);
            assertThat(VerdictWords.of(doc).count()).doesNotContain("called off");
            doc.edit("power", t -> t.setText("kiln.power", "3 kW"));
            doc.stopCheck();
            assertStopped(doc);
            doc.undo();
            assertThat(doc.stopped()).isFalse();
            settle(doc);
            assertThat(FindingOrder.count(doc, Step.FIRING).notChecked())
                    .isEqualTo(FindingOrder.open(doc, Step.FIRING).size());
        }
    }

    private static void assertStopped(Document doc) {
        assertThat(doc.stopped()).isTrue();
        assertThat(doc.checking()).as("no full answer").isTrue();
        assertThat(VerdictWords.of(doc).sign()).isIn(Verdict.INCOMPLETE, Verdict.STOP);
        for (Step s : new Step[] {Step.GAS, Step.ROOM, Step.FIRING}) {
            assertThat(FindingOrder.count(doc, s).notChecked()).as(s.name()).isPositive();
        }
    }
}
