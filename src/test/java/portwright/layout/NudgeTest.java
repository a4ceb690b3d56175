package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where a mark would be safe. */
class NudgeTest {
    /**
     * Away from a straight groove and no farther than needed: 99 of 100 pass there by a plain simulation of the bore at both its faces, and a
     * quarter millimetre less is not enough.
     */
    @Test
    void nudgeIsTheShortestThatIsSafe() {
        HoleOdds odds = Tolerance.odds(ToleranceTest.beside(2)).holes().get(0);
        assertThat(odds.meetsTarget()).isFalse();
        assertThat(odds.nudgeX()).isZero();
        DrillError e = DrillError.of(ToleranceTest.beside(2));
        double r95 = Math.sqrt(-2 * Math.log(0.05));
        Random r = new Random(17);
        int n = 400_000;
        double[] asks = new double[n];
        for (int i = 0; i < n; i++) {
            double stray = e.measureMm() / 1.96 * r.nextGaussian() - e.centreMm() / r95 * r.nextGaussian();
            double lean = 63.5 * Math.tan(e.tiltRad()) / r95 * r.nextGaussian();
            asks[i] = stray + Math.max(0, lean) + e.oversizeMm() / 2 * r.nextDouble();
        }
        Arrays.sort(asks);
        double needed = asks[n * 99 / 100] - 2;
        assertThat(-odds.nudgeY()).isCloseTo(needed, within(0.25));
        assertThat(odds.nudgedMeetsTarget()).isTrue();
    }

    /** By hand: of two safe places, over a slanting line 3.2 mm off and 5 mm to the left, the nearer; out of reach the least is told. */
    @Test
    void nudgeOfAKnownField() {
        Nudge near = Nudge.of((x, y) -> x <= -5 || y - x >= 4.5 ? 0 : 0.2, 0.2, 0.01);
        assertThat(Math.hypot(near.x(), near.y())).isCloseTo(4.5 / Math.sqrt(2), within(0.2));
        assertThat(near.stop()).isZero();
        Nudge far = Nudge.of((x, y) -> Math.max(0, 0.5 - 0.01 * y), 0.5, 0.01);
        assertThat(far.x()).isZero();
        assertThat(far.y()).isCloseTo(Nudge.REACH_MM, within(1e-6));
        assertThat(far.stop()).isCloseTo(0.3, within(1e-9));
        HoleOdds told = new HoleOdds("inlet A", false, 0.5, 0, Map.of(), far.x(), far.y(), far.stop());
        assertThat(new DrillOutlook(List.of(told), 0.5, List.of(), DrillError.of(ToleranceTest.beside(2))).lines())
                .singleElement()
                .asString()
                .contains(
                        "20 mm (13/16 in) to the back makes that 30, the least within 20 mm: the 1 aimed at is not reached there");
        assertThat(Nudge.of((x, y) -> 0, 0.01, 0.01)).isEqualTo(new Nudge(0, 0, 0.01));
    }

    /**
     * By hand: a lane between a wall behind and a post in front that widens aside, so that the safe place lies 15 mm off at 100° left of the back,
     * between two bearings of a ring, behind a saddle that is no safer than the mark.
     */
    @Test
    void nudgeFollowsANarrowLane() {
        double lane = Math.toRadians(-100);
        Nudge n = Nudge.of(
                (x, y) -> {
                    double along = x * Math.sin(lane) + y * Math.cos(lane);
                    double aside = Math.abs(x * Math.cos(lane) - y * Math.sin(lane));
                    return Math.min(1, Math.max(0, 0.09 - 0.006 * along) + 0.1 * aside);
                },
                0.09,
                0.01);
        assertThat(n.stop()).isLessThanOrEqualTo(0.01);
        assertThat(Math.hypot(n.x(), n.y())).isBetween(13.33, 15.1);
    }
}
