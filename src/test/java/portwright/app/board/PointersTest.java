package portwright.app.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The dotted lines to the rules leave out strips with words. */
class PointersTest {
    @Test
    void aStripIsCutOutOfALine() {
        List<double[]> cut = Pointers.without(List.of(new double[] {29, 100}, new double[] {100, 400}), 150, 180);
        assertThat(cut).hasSize(3);
        assertThat(cut.get(0)).containsExactly(29, 100);
        assertThat(cut.get(1)).containsExactly(100, 150);
        assertThat(cut.get(2)[0]).isBetween(180.0, 187.0);
        assertThat(cut.get(2)[1]).isEqualTo(400);
    }

    @Test
    void aPieceWithinAStripGoes() {
        assertThat(Pointers.without(List.of(new double[] {150, 160}), 140, 180)).isEmpty();
    }
}
