package portwright.app.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies beside the pointer is never broader than a few words. */
class HoverWordsTest {
    @Test
    void longLinesAreBrokenBetweenWordsAndNeverWithinAQuantity() {
        String says = "caution: inlet front is 1 3/8 in (35 mm) from the edge of its brick, and a sliver of that"
                + " breadth breaks off when the saw comes through; 1 9/16 in (40 mm) is asked for";
        List<String> lines = HoverWords.broken(List.of("inlet front", says), 46);
        assertThat(lines)
                .hasSizeGreaterThan(3)
                .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(46));
        assertThat(String.join(" ", lines.subList(1, lines.size())).replace('\u00a0', ' '))
                .isEqualTo(says);
        assertThat(lines).noneMatch(l -> l.matches(".*\\d$"));
    }
}
