package portwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import portwright.data.LimitTable;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.review.Review;
import portwright.source.Source;

/** The rule book's limits beside the design's own, and what a rule says that cannot be checked. */
class LimitsInForceTest {
    private static final String RULE = "element-clearance";
    private static final LimitTable TABLE = LimitTable.load();

    private static LimitsInForce limits(String own) {
        Design d = Starters.find("decagon-56cm")
                .orElseThrow()
                .set("limits", own)
                .read()
                .design();
        return new LimitsInForce(TABLE, d);
    }

    @Test
    void theDesignsOwnStandsInPlaceOfTheRuleBooks() {
        LimitsInForce book = limits("{}");
        LimitsInForce own = limits("{\"" + RULE + "\": {\"limit\": \"31 mm\"}}");
        assertThat(book.setByUser(RULE, "limit")).isFalse();
        assertThat(own.setByUser(RULE, "limit")).isTrue();
        assertThat(own.value(RULE, "limit")).isEqualTo(31);
        assertThat(book.value(RULE, "limit"))
                .isEqualTo(TABLE.find(RULE, "limit").orElseThrow().value());
        assertThat(own.own())
                .containsExactly(new OwnLimit(
                        RULE,
                        "limit",
                        "31 mm",
                        TABLE.find(RULE, "limit").orElseThrow().typed()));
        assertThat(book.own()).isEmpty();
        assertThat(own.source(RULE, "limit"))
                .isEqualTo(TABLE.find(RULE, "limit").orElseThrow().source());
        assertThatThrownBy(() -> own.value("no-such-rule", "limit"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no limit limit of no-such-rule");
    }

    @Test
    void quickOnlyWhereAsked() {
        Design d = Starters.find("decagon-56cm").orElseThrow().read().design();
        assertThat(new LimitsInForce(TABLE, d).quick()).isFalse();
        assertThat(new LimitsInForce(TABLE, d, true).quick()).isTrue();
        assertThat(new PlainLimits().quick()).isFalse();
    }

    @Test
    void whatCannotBeCheckedNamesEachPurposeItMayForbidOnce() {
        Findings out = new Findings();
        Rule rule = new BothRule();
        out.unproven(rule, "the plate hides it; take it off", "damper.plate");
        out.unproven(rule, "the plate hides it; take it off", "damper.plate");
        out.lacksFigure(rule, "room.volume", "room.place");
        assertThat(out.notChecked())
                .containsExactlyInAnyOrder(
                        new NotChecked(
                                "both", List.of("damper.plate"), Forbids.DRILLING, "the plate hides it; take it off"),
                        new NotChecked(
                                "both", List.of("damper.plate"), Forbids.LIGHTING, "the plate hides it; take it off"),
                        new NotChecked("both", List.of("room.volume", "room.place"), Forbids.NOTHING));
        assertThat(out.notChecked().stream().map(NotChecked::words).distinct())
                .containsExactlyInAnyOrder("the plate hides it; take it off", "add room.volume, room.place");
    }

    private static final class BothRule implements Rule {
        @Override
        public String id() {
            return "both";
        }

        @Override
        public Set<Forbids> canForbid() {
            return Set.of(Forbids.DRILLING, Forbids.LIGHTING);
        }

        @Override
        public void check(Review review, Limits limits, Findings out) {
            out.lacks(this, "nothing");
        }
    }

    private static final class PlainLimits implements Limits {
        @Override
        public double value(String rule, String name) {
            return 1;
        }

        @Override
        public boolean setByUser(String rule, String name) {
            return false;
        }

        @Override
        public Source source(String rule, String name) {
            return Source.practice("none");
        }
    }
}
