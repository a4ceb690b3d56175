package portwright.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Sentences without the ids of rules. */
class RuleWordsTest {
    @Test
    void idsGiveWayToHeadings() {
        assertThat(RuleWords.inWords("brick to the nearest joint: 32 mm; joint-sliver: caution under 20 mm."))
                .isEqualTo("brick to the nearest joint: 32 mm; thin sliver at a brick joint: caution under 20 mm.");
        assertThat(RuleWords.inWords("stay: near-flame, room-co."))
                .isEqualTo("stay: too near port or flue, CO in the room.");
    }

    @Test
    void otherWordsStay() {
        String words = "A half-bond joint, gas-on at 900 °C, soot and a jacket; my-near-flame-box.";
        assertThat(RuleWords.inWords(words)).isEqualTo(words);
    }
}
