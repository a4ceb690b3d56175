package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Role;
import portwright.review.Review;

/** A drill that wanders until the flame strikes a coil: odds, room and region know it as the rule does. */
class FlameWanderTest {
    /** Square kiln, coils of 12 mm in a groove 300 mm up, their middle 400 mm from the kiln's. */
    private static TestKiln kiln() {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(2);
        k.wallElement("E1", 300, 16, 19, 0, null);
        return k;
    }

    /** The place along x where the rule begins to stop, by halving. */
    private static double edge() {
        double good = 200;
        double bad = 370;
        while (bad - good > 0.001) {
            double middle = (good + bad) / 2;
            if (stops(kiln().inlet("inlet A", middle, 0, 35).build(), "flame-on-element")) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return good;
    }

    private static boolean stops(Design d, String rule) {
        return new RuleBook(LimitTable.load())
                .check(Review.geometryOnly(d), Set.of(RuleBook.Section.GEOMETRY)).findings().stream()
                        .anyMatch(f -> f.severity() == Severity.STOP
                                && (rule == null || f.rule().equals(rule))
                                && f.parts().contains("inlet A"));
    }

    @Test
    void aMarkNearTheCoilsIsNotSafe() {
        double edge = edge();
        assertThat(edge).as("the flame is what stops").isBetween(250.0, 320.0);
        Design d = kiln().inlet("inlet A", edge - 1, 0, 35).build();
        HoleOdds odds = Tolerance.odds(d).holes().get(0);
        assertThat(odds.meetsTarget()).isFalse();
        assertThat(odds.byRule()).containsOnlyKeys("flame-on-element");
        assertThat(odds.nudgeX()).isNegative();
        DrillError e = DrillError.of(d);
        double sigma = Math.hypot(Math.hypot(e.centreSigma(), e.measureSigma()), e.tiltSigma(63.5));
        double exact = Normal.straightEdge(1, sigma, 0);
        assertThat(odds.stop()).isCloseTo(exact, within(5 * odds.stopError()));
        Wander w = Tolerance.wander(d).get(0);
        int right = w.bearings().indexOf(90.0);
        assertThat(w.allowedMm().get(right)).isCloseTo(1, within(0.01));
        assertThat(w.rules().get(right)).isEqualTo("flame-on-element");
    }

    /** In kilns with shelves that catch the flame, and without: no stop just within the room told, in any direction, and one just beyond its end. */
    @Test
    void roomEndsWhereTheRuleBookStops() {
        int flames = 0;
        for (int seed = 0; seed < 6; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            for (int k = 0; k < 4; k++) {
                double far = 80 + 120 * r.nextDouble();
                double turn = 2 * Math.PI * r.nextDouble();
                Place at = TestKiln.at(far * Math.sin(turn), far * Math.cos(turn));
                Design d = inlet(seed, at.xMm(), at.yMm());
                if (stops(d, null)) {
                    continue;
                }
                Wander w = Tolerance.wander(d).get(0);
                for (int b = 0; b < w.bearings().size(); b += 3) {
                    double room = w.allowedMm().get(b);
                    double sx = Math.sin(Math.toRadians(w.bearings().get(b)));
                    double sy = Math.cos(Math.toRadians(w.bearings().get(b)));
                    double within = room - 0.3;
                    if (within > 0) {
                        assertThat(stops(inlet(seed, at.xMm() + within * sx, at.yMm() + within * sy), null))
                                .as("seed %d, %s, %s", seed, at, w)
                                .isFalse();
                    }
                    if (room < Wander.MOST_MM) {
                        assertThat(stops(inlet(seed, at.xMm() + (room + 0.3) * sx, at.yMm() + (room + 0.3) * sy), null))
                                .as("seed %d, %s, %s", seed, at, w)
                                .isTrue();
                        flames += w.rules().get(b).equals("flame-on-element") ? 1 : 0;
                    }
                }
            }
        }
        assertThat(flames).isGreaterThan(2);
    }

    private static Design inlet(int seed, double x, double y) {
        return SomeKilns.of(seed).inlet("inlet A", x, y, 35).build();
    }

    /** A wall inlet under a row of coils: the jet widens upward into it. */
    @Test
    void aWallInletUnderCoils() {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
        k.wallElement("E1", 300, 16, 19, 0, List.of(3));
        double good = 60;
        double bad = 250;
        while (bad - good > 0.01) {
            double middle = (good + bad) / 2;
            Design d = wall(middle);
            if (stops(d, "flame-on-element")) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        Design d = wall(good - 1);
        assertThat(Tolerance.odds(d).holes().get(0).byRule()).containsKey("flame-on-element");
        Wander w = Tolerance.wander(d).get(0);
        assertThat(w.wall()).isTrue();
        assertThat(w.allowedMm().get(0)).isCloseTo(1, within(0.2));
        assertThat(w.rules().get(0)).isEqualTo("flame-on-element");
    }

    private static Design wall(double up) {
        TestKiln k = TestKiln.polygon(4, "800 mm").oversize(0);
        k.wallElement("E1", 300, 16, 19, 0, List.of(3));
        return k.wallInlet("inlet A", 1, 0, up, 35).build();
    }

    @Test
    void theRegionEndsThere() {
        double edge = edge();
        var region = CentreRegion.of(kiln().build(), On.FLOOR, Role.INLET, 35).alone();
        assertThat(region.contains(new Pt(edge - 0.5, 0))).isTrue();
        assertThat(region.contains(new Pt(edge + 0.5, 0))).isFalse();
    }
}
