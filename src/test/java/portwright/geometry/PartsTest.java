package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.Bond;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;

/** Parts of a box kiln, 600 wide, 400 deep, 450 high, walls and slabs 63.5 thick: every number by plain subtraction or Pythagoras. */
class PartsTest {
    static final double T = 63.5;

    static TestKiln box() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(600), mm(400), deg(0)));
        k.height = mm(450);
        return k;
    }

    static void at3(Pt3 p, double x, double y, double z) {
        assertThat(p.x()).isEqualTo(x, within(1e-9));
        assertThat(p.y()).isEqualTo(y, within(1e-9));
        assertThat(p.z()).isEqualTo(z, within(1e-9));
    }

    @Test
    void sizes() {
        KilnGeometry g = KilnGeometry.of(box().inlet("A", 10, 20, 30).build());
        assertThat(g.chamberVolumeM3()).isEqualTo(0.108, within(1e-12));
        assertThat(g.wallAreaM2()).isEqualTo(0.9, within(1e-12));
        assertThat(g.planAreaM2()).isEqualTo(0.24, within(1e-12));
        assertThat(g.shortWidth()).isEqualTo(400, within(1e-9));
        assertThat(g.thickness(On.WALL)).isEqualTo(T, within(1e-9));
        assertThatThrownBy(() -> g.slab(On.WALL)).hasMessageContaining("no slab");
        Hole h = g.holes(On.FLOOR).get(0);
        assertThat(g.holes(On.LID)).isEmpty();
        assertThat(h.inlet()).isTrue();
        assertThat(h.drilled()).isEqualTo(32);
        assertThat(h.drilledRadius()).isEqualTo(16);
        assertThat(h.area()).isEqualTo(706.8583, within(1e-3));
        assertThat(h.drilledCircle()).isEqualTo(new Circle(new Pt(10, 20), 16));
        assertThat(h.at(new Pt(1, 2)).centre()).isEqualTo(new Pt(1, 2));
        assertThat(h.name()).isEqualTo("A");
        assertThat(KilnGeometry.of(box().flue("F", 0, 0, 40).build())
                        .holes()
                        .get(0)
                        .inlet())
                .isFalse();
    }

    @Test
    void whichFacesAreMirrored() {
        assertThat(new Face(On.FLOOR, 0, true).mirrored()).isFalse();
        assertThat(new Face(On.FLOOR, 0, false).mirrored()).isTrue();
        assertThat(new Face(On.LID, 0, true).mirrored()).isTrue();
        assertThat(new Face(On.LID, 0, false).mirrored()).isFalse();
        assertThat(new Face(On.WALL, 1, true).mirrored()).isFalse();
        assertThat(new Face(On.WALL, 1, false).mirrored()).isTrue();
        assertThat(new Face(On.WALL, 1, false).samePart(new Face(On.WALL, 1, true)))
                .isTrue();
        assertThat(new Face(On.WALL, 1, true).samePart(new Face(On.WALL, 2, true)))
                .isFalse();
        assertThat(new Face(On.LID, 0, true).samePart(new Face(On.FLOOR, 0, true)))
                .isFalse();
    }

    /** Floor hole at its cold end z -63.5, lid at 450 + 63.5, back wall (panel 1) at y 200 + 63.5. */
    @Test
    void mouths() {
        KilnGeometry g = KilnGeometry.of(box().fitting("V", FittingKind.VENT, On.LID, null, at(0, 100), 20)
                .box("B", FittingKind.CONTROL_BOX, On.WALL, 1, at(0, 100), 100, 60, 30.0)
                .build());
        at3(Mouth.of(g, On.FLOOR, 0, new Pt(10, 20)), 10, 20, -T);
        at3(Mouth.of(g, On.LID, 0, new Pt(10, 20)), 10, 20, 450 + T);
        at3(Mouth.of(g, On.WALL, 1, new Pt(10, 20)), 10, 200 + T, 20);
        // from the lid's (0, 0) to the vent's rim 90 away on the same level
        assertThat(Mouth.gap(g, g.fittings().get(0), Mouth.of(g, On.LID, 0, new Pt(0, 0))))
                .isEqualTo(90, within(1e-9));
        // from a hole in the same wall 80 right of the box's edge: 30 out and 80 along
        assertThat(Mouth.gap(g, g.fittings().get(1), Mouth.of(g, On.WALL, 1, new Pt(130, 100))))
                .isEqualTo(Math.hypot(80, 30), within(1e-9));
        assertThat(Mouth.gap(g, g.fittings().get(1), Mouth.of(g, On.WALL, 1, new Pt(20, 110))))
                .isEqualTo(30, within(1e-9));
        // from the lid's (0, 150) to the box's upper edge: it stands 30 off the wall at y 293.5, its edge at height 130
        assertThat(Mouth.gap(g, g.fittings().get(1), Mouth.of(g, On.LID, 0, new Pt(0, 150))))
                .isEqualTo(Math.hypot(143.5, 450 + T - 130), within(1e-9));
    }

    @Test
    void bores() {
        KilnGeometry g = KilnGeometry.of(
                box().inlet("A", 10, 20, 30).wallInlet("W", 2, 50, 100, 30).build());
        Bore floor = Bore.of(g, g.holes().get(0));
        at3(floor.hot(), 10, 20, 0);
        at3(floor.axis(), 0, 0, -1);
        assertThat(floor.length()).isEqualTo(T, within(1e-9));
        assertThat(floor.radius()).isEqualTo(16);
        at3(floor.outermost(new Pt3(3, 4, 1)), 10 + 16 * 0.6, 20 + 16 * 0.8, 0);
        at3(floor.outermost(new Pt3(3, 4, -1)), 10 + 16 * 0.6, 20 + 16 * 0.8, -T);
        at3(floor.outermost(new Pt3(0, 0, -2)), 10, 20, -T);
        Bore lid = Bore.slab(g, On.LID, new Pt(1, 2), 5);
        at3(lid.hot(), 1, 2, 450);
        at3(lid.axis(), 0, 0, 1);
        // panel 2 is the right wall; u runs to its right as seen from inside, towards the front
        Bore wall = Bore.of(g, g.holes().get(1));
        at3(wall.hot(), 300, -50, 100);
        at3(wall.axis(), 1, 0, 0);
        Bore plate = Bore.of(g, new Face(On.WALL, 2, true), new Pt(0, 0), 1, 10, 30);
        at3(plate.hot(), 310, 0, 0);
        assertThat(plate.length()).isEqualTo(20);
        at3(Bore.of(g, new Face(On.FLOOR, 0, true), new Pt(0, 0), 1, 10, 30).hot(), 0, 0, -10);
        at3(Bore.of(g, new Face(On.LID, 0, true), new Pt(0, 0), 1, 10, 30).hot(), 0, 0, 460);
        assertThat(Solids.distance(floor, List.of(lid, wall), 1e9))
                .isEqualTo(Solids.distance(floor, wall), within(1e-9));
        assertThat(Solids.distance(floor, lid)).isEqualTo(450, within(1e-6));
        assertThat(Solids.distance(floor, lid, 10)).isBetween(10.0, 450.0);
    }

    /** Bricks 200 × 100 in half bond: rows from y 0 and 100, the second shifted by 100. */
    @Test
    void theBrickAtAPoint() {
        JointPattern p = new JointPattern(200, 100, true, 0, new Pt(0, 0));
        Brick low = p.brick(new Pt(450, 35));
        assertThat(List.of(low.left(), low.right(), low.below(), low.above())).containsExactly(50.0, 150.0, 35.0, 65.0);
        assertThat(low.least()).isEqualTo(35);
        Brick high = p.brick(new Pt(280, 140));
        assertThat(List.of(high.left(), high.right(), high.below(), high.above()))
                .containsExactly(180.0, 20.0, 40.0, 60.0);
        assertThat(high.least()).isEqualTo(20);
        assertThat(high.outline().points())
                .containsExactly(new Pt(100, 200), new Pt(300, 200), new Pt(300, 100), new Pt(100, 100));
        // laid a quarter turn clockwise, rows run along −y: (35, −450) is where (450, 35) was
        assertThat(new JointPattern(200, 100, true, Math.PI / 2, new Pt(0, 0))
                        .brick(new Pt(35, -450))
                        .least())
                .isEqualTo(35, within(1e-9));
        assertThat(new TailHole("E1", new Face(On.WALL, 1, true), new Circle(new Pt(0, 0), 5)).name())
                .isEqualTo("E1 tails");
    }

    /** Bricks 200 × 100 stacked from (0, 0): within 90 of (50, 50) lie the joints x = 0 and y = 0, y = 100. */
    @Test
    void jointsNearAPoint() {
        KilnGeometry g = KilnGeometry.of(
                box().joints(On.FLOOR, 200, 100, Bond.STACKED, 0, 0, 0).build());
        JointPattern p = g.pattern(On.FLOOR);
        List<Segment> near = p.near(g.slab(On.FLOOR), new Pt(50, 50), 90);
        assertThat(near).allSatisfy(s -> assertThat(s.distance(new Pt(50, 50))).isLessThan(200));
        assertThat(near.stream()
                        .filter(s -> s.a().y() == s.b().y())
                        .map(s -> s.a().y())
                        .distinct()
                        .sorted())
                .containsExactly(0.0, 100.0);
        assertThat(near.stream()
                        .filter(s -> s.a().x() == s.b().x())
                        .map(s -> s.a().x())
                        .distinct())
                .containsExactly(0.0);
        assertThat(g.pattern(On.LID)).isNull();
        assertThat(g.joints(On.LID)).isEmpty();
        // all joints of the slab, 727 × 527: rows at -200, -100, 0, 100, 200 and ends at -200, 0, 200
        List<Segment> all = g.joints(On.FLOOR);
        double rows = all.stream()
                .filter(s -> s.a().y() == s.b().y())
                .mapToDouble(Segment::length)
                .sum();
        double ends = all.stream()
                .filter(s -> s.a().x() == s.b().x())
                .mapToDouble(Segment::length)
                .sum();
        assertThat(rows).isEqualTo(5 * 727, within(1e-6));
        assertThat(ends).isEqualTo(3 * 527, within(1e-6));
        Brick b = p.brick(new Pt(50, 50));
        assertThat(b.outline().bounds()).isEqualTo(new Segment(new Pt(0, 0), new Pt(200, 100)));
        assertThat(b.outline().area()).isEqualTo(20_000, within(1e-9));
    }
}
