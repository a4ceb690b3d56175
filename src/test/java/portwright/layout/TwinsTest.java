package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;

/** What turned or mirrored is the same layout, and where a chamber repeats with its holes. */
class TwinsTest {
    private static final Sizes.Choice HOLES = new Sizes.Choice(2, 32, 1, 51, null);
    private static final Combination RISING = layout(-64, -64, 64, 64, 14, -14);
    private static final Combination FALLING = layout(-64, 64, 64, -64, 14, 14);

    @Test
    void inABareSquareAMirroredLayoutIsTheSame() {
        Twins square = twins(square());
        assertThat(square.same(FALLING, RISING)).isTrue();
        assertThat(Choosing.novelty(FALLING, RISING, square)).isEqualTo(Choosing.Novelty.TWIN);
    }

    /** The mirrored inlets with a flue that stands elsewhere to them. */
    @Test
    void bothRolesHaveToBeCarriedByOneMove() {
        assertThat(twins(square()).same(layout(-64, 64, 64, -64, 100, 0), RISING))
                .isFalse();
    }

    @Test
    void aLegInOneCornerMakesThemTwo() {
        TestKiln k = square().fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-100, 100), 30);
        assertThat(twins(k).same(FALLING, RISING)).isFalse();
    }

    @Test
    void aPairRepeatsWithASquareAndThreeInARingDoNot() {
        Twins square = twins(square());
        assertThat(square.evenly(RISING)).isEqualTo(Twins.MIDDLE);
        assertThat(square.evenly(ring())).isNotEqualTo(Twins.MIDDLE);
        assertThat(twins(TestKiln.polygon(6, "420 mm")).evenly(ring())).isEqualTo(Twins.MIDDLE);
    }

    /** No two of those shown are one layout, in a kiln without anything in it. */
    @Test
    void proposalsForABareSquareAreNoTwins() {
        Design d = square().build();
        List<Proposal> best = Proposer.propose(d, new Wishes(2, 1, 32.0, 51.0, On.FLOOR), Progress.none())
                .best();
        Twins twins = twins(square());
        List<Combination> shown = best.stream().map(TwinsTest::read).toList();
        for (int i = 0; i < shown.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(twins.same(shown.get(i), shown.get(j)))
                        .as("%s and %s", i, j)
                        .isFalse();
            }
        }
    }

    /**
     * With the same holes two differ clearly where one lies far off, not where all do by little more than a hole's width. By hand: in a square of 300 mm 12 % are
     * 36 mm, two inlets' widths 64 mm and two flues' 102 mm; a leg in one corner leaves no move but standing still.
     */
    @Test
    void clearlyElsewhereIsMoreThanAHolesWidth() {
        Twins one = twins(square().fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-100, 40), 30));
        Combination first = layout(-90, 0, 90, 0, 0, 0);
        assertThat(one.clear(layout(-90, 60, 90, 60, 0, 60), first, 0)).isFalse();
        assertThat(one.clear(layout(-90, 66, 90, 66, 0, 60), first, 0)).isTrue();
        assertThat(one.clear(layout(-90, 60, 90, 60, 0, 104), first, 0)).isTrue();
        assertThat(one.clear(layout(-90, 66, 90, 66, 0, 60), first, 3)).isFalse();
    }

    /** In the bare square the inlets turned by a quarter are no farther off than the same ones moved by 10 mm. */
    @Test
    void aTurnedCopyIsNotClearlyElsewhere() {
        Combination first = layout(-90, 0, 90, 0, 0, 0);
        Combination turned = layout(10, -90, 10, 90, 60, 0);
        assertThat(turned.elsewhere(first)).isEqualTo(1);
        assertThat(twins(square()).clear(turned, first, 0)).isFalse();
    }

    private static Combination read(Proposal p) {
        double[] xy = p.ports().stream()
                .flatMapToDouble(o -> java.util.stream.DoubleStream.of(o.at().xMm(), o.at().yMm()))
                .toArray();
        return layout(xy[0], xy[1], xy[2], xy[3], xy[4], xy[5]);
    }

    private static Combination ring() {
        Spots three = new Spots("on a circle", true, new double[] {0, 52, -52}, new double[] {60, -30, -30}, 1);
        return new Combination(new Sizes.Choice(3, 32, 3, 32, null), three, three, 9, 9, 0);
    }

    private static Combination layout(double ax, double ay, double bx, double by, double fx, double fy) {
        Spots in = new Spots("as a pair across the middle", true, new double[] {ax, bx}, new double[] {ay, by}, 1);
        return new Combination(
                HOLES,
                in,
                new Spots("where it has most room", false, new double[] {fx}, new double[] {fy}, 1),
                9,
                9,
                0);
    }

    private static TestKiln square() {
        return TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(300), TestKiln.mm(300), TestKiln.deg(0)));
    }

    private static Twins twins(TestKiln k) {
        Design d = k.build();
        KilnGeometry kiln = KilnGeometry.of(d);
        return Twins.of(kiln, new Sites(d, kiln, new LayoutLimits(d, LimitTable.load())), HOLES);
    }
}
