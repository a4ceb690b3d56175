package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** What template and card wait for: a row a thing, with one count at list, tile and button. */
class PaperHoldTest {
    private static Document whole(DesignText text) {
        Document doc =
                new Document(text, text.read().design(), new CheckDesk(new RuleBook(LimitTable.load()), Runnable::run));
        doc.start();
        long end = System.nanoTime() + 60_000_000_000L;
        while (doc.checking() && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        return doc;
    }

    private static final DesignText STARTER = Starters.find("octagon-17").orElseThrow();

    private static DesignText bare() {
        return STARTER.remove("kiln.elements")
                .remove("kiln.fittings")
                .remove("kiln.fittingsComplete")
                .remove("room")
                .remove("supply")
                .remove("burners[0].jet")
                .remove("burners[1].jet");
    }

    @Test
    void aWholeDesignWaitsForNothing() {
        Document doc = whole(STARTER);
        assertThat(Withheld.of(doc)).isEmpty();
        assertThat(PaperHold.card(null, doc)).isEmpty();
        assertThat(FindingOrder.count(doc, Step.PAPER).open()).isZero();
    }

    @Test
    void everythingMissingIsARowOfItsOwnAndTheTileCountsTheRows() {
        Document doc = whole(bare());
        List<Withheld.Row> rows = Withheld.of(doc);
        StepCount count = FindingOrder.count(doc, Step.PAPER);
        assertThat(count.stops() + count.notChecked()).isEqualTo(rows.size());
        assertThat(rows)
                .extracting(Withheld.Row::path)
                .doesNotHaveDuplicates()
                .contains("kiln.elements", "burners[1].jet");
        assertThat(rows).allSatisfy(r -> assertThat(r.words()).isNotBlank().doesNotContain("kiln.", "burners["));
        List<String> lighting = doc.result().notChecked().stream()
                .filter(n -> n.forbids() == Forbids.LIGHTING && n.cause().isEmpty())
                .map(NotChecked::needs)
                .flatMap(List::stream)
                .map(n -> n.replaceAll(" \\(.*", ""))
                .distinct()
                .toList();
        assertThat(rows).extracting(Withheld.Row::path).containsAll(lighting);
        long card = rows.stream()
                .filter(r -> r.what() == Withheld.What.CARD || r.path().equals("kiln.elements"))
                .count();
        assertThat(PaperHold.card("No card: not proven.", doc))
                .isEqualTo("Save card waits for " + card + " things: see the list of this step.");
    }

    /** No tick before brick and elements are given, whichever step shows the rules that ask for them. */
    @Test
    void theKilnShowsNoTickWhileAFieldOfItIsMissing() {
        Document doc = whole(STARTER.remove("kiln.wall.brick").remove("kiln.floor.brick"));
        assertThat(Withheld.missing(doc, Step.KILN))
                .extracting(Withheld.Row::path)
                .contains("kiln.wall.brick");
        assertThat(FindingOrder.count(doc, Step.KILN).open()).isPositive();
        assertThat(FindingOrder.count(doc, Step.KILN).words()).isNotEqualTo("clear");
        assertThat(FindingOrder.count(whole(STARTER), Step.KILN).open()).isZero();
    }
}
