package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.review.Review;
import portwright.units.BothSystems;

/** Odds of a stop, and wander. */
class ToleranceTest {
    /** One inlet whose edge stays 27 mm from a long straight groove: 2 mm of spare, nothing else near. */
    static Design beside(double spare) {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
        k.slabElement("row", On.FLOOR, 14, 16, TestKiln.at(-390, 100), TestKiln.at(390, 100));
        return k.inlet("inlet A", 0, 100 - 7 - 25 - 17.5 - spare, 35).build();
    }

    @Tag("published")
    @Test
    void normalDistributionAgainstPrintedTables() {
        // any table of the standard normal distribution
        assertThat(Normal.below(1)).isCloseTo(0.841345, within(5e-7));
        assertThat(Normal.below(-2)).isCloseTo(0.022750, within(5e-7));
        assertThat(Normal.below(-4)).isCloseTo(3.1671e-5, within(5e-10));
    }

    @Test
    void oddsAgainstTheExactAnswerForAStraightEdge() {
        straightEdge(20_000, 0.5, 2);
        square(20_000);
    }

    @Tag("slow")
    @Test
    void oddsAgainstTheExactAnswerWithManyDrillings() {
        straightEdge(200_000, 0.5, 1, 2, 3);
        square(200_000);
    }

    private static void straightEdge(int draws, double... spares) {
        DrillError e = new DrillError(3, 2, Math.toRadians(3), 2);
        double tilt = e.tiltSigma(63.5);
        for (double spare : spares) {
            // the worse of both faces: no less than the hot face alone, no more than both faces added
            double square = Math.hypot(e.centreSigma(), e.measureSigma());
            HoleOdds odds = Tolerance.odds(beside(spare), e, draws).holes().get(0);
            double hot = Normal.straightEdge(spare, Math.hypot(square, tilt), 1);
            double cold = Normal.straightEdge(spare, square, 1);
            assertThat(odds.stop())
                    .as("spare %s", spare)
                    .isBetween(hot - 4 * odds.stopError(), hot + cold + 4 * odds.stopError());
        }
    }

    private static void square(int draws) {
        DrillError e = new DrillError(3, 2, 0, 2);
        HoleOdds odds = Tolerance.odds(beside(1), e, draws).holes().get(0);
        double exact = Normal.straightEdge(1, Math.hypot(e.centreSigma(), e.measureSigma()), 1);
        assertThat(odds.stop()).isCloseTo(exact, within(4 * Math.sqrt(exact * (1 - exact) / draws)));
    }

    @Test
    void oddsAgainstDirectSimulationThroughTheRules() {
        DrillError e = new DrillError(4, 0, 0, 0);
        int n = 1500;
        int stops = 0;
        SplittableRandom r = new SplittableRandom(5);
        for (int i = 0; i < n; i++) {
            double x = e.centreSigma() * r.nextGaussian();
            double y = 100 - 7 - 25 - 17.5 - 2 + e.centreSigma() * r.nextGaussian();
            TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
            k.slabElement("row", On.FLOOR, 14, 16, TestKiln.at(-390, 100), TestKiln.at(390, 100));
            var kiln = KilnGeometry.of(k.inlet("inlet A", x, y, 35).build());
            var h = kiln.holes().get(0);
            stops += kiln.grooves().get(0).footprint().distance(h.centre()) - h.drilledRadius() < 25 ? 1 : 0;
        }
        double p = stops / (double) n;
        assertThat(Tolerance.odds(beside(2), e, 40_000).holes().get(0).stop())
                .isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) / n)));
    }

    /** Everything at once, by a plain simulation of a leaning, widening bore beside a straight groove that was measured wrong. */
    @Test
    void oddsAgainstDirectSimulationOfALeaningBore() {
        DrillError e = new DrillError(2, 2, Math.toRadians(4), 2);
        double r95 = Math.sqrt(-2 * Math.log(0.05));
        double one95 = 1.96;
        Random r = new Random(11);
        int n = 400_000;
        int stops = 0;
        int square = 0;
        for (int i = 0; i < n; i++) {
            double stray = 2 / one95 * r.nextGaussian() - 2 / r95 * r.nextGaussian();
            double lean = 63.5 * Math.tan(Math.toRadians(4)) / r95 * r.nextGaussian();
            double wider = r.nextDouble();
            double left = 1.5 - stray - wider;
            stops += left - lean < 0 || left < 0 ? 1 : 0;
            square += left < 0 ? 1 : 0;
        }
        double p = stops / (double) n;
        HoleOdds odds = Tolerance.odds(beside(1.5), e, 20_000).holes().get(0);
        assertThat(odds.stop()).isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) * (1.0 / n + 1.0 / 20_000))));
        // the check would notice a program that forgets the lean
        assertThat(p - square / (double) n).isGreaterThan(0.02);
    }

    /**
     * Two inlets alike, each between two grooves, all measured wrong together: how often both come out inside, by a plain simulation of two leaning,
     * widening bores. One less the sum of their single chances is another number.
     */
    @Test
    void allHolesInsideAgainstDirectSimulation() {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
        double spare = 2;
        double half = 7 + 25 + 17.5 + spare;
        for (int side = -1; side <= 1; side += 2) {
            k.slabElement(
                    "row " + side, On.FLOOR, 14, 16, TestKiln.at(-390, side * half), TestKiln.at(390, side * half));
        }
        Design d = k.inlet("inlet A", -150, 0, 35).inlet("inlet B", 150, 0, 35).build();
        DrillError e = new DrillError(2, 2, Math.toRadians(2), 2);
        double r95 = Math.sqrt(-2 * Math.log(0.05));
        double one95 = 1.96;
        Random r = new Random(13);
        int n = 400_000;
        int inside = 0;
        int stops = 0;
        for (int i = 0; i < n; i++) {
            double measured = 2 / one95 * r.nextGaussian();
            int broken = 0;
            for (int hole = 0; hole < 2; hole++) {
                double off = 2 / r95 * r.nextGaussian() - measured;
                double lean = 63.5 * Math.tan(Math.toRadians(2)) / r95 * r.nextGaussian();
                double most = Math.max(Math.abs(off + lean), Math.abs(off));
                broken += most + r.nextDouble() > spare ? 1 : 0;
            }
            stops += broken;
            inside += broken == 0 ? 1 : 0;
        }
        double p = inside / (double) n;
        double bound = 1 - stops / (double) n;
        assertThat(p - bound).as("the bound is no probability").isGreaterThan(0.05);
        Tolerance.Odds odds = Tolerance.odds(d, e, 20_000);
        assertThat(odds.allInside()).isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) * (1.0 / n + 1.0 / 20_000))));
        assertThat(Tolerance.odds(d, e, 20_000)).as("the same each time").isEqualTo(odds);
        assertThat(DrillOutlook.of(d, new RuleBook(LimitTable.load()).check(Review.of(d)))
                        .allInside())
                .isEqualTo(Tolerance.odds(d).allInside());
    }

    /** Where the weakest line ends the room of a hole the rule book stops just beyond, and is content just before. */
    @Test
    void wanderEndsWhereTheWeakestSectionStops() {
        Wander w = null;
        for (Wander x : Tolerance.wander(row(100, 45))) {
            w = x.hole().equals("flue C") ? x : w;
        }
        int k = w.rules().indexOf("weakest-section");
        assertThat(k).isNotNegative();
        double far = w.allowedMm().get(k);
        double sx = Math.sin(Math.toRadians(w.bearings().get(k)));
        double sy = Math.cos(Math.toRadians(w.bearings().get(k)));
        assertThat(weakens(row(100 + (far - 0.3) * sx, 45 + (far - 0.3) * sy))).isFalse();
        assertThat(weakens(row(100 + (far + 0.3) * sx, 45 + (far + 0.3) * sy))).isTrue();
        assertThat(Tolerance.odds(row(100, 0)).holes().get(2).stop()).isEqualTo(1);
    }

    private static Design row(double x, double y) {
        return TestKiln.polygon(8, "17 in")
                .oversize(2)
                .flue("flue A", -100, 0, 64)
                .flue("flue B", 0, 0, 64)
                .flue("flue C", x, y, 64)
                .build();
    }

    private static boolean weakens(Design d) {
        return new RuleBook(LimitTable.load())
                .check(Review.geometryOnly(d), Set.of(RuleBook.Section.GEOMETRY)).findings().stream()
                        .anyMatch(f -> f.rule().equals("weakest-section") && f.severity() == Severity.STOP);
    }

    /** Within x in 95 of 100: of one distance the normal table's 1.960 deviations, of a radius the two-way 2.448. */
    @Tag("published")
    @Test
    void aTapeIsReadOneDistanceAtATimeAMarkIsMissedAnyWay() {
        DrillError e = new DrillError(1.5, 2, Math.toRadians(2), 2);
        assertThat(e.measureSigma()).isCloseTo(2 / 1.960, within(5e-4));
        assertThat(e.centreSigma()).isCloseTo(1.5 / 2.448, within(5e-4));
        assertThat(e.words()).contains("the elements together off by up to 2 mm each way as measured");
    }

    @Test
    void nudgeLeadsAwayAndHelps() {
        HoleOdds odds = Tolerance.odds(beside(0.5)).holes().get(0);
        assertThat(odds.meetsTarget()).isFalse();
        assertThat(odds.nudgeY()).isNegative();
        assertThat(odds.stopNudged()).isLessThanOrEqualTo(0.01);
        assertThat(odds.byRule()).containsKey("element-clearance");
    }

    @Test
    void wanderTowardsAStraightEdge() {
        Wander w = Tolerance.wander(beside(2)).get(0);
        assertThat(w.allowedMm().get(0)).isCloseTo(2, within(1e-3));
        assertThat(w.allowedMm().get(2)).isCloseTo(2 * Math.sqrt(2), within(2e-3));
        assertThat(w.rules().get(0)).isEqualTo("element-clearance");
        assertThat(w.allowedMm().get(8)).isEqualTo(Wander.MOST_MM);
        assertThat(w.leastMm()).isCloseTo(2, within(1e-3));
    }

    /** By hand: groove from 192 mm up, 25 mm of brick, half of 35 mm: the middle may rise to 149.5 mm; straight sideways nothing comes near. */
    @Test
    void wallHoleUnderARowOfElements() {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
        k.wallElement("E1", 200, 16, 19, 0, java.util.List.of(1));
        Wander w =
                Tolerance.wander(k.wallInlet("inlet A", 1, 0, 140, 35).build()).get(0);
        assertThat(w.wall()).isTrue();
        assertThat(w.allowedMm().get(0)).isCloseTo(9.5, within(0.1));
        assertThat(w.rules().get(0)).isEqualTo("element-clearance");
        assertThat(w.allowedMm().get(1)).isCloseTo(9.5 * Math.sqrt(2), within(0.15));
        assertThat(w.allowedMm().get(2)).isEqualTo(Wander.MOST_MM);
        assertThat(DrillOutlook.towards(w)).isEqualTo("the top");
    }

    /** The words give both parts of the shift, as a ruler needs them. */
    @Test
    void aShiftIsToldAlongBothAxes() {
        HoleOdds odds =
                new HoleOdds("inlet A", false, 0.2, 0.003, java.util.Map.of("edge-distance", 0.2), 2.8, -6.8, 0.001);
        String words = new DrillOutlook(
                        java.util.List.of(odds), 0.8, Tolerance.wander(beside(2)), new DrillError(1.5, 2, 0.03, 2))
                .words();
        assertThat(BothSystems.metricOnly(words))
                .contains("its mark 2.8 mm to the right and 6.8 mm to the front makes that 0.1.");
        assertThat(words).contains("80 of 100").contains("forbids drilling or lighting, under the 99 aimed at");
    }

    /** A wall port 1.5 mm below where the groove's clearance ends, by a plain simulation of a leaning, widening bore that starts outside. */
    @Test
    void wallOddsAgainstDirectSimulationOfALeaningBore() {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
        k.wallElement("E1", 200, 16, 19, 0, java.util.List.of(1));
        Design d = k.wallInlet("inlet A", 1, 0, 200 - 8 - 25 - 17.5 - 1.5, 35).build();
        double thick = KilnGeometry.of(d).thickness(On.WALL);
        DrillError e = new DrillError(2, 2, Math.toRadians(3), 2);
        double r95 = Math.sqrt(-2 * Math.log(0.05));
        double one95 = 1.96;
        Random r = new Random(12);
        int n = 400_000;
        int stops = 0;
        for (int i = 0; i < n; i++) {
            double left = 1.5 - (2 / one95 * r.nextGaussian() - 2 / r95 * r.nextGaussian()) - r.nextDouble();
            double lean = thick * Math.tan(Math.toRadians(3)) / r95 * r.nextGaussian();
            stops += left - lean < 0 || left < 0 ? 1 : 0;
        }
        HoleOdds odds = Tolerance.odds(d, e, 20_000).holes().get(0);
        double p = stops / (double) n;
        assertThat(odds.stop()).isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) * (1.0 / n + 1.0 / 20_000))));
        assertThat(odds.nudgeY()).isNegative();
        assertThat(odds.byRule()).containsOnlyKeys("element-clearance");
    }
}
