package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.On;
import portwright.model.PlanShape;

/**
 * Distances through the brick against a search over the bore: a net of points of the cylinder, drawn ever closer round the nearest, each with its
 * plain distance to the groove. Cases are seeded, many with a bore that lies almost along the groove.
 */
class SolidsTest {
    private static final double CLOSE = 1e-6;

    private static TestKiln square(double turn) {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(600), mm(600), deg(turn)));
        k.height = mm(450);
        return k;
    }

    /** Least distance from a point of the bore to something whose distance to any point is known and convex. */
    private static double search(Bore bore, ToDoubleFunction<Pt3> to) {
        Pt3 side = Math.abs(bore.axis().z()) > 0.5 ? new Pt3(1, 0, 0) : new Pt3(0, 0, 1);
        Pt3 other = new Pt3(
                bore.axis().y() * side.z() - bore.axis().z() * side.y(),
                bore.axis().z() * side.x() - bore.axis().x() * side.z(),
                bore.axis().x() * side.y() - bore.axis().y() * side.x());
        double best = Double.POSITIVE_INFINITY;
        double[] at = {bore.length() / 2, 0, 0};
        double[] span = {bore.length() / 2, bore.radius(), bore.radius()};
        for (int round = 0; round < 40; round++) {
            double[] middle = at.clone();
            for (int i = -4; i <= 4; i++) {
                double s = Math.max(0, Math.min(bore.length(), middle[0] + span[0] * i / 4));
                for (int j = -4; j <= 4; j++) {
                    for (int k = -4; k <= 4; k++) {
                        double p = middle[1] + span[1] * j / 4;
                        double q = middle[2] + span[2] * k / 4;
                        double r = Math.hypot(p, q);
                        if (r > bore.radius()) {
                            p *= bore.radius() / r;
                            q *= bore.radius() / r;
                        }
                        double d = to.applyAsDouble(new Pt3(
                                bore.hot().x() + s * bore.axis().x() + p * side.x() + q * other.x(),
                                bore.hot().y() + s * bore.axis().y() + p * side.y() + q * other.y(),
                                bore.hot().z() + s * bore.axis().z() + p * side.z() + q * other.z()));
                        if (d < best) {
                            best = d;
                            at = new double[] {s, p, q};
                        }
                    }
                }
            }
            for (int i = 0; i < 3; i++) {
                span[i] *= 0.6;
            }
        }
        return best;
    }

    private static double distance(Bore bore, GrooveSolid groove, KilnGeometry kiln) {
        return Solids.distance(bore, groove.solids(kiln), Double.POSITIVE_INFINITY);
    }

    private static double toSlot(Pt3 p, GrooveSolid.OnSlab g, double z0) {
        double flat = Math.max(0, g.strip().distance(p.plan()));
        double up = Math.max(0, Math.max(z0 - p.z(), p.z() - z0 - g.depth()));
        return Math.hypot(flat, up);
    }

    /** A level groove is a prism: its plan is a four-sided outline. */
    private static double toLevelGroove(Pt3 p, GrooveSolid.OnWall g) {
        Panel n = g.panel();
        Outline plan = new Outline(List.of(
                n.plan(n.uMin(0), 0),
                n.plan(n.uMin(g.depth()), g.depth()),
                n.plan(n.uMax(g.depth()), g.depth()),
                n.plan(n.uMax(0), 0)));
        double flat = Math.max(0, -plan.depth(p.plan()));
        double up = Math.max(0, Math.max(g.bottom() - p.z(), p.z() - g.top()));
        return Math.hypot(flat, up);
    }

    /** The groove runs beside the wall port and almost square to its wall, so that it lies along the bore but for a fraction of a degree. */
    @Test
    void wallPortAlongAFloorGroove() {
        Random r = new Random(11);
        for (int seed = 0; seed < 40; seed++) {
            double turn = seed % 4 == 0 ? 0 : 90 * r.nextDouble();
            double tilt = Math.toRadians((r.nextDouble() - 0.5) * Math.pow(10, -seed % 5));
            double u = 25 + 50 * r.nextDouble();
            double from = 100 + 150 * r.nextDouble();
            Pt a = new Pt(u, from).turned(Math.toRadians(turn));
            Pt b = new Pt(u + Math.sin(tilt) * 400, from + Math.cos(tilt) * 400).turned(Math.toRadians(turn));
            KilnGeometry kiln = KilnGeometry.of(square(turn)
                    .slabElement("EF", On.FLOOR, 16, 20, at(a.x(), a.y()), at(b.x(), b.y()))
                    .wallInlet("A", 1, 0, 21 + 40 * r.nextDouble(), 40)
                    .build());
            Bore bore = Bore.of(kiln, kiln.holes().get(0));
            GrooveSolid.OnSlab groove = (GrooveSolid.OnSlab) kiln.grooves().get(0);
            assertThat(distance(bore, groove, kiln))
                    .as("case %d: turned %s°, tilt %s", seed, turn, tilt)
                    .isCloseTo(search(bore, p -> toSlot(p, groove, -groove.depth())), within(CLOSE));
        }
    }

    @Test
    void slabHoleBesideAWallGroove() {
        Random r = new Random(12);
        for (int seed = 0; seed < 30; seed++) {
            TestKiln k = TestKiln.of(new PlanShape.PolygonPlan(6 + r.nextInt(5), mm(560), deg(60 * r.nextDouble())));
            k.height = mm(450);
            k.wallElement("E1", 20 + 40 * r.nextDouble(), 16, 20, 0, List.of(1));
            Panel panel = KilnGeometry.of(k.build()).panel(1);
            double past = panel.width() * (r.nextDouble() * 1.4 - 0.7);
            Pt c = panel.plan(past, -25 - 30 * r.nextDouble());
            KilnGeometry kiln = KilnGeometry.of(k.inlet("A", c.x(), c.y(), 40).build());
            Bore bore = Bore.of(kiln, kiln.holes().get(0));
            GrooveSolid.OnWall groove = (GrooveSolid.OnWall) kiln.grooves().get(0);
            assertThat(distance(bore, groove, kiln))
                    .as("case %d", seed)
                    .isCloseTo(search(bore, p -> toLevelGroove(p, groove)), within(CLOSE));
        }
    }

    /** A sloped groove contains its level slices at every depth and is nearer than none of them. */
    @Test
    void slopedGrooveAgainstItsSlices() {
        Random r = new Random(13);
        for (int seed = 0; seed < 6; seed++) {
            TestKiln k = square(90 * r.nextDouble());
            k.wallElement("E1", 30 + 30 * r.nextDouble(), 16, 20, 5 + 30 * r.nextDouble(), List.of(1));
            Pt c = KilnGeometry.of(k.build()).panel(1).plan(200 * (r.nextDouble() - 0.5), -22 - 20 * r.nextDouble());
            KilnGeometry kiln = KilnGeometry.of(k.inlet("A", c.x(), c.y(), 40).build());
            Bore bore = Bore.of(kiln, kiln.holes().get(0));
            GrooveSolid.OnWall g = (GrooveSolid.OnWall) kiln.grooves().get(0);
            Panel n = g.panel();
            double least = search(bore, p -> {
                Pt local = n.local(p.plan());
                return Solids.least(0, g.depth(), w -> {
                    double u = Math.max(n.uMin(w), Math.min(n.uMax(w), local.x()));
                    double v = Math.max(g.bottomAt(w), Math.min(g.top(), p.z()));
                    return Math.sqrt((u - local.x()) * (u - local.x())
                            + (v - p.z()) * (v - p.z())
                            + (w - local.y()) * (w - local.y()));
                });
            });
            assertThat(distance(bore, g, kiln)).as("case %d", seed).isCloseTo(least, within(CLOSE));
        }
    }

    /** Two bores through the corner of neighbouring panels; almost flush panels lay them side by side. */
    @Test
    void boresOfNeighbouringPanels() {
        Random r = new Random(14);
        for (int seed = 0; seed < 20; seed++) {
            KilnGeometry kiln = KilnGeometry.of(
                    TestKiln.of(new PlanShape.PolygonPlan(seed % 2 == 0 ? 48 : 8, mm(1600), deg(45 * r.nextDouble())))
                            .wallInlet("A", 1, 20, 100, 30)
                            .wallInlet("B", 2, -20, 100 + 60 * r.nextDouble(), 30)
                            .build());
            Bore a = Bore.of(kiln, kiln.holes().get(0));
            Bore b = Bore.of(kiln, kiln.holes().get(1));
            double least = search(a, p -> {
                Pt3 d = p.minus(b.hot());
                double s = d.dot(b.axis());
                double off = Math.sqrt(Math.max(0, d.dot(d) - s * s));
                return Math.hypot(Math.max(0, off - b.radius()), Math.max(0, Math.max(-s, s - b.length())));
            });
            assertThat(Solids.distance(a, b)).as("case %d", seed).isCloseTo(least, within(CLOSE));
        }
    }

    @Test
    void solidsThatMeetAreNoDistanceApart() {
        KilnGeometry kiln = KilnGeometry.of(square(0)
                .slabElement("EF", On.FLOOR, 16, 20, at(250, -100), at(350, 100))
                .wallInlet("A", 2, 0, 20, 40)
                .build());
        assertThat(distance(Bore.of(kiln, kiln.holes().get(0)), kiln.grooves().get(0), kiln))
                .isLessThan(CLOSE);
    }
}
