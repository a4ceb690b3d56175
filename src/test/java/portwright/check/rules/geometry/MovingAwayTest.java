package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Mark;
import portwright.geometry.Pt;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Size2;

/** A hole moved away from the nearest point of a single obstacle never comes nearer to it, and the move that the remedy names mends the finding. */
class MovingAwayTest {
    private static final int RUNS = 150;

    /** Limits so wide that the distance is always told. */
    private static final double WIDE = 2000;

    private interface Scene {
        TestKiln with(double x, double y);
    }

    private static TestKiln big(Random r) {
        TestKiln k = TestKiln.of(new PlanShape.PolygonPlan(5 + r.nextInt(8), mm(2000), deg(r.nextInt(60))));
        k.height = mm(500);
        return k;
    }

    private static double off(Random r) {
        return (r.nextDouble() - 0.5) * 500;
    }

    @Test
    void fittings() {
        for (int seed = 1; seed <= RUNS; seed++) {
            long s = seed;
            run(seed, "fitting-clearance", (x, y) -> {
                Random r = new Random(s);
                TestKiln k = big(r);
                boolean box = r.nextBoolean();
                k.fittings.add(new Fitting(
                        "leg",
                        FittingKind.LEG,
                        null,
                        null,
                        On.FLOOR,
                        null,
                        at(off(r), off(r)),
                        box ? null : mm(10 + r.nextInt(80)),
                        box ? new Size2(mm(20 + r.nextInt(200)), mm(5 + r.nextInt(100))) : null,
                        deg(r.nextInt(180)),
                        null,
                        null,
                        null,
                        mm(WIDE)));
                return k.inlet("A", x, y, 20 + r.nextInt(40));
            });
        }
    }

    @Test
    void grooves() {
        for (int seed = 1; seed <= RUNS; seed++) {
            long s = seed;
            run(seed, "element-clearance", (x, y) -> {
                Random r = new Random(s);
                return big(r).slabElement(
                                "EF", On.FLOOR, 10 + r.nextInt(20), 20, at(off(r), off(r)), at(off(r), off(r)))
                        .inlet("A", x, y, 20 + r.nextInt(40))
                        .limit("element-clearance", "limit", WIDE);
            });
        }
    }

    @Test
    void otherHoles() {
        for (int seed = 1; seed <= RUNS; seed++) {
            long s = seed;
            run(seed, "port-spacing", (x, y) -> {
                Random r = new Random(s);
                return big(r).inlet("B", off(r), off(r), 20 + r.nextInt(40))
                        .inlet("A", x, y, 20 + r.nextInt(40))
                        .limit("port-spacing", "limit", 2 * WIDE);
            });
        }
    }

    private static void run(int seed, String rule, Scene scene) {
        Random r = new Random(-seed);
        double x = off(r);
        double y = off(r);
        Finding before = GeoBench.alone(scene.with(x, y), rule).get(0);
        Mark m = before.marks().get(0);
        // the mark runs between the hole's centre and the obstacle's nearest point
        Pt hole = new Pt(x, y);
        Pt near = m.a().distance(hole) < 1e-9 ? m.b() : m.a();
        double d = near.distance(hole);
        if (d < 1) {
            return;
        }
        // a centre within the obstacle leaves it over the nearest point of its edge
        double out =
                !rule.equals("port-spacing") && before.measured().value() + radius(scene.with(x, y)) < -1e-9 ? -1 : 1;
        double last = before.measured().value();
        for (int i = 1; i <= 5; i++) {
            double by = i * 10 * (1 + r.nextDouble());
            Pt to = hole.plus(out * (hole.x() - near.x()) / d * by, out * (hole.y() - near.y()) / d * by);
            Finding after = GeoBench.alone(scene.with(to.x(), to.y()), rule).get(0);
            assertThat(after.measured().value())
                    .as("%s, seed %d, by %s mm", rule, seed, by)
                    .isEqualTo(before.measured().value() + by, org.assertj.core.api.Assertions.within(1e-6));
            last = Math.max(last, after.measured().value());
        }
        assertThat(last).isGreaterThan(before.measured().value());
    }

    private static double radius(TestKiln k) {
        return k.ports.get(k.ports.size() - 1).diameter().mm() / 2 + 1;
    }

    /** A hole in the middle of a long bar is sent out over the nearer side, not deeper in. */
    @Test
    void theRemedyLeadsOutOfAnObstacle() {
        TestKiln k = AtTheLimitTest.square().inlet("A", 30, 100, 40);
        k.fittings.add(new Fitting(
                "bar",
                FittingKind.STAND_BAR,
                null,
                null,
                On.FLOOR,
                null,
                at(0, 100),
                null,
                new Size2(mm(80), mm(400)),
                null,
                null,
                null,
                null,
                null));
        Finding f = GeoBench.alone(k, "fitting-clearance").get(0);
        // edge at x = 40: 10 to the edge, 21 of radius, 25 of clearance
        assertThat(f.remedy()).isEqualTo("Move A 56.0 mm (2 1/4 in) to the right, seen from above.");
        TestKiln g = AtTheLimitTest.square()
                .slabElement("EF", On.FLOOR, 16, 20, at(100, -150), at(100, 150))
                .inlet("A", 105, 0, 40);
        // away from the chamber's middle: edge at x = 108, 3 + 21 + 35
        assertThat(GeoBench.alone(g, "element-clearance").get(0).remedy())
                .isEqualTo("Move A 59.0 mm (2 3/8 in) away from the centre.");
    }

    /** Across parts: a floor hole moved straight off a wall never nears its grooves, a wall hole moved up never nears the floor's. */
    @Test
    void acrossParts() {
        Random r = new Random(7);
        for (int run = 0; run < RUNS; run++) {
            double x = 200 + r.nextInt(70);
            double y = (r.nextDouble() - 0.5) * 300;
            double v = 10 + r.nextInt(40);
            double last = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < 6; i++) {
                List<Finding> f = GeoBench.alone(
                        AtTheLimitTest.square()
                                .wallElement("E1", v, 16, 20, 0, List.of(2))
                                .inlet("A", x - 8 * i, y, 40)
                                .limit("element-clearance", "limit", WIDE),
                        "element-clearance");
                assertThat(f).hasSize(1);
                assertThat(f.get(0).measured().value())
                        .as("run %d, step %d", run, i)
                        .isGreaterThanOrEqualTo(last - 1e-6);
                last = f.get(0).measured().value();
            }
            last = Double.NEGATIVE_INFINITY;
            double groove = 220 + r.nextInt(60);
            for (int i = 0; i < 6; i++) {
                List<Finding> f = GeoBench.alone(
                        AtTheLimitTest.square()
                                .slabElement("EF", On.FLOOR, 16, 20, at(groove, -150), at(groove, 150))
                                .wallInlet("A", 2, 0, 25 + 9 * i, 40)
                                .limit("element-clearance", "limit", WIDE),
                        "element-clearance");
                assertThat(f.get(0).measured().value())
                        .as("run %d, step %d", run, i)
                        .isGreaterThanOrEqualTo(last - 1e-6);
                last = f.get(0).measured().value();
            }
        }
    }

    /** The flame of a hole moved away from the wall never nears a coil there. */
    @Test
    void flameFromACoil() {
        Random r = new Random(8);
        for (int run = 0; run < RUNS; run++) {
            double v = 40 + r.nextInt(350);
            double y = (r.nextDouble() - 0.5) * 200;
            double last = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < 6; i++) {
                List<Finding> f = GeoBench.alone(
                        AtTheLimitTest.square()
                                .wallElement("E1", v, 16, 20, 0, List.of(2))
                                .inlet("A", 260 - 25 * i, y, 40)
                                .limit("flame-on-element", "caution", WIDE),
                        "flame-on-element");
                assertThat(f.get(0).measured().value())
                        .as("run %d, step %d", run, i)
                        .isGreaterThanOrEqualTo(last - 1e-9);
                last = f.get(0).measured().value();
            }
        }
    }

    /** From the rim a hole moved toward the middle never nears; from a box outside the wall one moved square to that wall. */
    @Test
    void rimAndBoxOutside() {
        Random r = new Random(9);
        for (int run = 0; run < RUNS; run++) {
            double bearing = 2 * Math.PI * r.nextDouble();
            double out = 250 + 30 * r.nextDouble();
            for (String rule : List.of("edge-distance", "fitting-clearance")) {
                double last = Double.NEGATIVE_INFINITY;
                for (int i = 0; i < 6; i++) {
                    double back = i * 20;
                    boolean rim = rule.equals("edge-distance");
                    double x = rim ? (out - back) * Math.sin(bearing) : out - back;
                    double y = rim ? (out - back) * Math.cos(bearing) : 100 * Math.sin(bearing);
                    TestKiln k = AtTheLimitTest.square()
                            .inlet("A", x, y, 40)
                            .box("box", FittingKind.CONTROL_BOX, On.WALL, 2, at(20, 130), 150, 220, 30.0)
                            .limit("edge-distance", "caution", WIDE)
                            .limit("fitting-clearance", "control-box", WIDE);
                    double now = GeoBench.alone(k, rule).get(0).measured().value();
                    assertThat(now).as("%s, run %d, step %d", rule, run, i).isGreaterThanOrEqualTo(last - 1e-9);
                    last = now;
                }
            }
        }
    }
}
