package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Those that are shown beside the first have inlets and flues elsewhere; fewer are shown where there are no such. */
class ChoosingTest {
    private static final Combination FIRST = layout(2, 100, 0, 3, "on an oval", 2.5);
    /** The same arrangement with its flues, with its inlets, and with both elsewhere. */
    private static final Combination NEAR = layout(2, 100, 60, 3, "on an oval", 2.49);

    private static final Combination TURNED = layout(2, 180, 0, 3, "on an oval", 2.4);
    private static final Combination BOTH = layout(2, 180, 60, 3, "on an oval", 2.3);
    private static final Combination ONE_FLUE = layout(2, 100, 0, 1, "in the middle", 2.2);
    private static final Combination CIRCLE = layout(2, 100, 60, 3, "on a circle", 2.1);
    private static final Combination OTHER_INLETS = layout(2, 260, 120, 2, "as a pair across the middle", 1.9);
    /** Elsewhere altogether, with too little margin left, and with just enough. */
    private static final Combination POOR = layout(3, 60, 200, 1, "where it has most room", 0.9);

    private static final Combination ENOUGH = layout(3, 60, 200, 1, "where it has most room", 1);

    @Test
    void whatSharesInletsOrFluesIsNotShown() {
        assertThat(Choosing.apart(List.of(List.of(FIRST, NEAR, TURNED, ONE_FLUE, CIRCLE)), null, Twins.NONE))
                .containsExactly(FIRST);
    }

    @Test
    void thoseThatHaveBothElsewhereAreShownTheWidestFirst() {
        assertThat(Choosing.apart(
                        List.of(List.of(FIRST, NEAR, TURNED, BOTH, ONE_FLUE, CIRCLE, OTHER_INLETS, ENOUGH)),
                        null,
                        Twins.NONE))
                .containsExactly(FIRST, BOTH, OTHER_INLETS);
        assertThat(Choosing.apart(List.of(List.of(FIRST, NEAR, OTHER_INLETS, ONE_FLUE, BOTH)), null, Twins.NONE))
                .containsExactly(FIRST, BOTH, OTHER_INLETS);
    }

    /** Of two that are as wide to within half a percent the one in another arrangement; over that the wider one. */
    @Test
    void anotherArrangementComesFirstWhereItCostsNextToNothing() {
        Combination same = layout(2, 180, 60, 3, "on an oval", 2.3);
        Combination nearly = layout(2, 180, 75, 3, "on a circle", 2.29);
        Combination less = layout(2, 180, 75, 3, "on a circle", 2.28);
        assertThat(Choosing.apart(List.of(List.of(FIRST, same, nearly)), null, Twins.NONE))
                .containsExactly(FIRST, nearly);
        assertThat(Choosing.apart(List.of(List.of(FIRST, same, less)), null, Twins.NONE))
                .containsExactly(FIRST, same);
    }

    @Test
    void whatLosesMostOfTheMarginIsNotShown() {
        assertThat(Choosing.least(FIRST.margin())).isEqualTo(1);
        assertThat(Choosing.least(ENOUGH.margin())).isEqualTo(0.5);
        assertThat(Choosing.apart(List.of(List.of(FIRST, POOR)), null, Twins.NONE))
                .containsExactly(FIRST);
        assertThat(Choosing.apart(List.of(List.of(FIRST, ENOUGH)), null, Twins.NONE))
                .containsExactly(FIRST, ENOUGH);
    }

    /** Whatever an earlier group holds stands before what a later one adds. */
    @Test
    void groupsKeepTheirOrder() {
        assertThat(Choosing.apart(List.of(List.of(FIRST, OTHER_INLETS), List.of(BOTH)), null, Twins.NONE))
                .containsExactly(FIRST, OTHER_INLETS, BOTH);
    }

    /** The widest comes second if it lies elsewhere or in the other part. */
    @Test
    void theWidestIsSecondIfItIsAChoice() {
        List<List<Combination>> groups = List.of(List.of(FIRST, BOTH, OTHER_INLETS));
        assertThat(Choosing.apart(groups, BOTH, Twins.NONE)).containsExactly(FIRST, BOTH, OTHER_INLETS);
        assertThat(Choosing.apart(groups, NEAR, Twins.NONE)).containsExactly(FIRST, BOTH, OTHER_INLETS);
        Combination wall = new Combination(
                FIRST.choice(),
                new Spots("in the wall", true, new int[] {1, 2}, new double[2], new double[2], 9),
                FIRST.flues(),
                9,
                9,
                0);
        assertThat(Choosing.apart(groups, wall, Twins.NONE)).containsExactly(FIRST, wall, BOTH);
    }

    /** What stays where the design has it may be the first, never a further choice, however wide. */
    @Test
    void whatStaysIsNoFurtherChoice() {
        Combination own = layout(3, 60, 200, 1, Spots.AS_THEY_ARE, 2.45);
        assertThat(Choosing.apart(List.of(List.of(FIRST, own, ENOUGH)), own, Twins.NONE))
                .containsExactly(FIRST, ENOUGH);
        assertThat(Choosing.apart(List.of(List.of(own, FIRST)), own, Twins.NONE))
                .containsExactly(own, FIRST);
    }

    /** Of as many stops the floor comes before the wall, however wide that is. */
    @Test
    void theFloorStandsBeforeTheWall() {
        Combination wall = new Combination(
                FIRST.choice(),
                new Spots("in the wall", true, new int[] {1, 2}, new double[2], new double[2], 9),
                FIRST.flues(),
                9,
                9,
                0);
        assertThat(Choosing.groups(Stream.of(wall, TURNED, FIRST), c -> Stops.NONE))
                .containsExactly(List.of(FIRST, TURNED), List.of(wall));
        assertThat(Choosing.groups(Stream.of(wall, FIRST), c -> c == wall ? Stops.NONE : new Stops(List.of("soot"), 1)))
                .containsExactly(List.of(wall), List.of(FIRST));
    }

    /** Inlets so far out on both sides, flues shifted by so much. */
    private static Combination layout(int inlets, double out, double shift, int flues, String family, double margin) {
        double[] x = new double[inlets];
        double[] fx = new double[flues];
        for (int i = 0; i < inlets; i++) {
            x[i] = (2.0 * i / (inlets - 1) - 1) * out;
        }
        for (int i = 0; i < flues; i++) {
            fx[i] = 90 * (i - (flues - 1) / 2.0);
        }
        double[] fy = new double[flues];
        java.util.Arrays.fill(fy, shift);
        return new Combination(
                new Sizes.Choice(inlets, 30, flues, 40, null),
                new Spots("as a pair across the middle", true, x, new double[inlets], margin),
                new Spots(family, true, fx, fy, margin),
                9,
                9,
                0);
    }
}
