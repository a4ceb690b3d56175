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

/** What is found with a number asked for is not missed where the numbers are open. */
class OpenNumbersTest {
    /** Inlets and flues of a pair each are best on the same long axis when found apart, over one another; only moved together do they show what they reach. */
    @Test
    void anOvalKilnGetsItsWidestEvenLayoutWhateverTheNumberOfFlues() {
        Design d = oval();
        Proposal open = Proposer.propose(d, new Wishes(2, null, 35.0, null), Progress.none())
                .best()
                .get(0);
        for (int flues = 1; flues <= 2; flues++) {
            Proposal asked = Proposer.propose(d, new Wishes(2, flues, 35.0, null), Progress.none())
                    .best()
                    .get(0);
            assertThat(open.margin())
                    .as("%s against %s", open.arrangement(), asked.arrangement())
                    .isGreaterThan(asked.margin() * (1 - SlabSearch.SYMMETRY_WORTH));
        }
    }

    private static Design oval() {
        TestKiln k = TestKiln.of(new PlanShape.OvalPlan(10, TestKiln.mm(489), TestKiln.mm(185.5), TestKiln.deg(0)));
        k.height = TestKiln.mm(492.5);
        for (double up : new double[] {50, 181, 312, 442.5}) {
            k.wallElement("E" + up, up, 16, 19, 0, null);
        }
        k.fitting("leg 0", FittingKind.LEG, On.FLOOR, null, TestKiln.at(108, 197), 50);
        k.fitting("leg 1", FittingKind.LEG, On.FLOOR, null, TestKiln.at(205, 229), 50);
        return k.oversize(2).build();
    }

    /** A single flue a little off the middle goes there where that costs nothing. */
    @Test
    void aSingleFlueStandsInTheMiddleWhereThatIsAsGood() {
        Design d = oval();
        KilnGeometry kiln = KilnGeometry.of(d);
        LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
        Sites sites = new Sites(d, kiln, limits);
        Together together = new Together(sites, kiln, new Tender(kiln, limits), Progress.none());
        Sizes.Choice c = new Sizes.Choice(2, 35, 1, 51, null);
        Spots in = new Spots("placed one by one", false, new double[] {-120, 120}, new double[] {40, 30}, 0);
        Spots off = new Spots("where it has most room", false, new double[] {1.5}, new double[] {4}, 0);
        Spots middle = new Spots("in the middle", true, new double[] {0}, new double[] {0}, 0);
        Combination any = new Combination(c, in, off, 0, Scale.FREE, 0);
        Combination free = together.combination(any, in, off);
        Combination even = together.combination(any, in, middle);
        assertThat(even.margin()).as("the middle is as good").isGreaterThanOrEqualTo(free.margin());
        assertThat(together.evener(free, List.of(even)).flues().family()).isEqualTo("in the middle");
    }
}
