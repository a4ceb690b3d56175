package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** The tiles of the steps never show a tick for what has not been checked. */
class StepCountTest {
    private static final List<Step> LATE = List.of(Step.GAS, Step.ROOM, Step.FIRING);

    private static int sum(Document doc, Severity severity) {
        return Arrays.stream(Step.values())
                .map(s -> FindingOrder.count(doc, s))
                .mapToInt(c -> severity == Severity.STOP ? c.stops() : c.cautions())
                .sum();
    }

    private static int all(Document doc, Severity severity) {
        return (int) doc.result().findings().stream()
                .filter(f -> f.severity() == severity)
                .count();
    }

    /** Every stop and every caution hangs on one tile. */
    @Test
    void beforeTheFirstWholeCheckGasRoomAndFiringAreNotClear() throws Exception {
        BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
        try (CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), window::add)) {
            DesignText text = Starters.find("hexagon-27cm").orElseThrow();
            Document doc = new Document(text, text.read().design(), desk);
            doc.start();
            assertThat(doc.waiting()).isTrue();
            for (Step s : LATE) {
                assertThat(FindingOrder.count(doc, s).words()).as(s.name()).isNotEqualTo("clear");
            }
            whole(doc, window);
            assertThat(doc.waiting()).isFalse();
            assertThat(LATE)
                    .allSatisfy(s -> assertThat(FindingOrder.count(doc, s).notChecked())
                            .isEqualTo(FindingOrder.open(doc, s).size()));
            assertThat(sum(doc, Severity.CAUTION))
                    .isEqualTo(all(doc, Severity.CAUTION))
                    .isPositive();
            assertThat(sum(doc, Severity.STOP)).isEqualTo(all(doc, Severity.STOP));
        }
    }

    private static void whole(Document doc, BlockingQueue<Runnable> window) throws InterruptedException {
        while (doc.checking()) {
            Runnable next = window.poll(60, TimeUnit.SECONDS);
            assertThat(next).as("an answer comes").isNotNull();
            next.run();
        }
    }

    /** A rule that cautions because something is not stated is not told as unchecked as well. */
    @Test
    void whatIsNotStatedOfVentAndProbeIsToldOnce() throws Exception {
        BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
        try (CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), window::add)) {
            DesignText text = Starters.find("octagon-17").orElseThrow().remove("kiln.fittings");
            Document doc = new Document(text, text.read().design(), desk);
            doc.start();
            whole(doc, window);
            for (String rule : List.of("vent-fan", "thermocouple-range")) {
                assertThat(doc.result().findings()).anyMatch(f -> f.rule().equals(rule));
                assertThat(FindingOrder.open(doc, Step.of(rule)))
                        .noneMatch(n -> n.rule().equals(rule));
            }
            assertThat(FindingOrder.open(doc, Step.PORTS))
                    .as("rules that forbid something stay unchecked")
                    .anyMatch(n -> n.rule().equals("fitting-clearance"));
        }
    }

    /** The foot counts what the tiles of the five steps count. */
    @Test
    void theFootCountsWhatTheTilesShowAsOpen() throws Exception {
        BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
        try (CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), window::add)) {
            DesignText text = Starters.find("octagon-17").orElseThrow().remove("damper.plate");
            Document doc = new Document(text, text.read().design(), desk);
            doc.start();
            whole(doc, window);
            int open = Arrays.stream(Step.values())
                    .filter(s -> s != Step.PAPER)
                    .mapToInt(s -> FindingOrder.count(doc, s).open())
                    .sum();
            assertThat(open).isPositive();
            assertThat(FindingOrder.unchecked(doc)).startsWith(open + " not ");
            assertThat(doc.result().drilling()).isNotEqualTo(Verdict.STOP);
            if (VerdictWords.of(doc).sign() == Verdict.CAUTION) {
                assertThat(VerdictWords.of(doc).forbids()).contains("and " + open + " not ");
            }
        }
    }

    @Test
    void portsWithoutAHoleWearNoTick() {
        try (CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), Runnable::run)) {
            DesignText text =
                    Starters.find("octagon-17").orElseThrow().set("ports", "[]").set("burners", "[]");
            Document doc = new Document(text, text.read().design(), desk);
            assertThat(FindingOrder.count(doc, Step.PORTS).open()).isPositive();
        }
    }
}
