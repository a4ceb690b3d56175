package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.FittingKind;
import portwright.model.On;

/** Where no layout passes, the rule that takes every place is named, and the nearest miss. */
class BlockersTest {
    @Test
    void aFloorFullOfElementsIsImpossibleByTheElements() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (int i = -4; i <= 4; i++) {
            k.slabElement("row " + (i + 5), On.FLOOR, 14, 16, TestKiln.at(-240, i * 50), TestKiln.at(240, i * 50));
        }
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 2, 35.0, 38.0, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.impossible()).anyMatch(i -> i.rule().equals("element-clearance"));
        assertThat(p.nearestMiss().limiting().rule()).isEqualTo("element-clearance");
    }

    @Test
    void aFloorFullOfLegsIsImpossibleByTheLegsAlone() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (int i = 0; i < 64; i++) {
            k.fitting("leg " + i, FittingKind.LEG, On.FLOOR, null, TestKiln.at(i % 8 * 62 - 217, i / 8 * 62 - 217), 50);
        }
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 2, 35.0, 38.0, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.impossible()).singleElement().satisfies(i -> {
            assertThat(i.rule()).isEqualTo("fitting-clearance");
            assertThat(i.alone()).isTrue();
            assertThat(i.words()).contains("without this rule a layout exists");
        });
    }

    /** An island of bare brick takes one hole, not two: the nearest miss lacks brick to the elements and between the holes. Only without the elements a place opens. */
    @Test
    void whatTheNearestMissBreaksIsNotAlwaysToBlame() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (int i = -8; i <= 8; i++) {
            int y = i * 30;
            if (Math.abs(i) > 1) {
                k.slabElement("row " + i, On.FLOOR, 14, 16, TestKiln.at(-240, y), TestKiln.at(240, y));
            } else {
                k.slabElement("left " + i, On.FLOOR, 14, 16, TestKiln.at(-240, y), TestKiln.at(-60, y));
                k.slabElement("right " + i, On.FLOOR, 14, 16, TestKiln.at(60, y), TestKiln.at(240, y));
            }
        }
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 2, 35.0, 38.0, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.nearestMiss().tightest())
                .anyMatch(t -> t.rule().equals("port-spacing") && t.isStop())
                .anyMatch(t -> t.rule().equals("element-clearance") && t.isStop());
        assertThat(p.impossible()).singleElement().satisfies(i -> {
            assertThat(i.rule()).isEqualTo("element-clearance");
            assertThat(i.alone()).isTrue();
            assertThat(i.words()).contains("without this rule a layout exists");
        });
    }

    @Test
    void whereNoSawKeepsTheRatioTheNearestIsNamed() {
        Proposals p = Proposer.propose(
                TestKiln.polygon(10, "900 mm").build(), new Wishes(4, 1, 100.0, null, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.impossible()).anySatisfy(i -> {
            assertThat(i.rule()).isEqualTo("flue-inlet-ratio");
            assertThat(i.words()).contains("Tried: 1 flue of every saw").contains("over 4 inlets");
        });
        assertThat(p.nearestMiss()).isNotNull();
    }
}
