package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.Bond;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Slab;

class KilnGeometryTest {
    private static final double IN = 25.4;

    private static KilnGeometry regular(int sides, double acrossFlats, double height, double turn) {
        TestKiln k = TestKiln.of(new PlanShape.PolygonPlan(sides, TestKiln.mm(acrossFlats), TestKiln.deg(turn)));
        k.height = TestKiln.mm(height);
        return KilnGeometry.of(k.build());
    }

    /** The trade calls the 23 × 27 in ten-sider "about 7 ft³" and the 28 × 27 in twelve-sider "10 ft³" (gallery and supplier pages, read). */
    @Test
    @Tag("published")
    void chamberVolumesAgreeWithTheTradesRoundFigures() {
        double ft3 = Math.pow(0.3048, 3);
        assertThat(regular(10, 23 * IN, 27 * IN, 0).chamberVolumeM3() / ft3).isBetween(6.5, 7.5);
        assertThat(regular(12, 28 * IN, 27 * IN, 0).chamberVolumeM3() / ft3).isBetween(9.5, 10.5);
        assertThat(regular(10, 23 * IN, 27 * IN, 0).chamberVolumeM3())
                .isCloseTo(10 * Math.tan(Math.PI / 10) * Math.pow(23 * IN / 2, 2) * 27 * IN * 1e-9, within(1e-12));
    }

    @Test
    void panelOneFacesTheBackAndKeepsItsNameWhenTurned() {
        KilnGeometry k = regular(8, 400, 450, 0);
        assertThat(k.panel(1).bearing()).isCloseTo(0, within(1e-12));
        assertThat(k.panel(1).middle().y()).isCloseTo(200, within(1e-9));
        assertThat(k.panel(1).a().x()).isNegative();
        assertThat(Math.toDegrees(k.panel(3).bearing())).isCloseTo(90, within(1e-9));
        assertThat(Math.toDegrees(regular(8, 400, 450, 10).panel(1).bearing())).isCloseTo(10, within(1e-9));
        Pt3 p = k.panel(3).point(30, 50, 20);
        assertThat(p.x()).isCloseTo(220, within(1e-9));
        assertThat(p.y()).isCloseTo(-30, within(1e-9));
        assertThat(p.z()).isEqualTo(50);
    }

    @Test
    void panelFrameGoesThereAndBack() {
        KilnGeometry k = regular(7, 350, 450, 13);
        for (Panel p : k.panels()) {
            Pt q = p.local(p.plan(12, 34));
            assertThat(q.x()).isCloseTo(12, within(1e-10));
            assertThat(q.y()).isCloseTo(34, within(1e-10));
            assertThat(p.thickness()).isCloseTo(63.5, within(1e-10));
            assertThat(p.uMax(63.5) - p.uMax(0)).isCloseTo(63.5 * Math.tan(Math.PI / 7), within(1e-9));
        }
    }

    @Test
    void ovalGrowsByTheStretchAlongX() {
        TestKiln k = TestKiln.of(new PlanShape.OvalPlan(10, TestKiln.mm(580), TestKiln.mm(230), TestKiln.deg(0)));
        KilnGeometry g = KilnGeometry.of(k.build());
        KilnGeometry r = regular(10, 580, 457.2, 0);
        assertThat(g.panel(1).width()).isCloseTo(r.panel(1).width() + 230, within(1e-9));
        assertThat(g.panel(6).width()).isCloseTo(r.panel(6).width() + 230, within(1e-9));
        assertThat(g.panel(3).width()).isCloseTo(r.panel(3).width(), within(1e-9));
        assertThat(g.inner().area()).isCloseTo(r.inner().area() + 230 * 580, within(1e-6));
    }

    @Test
    void rectanglePanelsAreBackRightFrontLeft() {
        KilnGeometry g = KilnGeometry.of(
                TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(500), TestKiln.mm(400), TestKiln.deg(0)))
                        .build());
        assertThat(g.panels().stream()
                        .map(p -> (int) Math.round(Math.toDegrees(p.bearing())))
                        .toList())
                .isEqualTo(List.of(0, 90, 180, 270));
        assertThat(g.panel(2).width()).isEqualTo(400);
        assertThat(g.slab(On.FLOOR).area()).isCloseTo((500 + 127) * (400 + 127), within(1e-6));
    }

    @Test
    void outlineWithARecessHasPanelsThatNarrowOutward() {
        PlanShape l = new PlanShape.OutlinePlan(List.of(
                TestKiln.at(0, 0),
                TestKiln.at(0, 600),
                TestKiln.at(600, 600),
                TestKiln.at(600, 300),
                TestKiln.at(300, 300),
                TestKiln.at(300, 0)));
        KilnGeometry g = KilnGeometry.of(TestKiln.of(l).build());
        assertThat(g.inner().area()).isEqualTo(600 * 600 - 300 * 300);
        assertThat(g.wallOuter().area()).isCloseTo(727 * 727 - 300 * 300, within(1e-6));
        Panel p = g.panel(4);
        assertThat(p.uMax(63.5)).isCloseTo(p.uMax(0) - 63.5, within(1e-9));
        assertThat(p.uMin(63.5)).isCloseTo(p.uMin(0) - 63.5, within(1e-9));
    }

    @Test
    void aRecessNarrowerThanTwiceTheWallCloses() {
        PlanShape u = new PlanShape.OutlinePlan(List.of(
                TestKiln.at(0, 0),
                TestKiln.at(0, 600),
                TestKiln.at(250, 600),
                TestKiln.at(250, 300),
                TestKiln.at(350, 300),
                TestKiln.at(350, 600),
                TestKiln.at(600, 600),
                TestKiln.at(600, 0)));
        KilnGeometry g = KilnGeometry.of(TestKiln.of(u).build());
        assertThat(g.wallOuter().area()).isCloseTo(727 * 727, within(1e-3));
    }

    @Test
    void negativeOverhangMakesTheSlabSmallerThanTheWalls() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        k.lid = new Slab(TestKiln.len("2 1/2 in"), "ifb-23", TestKiln.mm(-20), null, null);
        KilnGeometry g = KilnGeometry.of(k.build());
        assertThat(g.slab(On.LID).bounds().b().y()).isCloseTo(17 * IN / 2 + 63.5 - 20, within(1e-9));
    }

    @Test
    void bricksInHalfBondShiftEverySecondRow() {
        TestKiln k = TestKiln.polygon(8, "17 in").joints(On.FLOOR, 228.6, 114.3, Bond.HALF, 0, 0, 0);
        KilnGeometry g = KilnGeometry.of(k.build());
        Brick b = g.pattern(On.FLOOR).brick(new Pt(10, 20));
        assertThat(List.of(b.left(), b.right(), b.below(), b.above()))
                .usingElementComparator((x, y) -> Math.abs(x - y) < 1e-9 ? 0 : 1)
                .containsExactly(10.0, 218.6, 20.0, 94.3);
        Brick below = g.pattern(On.FLOOR).brick(new Pt(10, -20));
        assertThat(below.left()).isCloseTo(124.3, within(1e-9));
        assertThat(g.joints(On.FLOOR))
                .isNotEmpty()
                .allSatisfy(s -> assertThat(g.slab(On.FLOOR).depth(s.a())).isGreaterThan(-1e-9));
        double rows = g.joints(On.FLOOR).stream()
                .filter(s -> Math.abs(s.a().y() - s.b().y()) < 1e-9)
                .mapToDouble(Segment::length)
                .sum();
        assertThat(rows).isGreaterThan(17 * IN * 4);
    }

    @Test
    void turnedPatternTurnsClockwiseSeenFromAbove() {
        TestKiln k = TestKiln.polygon(8, "17 in").joints(On.FLOOR, 228.6, 114.3, Bond.STACKED, 90, 5, 7);
        Brick b = KilnGeometry.of(k.build()).pattern(On.FLOOR).brick(new Pt(5 + 10, 7 - 30));
        assertThat(b.left()).isCloseTo(30, within(1e-9));
        assertThat(b.below()).isCloseTo(10, within(1e-9));
    }
}
