package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.Drilling;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;

/** A part that is called full before any search has no place that passes; one with a place is never called so. */
class NowhereTest {
    private static final double SIDE_MM = 210;

    @Test
    void aFullFloorHasNoPlaceOnADenseGrid() {
        int full = 0;
        int open = 0;
        for (int seed = 0; seed < 40; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            TestKiln k = TestKiln.polygon(8, "17 in");
            double pitch = 30 + r.nextDouble() * 90;
            for (double y = -220; y <= 220; y += pitch) {
                k.slabElement("row " + y, On.FLOOR, 14, 16, TestKiln.at(-240, y), TestKiln.at(240, y));
            }
            Site s = sites(k.build()).slab(On.FLOOR, 32);
            boolean nowhere = CentreRegion.nowhere(s);
            boolean found = false;
            for (double x = -SIDE_MM; x <= SIDE_MM; x += 2) {
                for (double y = -SIDE_MM; y <= SIDE_MM; y += 2) {
                    found |= s.hole(x, y) >= 0;
                }
            }
            assertThat(nowhere && found).as("seed %s", seed).isFalse();
            full += nowhere ? 1 : 0;
            open += found ? 1 : 0;
        }
        assertThat(full).isGreaterThan(3);
        assertThat(open).isGreaterThan(3);
    }

    @Test
    void aFullWallHasNoPlaceOnADenseGrid() {
        assertThat(wall(45).nowhere()).isTrue();
        assertThat(most(wall(45))).isNegative();
        assertThat(most(wall(450))).isPositive();
        assertThat(wall(450).nowhere()).isFalse();
    }

    /** Rings 40 mm apart, in panel 3 alone one of them 15 mm lower: 55 mm above it are the widest gap, no hole fits, and the nearest miss lies there. */
    @Test
    void theNearestMissIsLookedForInEveryPanel() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (double v = 20; v < 457; v += 40) {
            k.wallElement("ring " + v, v, 16, 20, 0, v == 100 ? List.of(1, 2, 4, 5, 6, 7, 8) : null);
        }
        k.wallElement("low ring", 85, 16, 20, 0, List.of(3));
        WallSite s = sites(k.build()).wall(32);
        assertThat(s.nowhere()).isTrue();
        double most = Double.NEGATIVE_INFINITY;
        for (int panel = 1; panel <= 8; panel++) {
            for (double u = -66; u <= 66; u += 6) {
                for (double v = s.radius; v <= s.kiln.height() / 3; v += 2) {
                    most = Math.max(most, s.margin(s.hole("", panel, u, v)));
                }
            }
        }
        Spots miss = new WallSearch(s, 1, Progress.none()).run().get(0);
        assertThat(miss.panels()).containsExactly(3);
        assertThat(miss.y()[0]).isCloseTo(112.5, within(3.0));
        assertThat(miss.margin()).isGreaterThan(most - 0.02);
    }

    private static double most(WallSite s) {
        double most = Double.NEGATIVE_INFINITY;
        for (double u = -60; u <= 60; u += 20) {
            for (double v = 20; v <= 430; v += 2) {
                most = Math.max(most, s.margin(s.hole("", 1, u, v)));
            }
        }
        return most;
    }

    private static WallSite wall(double pitchMm) {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (double v = 20; v < 457; v += pitchMm) {
            k.wallElement("ring " + v, v, 16, 20, 0, null);
        }
        return sites(k.build()).wall(32);
    }

    /**
     * Square of 500 mm with grooves of 16 mm across the floor 60 mm apart, but for one gap of 98 mm: brick of 98 − 16 − 34 = 48 mm is left beside a hole
     * of 32 mm drilled to 34, where 25 mm on both sides are asked. With those kept to one groove 23 mm are left to the other, and one stop. Wherever the
     * design has its inlet, the nearest miss lies in that gap, 25 + 17 + 8 = 50 mm off the groove at 118 that lies farther from the middle.
     */
    @Test
    void theNearestMissIsTheSameWhereverTheInletWas() {
        for (double[] own : new double[][] {{0, 69}, {0, -130}, {200, 200}, {-120, 20}}) {
            TestKiln k = stripes().inlet("inlet", own[0], own[1], 32).flue("flue", 0, 0, 38);
            Proposals p = Proposer.propose(k.build(), new Wishes(1, 1, 32.0, 38.0, On.FLOOR), Progress.none());
            assertThat(p.best()).isEmpty();
            Term worst = p.nearestMiss().limiting();
            assertThat(worst.rule()).isEqualTo("element-clearance");
            assertThat(worst.measured()).as("inlet at %s", own).isCloseTo(23, within(0.01));
            assertThat(stops(p.nearestMiss())).isEqualTo(1);
            Place at = p.nearestMiss().ports().get(0).at();
            assertThat(at.yMm()).isCloseTo(68, within(0.01));
            assertThat(Math.abs(at.xMm())).isLessThan(30);
        }
    }

    /** Two inlets find room in the same gap, beside each other. */
    @Test
    void severalInletsComeAsNear() {
        TestKiln k =
                stripes().inlet("a", -60, -130, 32).inlet("b", 60, -130, 32).flue("flue", 0, 0, 51);
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 1, 32.0, 51.0, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.nearestMiss().limiting().rule()).isEqualTo("element-clearance");
        assertThat(p.nearestMiss().limiting().measured()).isCloseTo(23, within(0.01));
        assertThat(stops(p.nearestMiss())).isEqualTo(2);
    }

    private static long stops(Proposal p) {
        return p.check().findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .count();
    }

    private static TestKiln stripes() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(500), TestKiln.mm(500), TestKiln.deg(0)));
        for (double y : new double[] {-220, -160, -100, -40, 20, 118, 178, 238}) {
            k.slabElement("row " + y, On.FLOOR, 16, 20, TestKiln.at(-245, y), TestKiln.at(245, y));
        }
        k.drilling = new Drilling(TestKiln.mm(2), null, null);
        return k;
    }

    /** A size that was asked for and cannot go into the chamber is what is named, not the flues that the search chose to it. */
    @Test
    void aHoleTooLargeForTheChamberIsNamed() {
        Proposals p = Proposer.propose(
                TestKiln.polygon(8, "6 in").build(), new Wishes(1, null, 177.8, null, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.impossible())
                .singleElement()
                .satisfies(i ->
                        assertThat(i.words()).contains("The inlet asked for").contains("Ask for a smaller inlet"));
        assertThat(p.misses().get(0)).contains("chamber");
    }

    private static Sites sites(Design d) {
        return new Sites(d, KilnGeometry.of(d), new LayoutLimits(d, LimitTable.load()));
    }
}
