package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Points, lines, outlines and shapes against school geometry: every number can be had with a pencil. */
class PlaneTest {
    private static final double EXACT = 1e-12;
    /** 30 wide, 20 high, clockwise from the lower left. */
    private static final Outline BOX = outline(0, 0, 0, 20, 30, 20, 30, 0);
    /** A square of 40 with its lower right quarter cut out. */
    private static final Outline ELL = outline(0, 0, 0, 40, 40, 40, 40, 20, 20, 20, 20, 0);

    private static Outline outline(double... xy) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            out.add(new Pt(xy[i], xy[i + 1]));
        }
        return new Outline(out);
    }

    private static void at(Pt p, double x, double y) {
        assertThat(p.x()).isEqualTo(x, within(1e-9));
        assertThat(p.y()).isEqualTo(y, within(1e-9));
    }

    @Test
    void points() {
        at(new Pt(1, 2).plus(3, -5), 4, -3);
        assertThat(new Pt(1, 2).distance(new Pt(4, 6))).isEqualTo(5);
        at(new Pt(3, 4).mirrored(), -3, 4);
        at(new Pt(0, 1).turned(Math.PI / 2), 1, 0);
        at(new Pt(1, 0).turned(Math.PI / 2), 0, -1);
        at(new Pt(1, 2).towards(new Pt(4, 6), 10), 7, 10);
        at(new Pt(1, 2).towards(new Pt(1, 2), 10), 11, 2);
        Pt3 a = new Pt3(1, 2, 3);
        Pt3 b = new Pt3(3, 5, 9);
        assertThat(a.distance(b)).isEqualTo(7);
        assertThat(a.dot(b)).isEqualTo(3 + 10 + 27);
        assertThat(b.minus(a)).isEqualTo(new Pt3(2, 3, 6));
        assertThat(a.between(b, 0.5)).isEqualTo(new Pt3(2, 3.5, 6));
        assertThat(a.plan()).isEqualTo(new Pt(1, 2));
        assertThat(new Segment3(a, b).length()).isEqualTo(7);
    }

    @Test
    void pieces() {
        Segment s = new Segment(new Pt(1, 1), new Pt(5, 4));
        assertThat(s.length()).isEqualTo(5);
        // a point seen from 2 along and 5 to the left of travel
        Pt p = new Pt(1 + 2 * 0.8 - 5 * 0.6, 1 + 2 * 0.6 + 5 * 0.8);
        assertThat(s.distance(p)).isEqualTo(5, within(EXACT));
        at(s.nearest(p), 2.6, 2.2);
        assertThat(s.distance(new Pt(-2, -3))).isEqualTo(5);
        at(s.nearest(new Pt(-2, -3)), 1, 1);
        assertThat(s.distance(new Pt(8, 8))).isEqualTo(5);
        at(s.nearest(new Pt(8, 8)), 5, 4);
        Segment dot = new Segment(new Pt(1, 1), new Pt(1, 1));
        assertThat(dot.distance(new Pt(4, 5))).isEqualTo(5);
        at(dot.nearest(new Pt(4, 5)), 1, 1);
    }

    @Test
    void outlines() {
        assertThat(BOX.area()).isEqualTo(600);
        assertThat(outline(7, 5, 7, 25, 37, 25, 37, 5).area()).isEqualTo(600);
        assertThat(ELL.area()).isEqualTo(1200);
        assertThat(BOX.perimeter()).isEqualTo(100);
        assertThat(BOX.corner(-1)).isEqualTo(new Pt(30, 0));
        assertThat(BOX.corner(5)).isEqualTo(new Pt(0, 20));
        assertThat(BOX.edges()).hasSize(4).contains(new Segment(new Pt(30, 0), new Pt(0, 0)));
        assertThat(BOX.contains(new Pt(29, 1))).isTrue();
        assertThat(BOX.contains(new Pt(31, 1))).isFalse();
        assertThat(BOX.contains(new Pt(-1, 1))).isFalse();
        assertThat(BOX.contains(new Pt(1, 21))).isFalse();
        assertThat(ELL.contains(new Pt(30, 10))).isFalse();
        assertThat(ELL.contains(new Pt(10, 10))).isTrue();
        // a slanting edge: the triangle (0,0) (0,10) (20,0) holds what lies below x + 2 y = 20
        Outline slant = outline(0, 0, 0, 10, 20, 0);
        assertThat(slant.contains(new Pt(9.9, 5))).isTrue();
        assertThat(slant.contains(new Pt(10.1, 5))).isFalse();
        assertThat(BOX.depth(new Pt(10, 4))).isEqualTo(4);
        assertThat(BOX.depth(new Pt(33, 24))).isEqualTo(-5);
        at(BOX.nearest(new Pt(10, 4)), 10, 0);
        at(BOX.nearest(new Pt(33, 24)), 30, 20);
        assertThat(BOX.convex()).isTrue();
        assertThat(ELL.convex()).isFalse();
        assertThat(outline(0, 0, 0, 10, 0, 20, 30, 20, 30, 0).convex()).isTrue();
        assertThat(outline(0, 0, 1e-3, 10, 0, 20, 30, 20, 30, 0).convex()).isFalse();
        assertThat(ELL.bounds()).isEqualTo(new Segment(new Pt(0, 0), new Pt(40, 40)));
        at(Centroid.of(BOX), 15, 10);
        // 3 squares of 20 with centres (10,10) (10,30) (30,30)
        at(Centroid.of(ELL), 50 / 3.0, 70 / 3.0);
        at(Centroid.of(outline(100, 50, 100, 53, 106, 50)), 102, 51);
    }

    @Test
    void offsets() {
        assertThat(BOX.offset(0)).isSameAs(BOX);
        assertThat(BOX.offset(5).points())
                .containsExactly(new Pt(-5, -5), new Pt(-5, 25), new Pt(35, 25), new Pt(35, -5));
        assertThat(BOX.offset(-5).area()).isEqualTo(20 * 10, within(EXACT));
        assertThat(ELL.offset(5).area()).isEqualTo(50 * 50 - 20 * 20, within(1e-9));
        // a mitre of 45°: the corner of a right triangle with legs 30 moves by 5 (1 + √2) along its long sides
        Outline tri = outline(0, 0, 0, 30, 30, 0).offset(5);
        at(tri.corner(1), -5, 30 + 5 * (1 + Math.sqrt(2)));
        assertThatThrownBy(() -> BOX.offset(-10))
                .hasMessageContaining("shrinks to nothing")
                .hasMessageContaining("10.0 mm");
        // inward so far that a thin arm is lost, the block stays
        Outline arm = outline(0, 0, 0, 40, 40, 40, 40, 34, 40, 0).offset(-5);
        assertThat(arm.area()).isEqualTo(900, within(1e-6));
        Outline tee = outline(0, 0, 0, 40, 40, 40, 40, 24, 80, 24, 80, 16, 40, 16, 40, 0)
                .offset(-5);
        assertThat(tee.area()).isEqualTo(900, within(1e-6));
    }

    @Test
    void clips() {
        List<Segment> in = Clip.within(ELL, new Segment(new Pt(-10, 10), new Pt(50, 10)));
        assertThat(in).hasSize(1);
        at(in.get(0).a(), 0, 10);
        at(in.get(0).b(), 20, 10);
        List<Segment> two = Clip.within(
                outline(0, 0, 0, 40, 40, 40, 40, 0, 30, 0, 30, 30, 10, 30, 10, 0),
                new Segment(new Pt(5, 10), new Pt(35, 10)));
        assertThat(two).hasSize(2);
        at(two.get(0).a(), 5, 10);
        at(two.get(0).b(), 10, 10);
        at(two.get(1).a(), 30, 10);
        at(two.get(1).b(), 35, 10);
        assertThat(Clip.within(BOX, new Segment(new Pt(1, 1), new Pt(2, 3))))
                .containsExactly(new Segment(new Pt(1, 1), new Pt(2, 3)));
        assertThat(Clip.within(BOX, new Segment(new Pt(1, 21), new Pt(2, 23)))).isEmpty();
        // slanting across a slanting edge x + 2 y = 20 at (8, 6)
        List<Segment> slant = Clip.within(outline(0, 0, 0, 10, 20, 0), new Segment(new Pt(4, 3), new Pt(12, 9)));
        assertThat(slant).hasSize(1);
        at(slant.get(0).b(), 8, 6);
    }

    @Test
    void discAndBox() {
        Shape disc = new Shape.Disc(new Circle(new Pt(1, 2), 4));
        assertThat(disc.distance(new Pt(4, 6))).isEqualTo(1);
        assertThat(disc.distance(new Pt(1, 3))).isEqualTo(-3);
        assertThat(disc.contains(new Pt(5, 2))).isTrue();
        assertThat(disc.contains(new Pt(5.001, 2))).isFalse();
        at(disc.nearest(new Pt(7, 10)), 1 + 4 * 0.6, 2 + 4 * 0.8);
        assertThat(disc.area()).isEqualTo(50.26548, within(1e-4));
        Shape box = new Shape.Poly(BOX);
        assertThat(box.distance(new Pt(33, 24))).isEqualTo(5);
        assertThat(box.distance(new Pt(10, 4))).isEqualTo(-4);
        assertThat(box.area()).isEqualTo(600);
        at(box.nearest(new Pt(10, -3)), 10, 0);
    }

    /** Radius 10 round (5, 5), looking to the right: its straight side runs from (5, 15) to (5, -5). */
    @Test
    void halfDisc() {
        Shape.HalfDisc h = new Shape.HalfDisc(new Pt(5, 5), 10, Math.PI / 2);
        at(h.straight().a(), 5, 15);
        at(h.straight().b(), 5, -5);
        assertThat(h.distance(new Pt(18, 5))).isEqualTo(3, within(1e-9));
        assertThat(h.distance(new Pt(2, 8))).isEqualTo(3, within(1e-9));
        assertThat(h.distance(new Pt(7, 5))).isEqualTo(-2, within(1e-9));
        assertThat(h.distance(new Pt(14, 5))).isEqualTo(-1, within(1e-9));
        at(h.nearest(new Pt(18, 5)), 15, 5);
        at(h.nearest(new Pt(14, 5)), 15, 5);
        at(h.nearest(new Pt(7, 6)), 5, 6);
        at(h.nearest(new Pt(2, 8)), 5, 8);
        // looking 30° right of the back: the straight side runs down to the right
        Shape.HalfDisc slant = new Shape.HalfDisc(new Pt(0, 0), 10, Math.PI / 6);
        at(slant.straight().a(), -5 * Math.sqrt(3), 5);
        at(slant.straight().b(), 5 * Math.sqrt(3), -5);
        assertThat(slant.distance(new Pt(6, 6 * Math.sqrt(3)))).isEqualTo(2, within(1e-9));
        assertThat(slant.distance(new Pt(-2, -2 * Math.sqrt(3)))).isEqualTo(4, within(1e-9));
        assertThat(h.area()).isEqualTo(50 * Math.PI, within(1e-9));
    }

    @Test
    void strip() {
        Shape.Strip s = new Shape.Strip(List.of(new Pt(0, 0), new Pt(30, 0), new Pt(30, 40)), 5);
        assertThat(s.pieces()).hasSize(2);
        assertThat(s.distance(new Pt(10, 8))).isEqualTo(3, within(EXACT));
        assertThat(s.distance(new Pt(38, 20))).isEqualTo(3, within(EXACT));
        assertThat(s.distance(new Pt(33, 44))).isEqualTo(0, within(EXACT));
        at(s.nearest(new Pt(10, 8)), 10, 5);
        at(s.nearest(new Pt(38, 20)), 35, 20);
        assertThat(s.area()).isEqualTo(70 * 10 + 25 * Math.PI, within(1e-9));
        Shape.Strip dot = new Shape.Strip(List.of(new Pt(1, 1)), 5);
        assertThat(dot.pieces()).containsExactly(new Segment(new Pt(1, 1), new Pt(1, 1)));
        assertThat(dot.distance(new Pt(4, 5))).isEqualTo(0, within(EXACT));
    }

    /** A 100 mm square less 10 mm all round, less a disc of 10 that wants 5: 80² - π 15², arcs drawn outside by 0.05 %. */
    @Test
    void feasibleRegion() {
        Outline square = outline(0, 0, 0, 100, 100, 100, 100, 0);
        FeasibleRegion.Within in = new FeasibleRegion.Within(square, 10);
        FeasibleRegion free = FeasibleRegion.of(List.of(in), List.of());
        double margin = 10 / Math.cos(Math.PI / 96);
        assertThat(free.area()).isEqualTo((100 - 2 * margin) * (100 - 2 * margin), within(1e-9));
        assertThat(free.contains(new Pt(10.1, 50))).isTrue();
        assertThat(free.contains(new Pt(9.9, 50))).isFalse();
        FeasibleRegion.Keep disc = new FeasibleRegion.Keep(new Shape.Disc(new Circle(new Pt(50, 50), 10)), 5);
        FeasibleRegion left = free.without(List.of(disc));
        assertThat(free.area() - left.area()).isBetween(Math.PI * 225, Math.PI * 225 * 1.002);
        assertThat(left.contains(new Pt(50, 64.9))).isFalse();
        assertThat(left.contains(new Pt(50, 65.1))).isTrue();
        assertThat(left.pieces()).hasSize(1);
        assertThat(left.pieces().get(0).holes()).hasSize(1);
        assertThat(left.pieces().get(0).outer().area()).isEqualTo(free.area(), within(1e-6));
        assertThat(left.pieces().get(0).holes().get(0).area()).isEqualTo(free.area() - left.area(), within(1e-6));
        assertThat(FeasibleRegion.chordError(100)).isEqualTo(100 * (1 / Math.cos(Math.PI / 96) - 1), within(1e-12));
        assertThat(FeasibleRegion.of(List.of(), List.of(disc)).pieces()).isEmpty();
        assertThat(free.without(List.of())).isSameAs(free);
        // what lies in a disc of 30 about the middle, 10 from its rim: a disc of 20, its arc within
        assertThat(free.inside(new Shape.Disc(new Circle(new Pt(50, 50), 30)), 10)
                        .area())
                .isBetween(Math.PI * 400 * 0.998, Math.PI * 400);
        assertThat(free.inside(new Shape.Disc(new Circle(new Pt(50, 50), 8)), 10)
                        .area())
                .isZero();
        assertThat(free.inside(new Shape.Poly(outline(40, 40, 40, 70, 60, 70, 60, 40)), 0)
                        .area())
                .isEqualTo(600, within(1e-6));
        FeasibleRegion both = FeasibleRegion.of(List.of(in, new FeasibleRegion.Within(BOX, 0)), List.of());
        assertThat(both.area()).isEqualTo((30 - margin) * (20 - margin), within(1e-9));
    }

    /** A strip, a box, a single point, half a disc, and one whose distance is not known. */
    @Test
    void feasibleRegionOfEveryShape() {
        FeasibleRegion free = FeasibleRegion.of(
                List.of(new FeasibleRegion.Within(outline(0, 0, 0, 100, 100, 100, 100, 0), 0)), List.of());
        Shape strip = new Shape.Strip(List.of(new Pt(-50, 50), new Pt(150, 50)), 5);
        FeasibleRegion split = free.without(List.of(new FeasibleRegion.Keep(strip, 15)));
        assertThat(split.pieces()).hasSize(2);
        assertThat(split.area()).isEqualTo(6000, within(100 * 2 * 20 * 6e-4));
        FeasibleRegion uneven = free.without(List.of(new FeasibleRegion.Keep(
                new Shape.Strip(List.of(new Pt(-50, 30), new Pt(150, 30)), 5), 5)));
        assertThat(uneven.pieces().get(0).outer().area()).isEqualTo(6000, within(5.0));
        assertThat(uneven.pieces().get(1).outer().area()).isEqualTo(2000, within(5.0));
        Shape box = new Shape.Poly(outline(40, 40, 40, 60, 60, 60, 60, 40));
        assertThat(free.without(List.of(new FeasibleRegion.Keep(box, 0))).area())
                .isEqualTo(9600, within(1e-9));
        double grown = 400 + 4 * 20 * 10 + Math.PI * 100;
        assertThat(10000
                        - free.without(List.of(new FeasibleRegion.Keep(box, 10)))
                                .area())
                .isBetween(grown - 0.5, grown + 2);
        Shape dot = new Shape.Strip(List.of(new Pt(50, 50)), 5);
        double round = Math.PI * 144;
        assertThat(10000
                        - free.without(List.of(new FeasibleRegion.Keep(dot, 7))).area())
                .isBetween(round, round * 1.002);
        Shape half = new Shape.HalfDisc(new Pt(50, 50), 20, Math.PI / 2);
        double wide = Math.PI * 200 + 10 * (40 + 20 * Math.PI) + Math.PI * 100;
        FeasibleRegion beside = free.without(List.of(new FeasibleRegion.Keep(half, 10)));
        assertThat(10000 - beside.area()).isBetween(wide - 1, wide * 1.003);
        assertThat(beside.contains(new Pt(79.9, 50))).isFalse();
        assertThat(beside.contains(new Pt(39.8, 50))).isTrue();
        assertThat(free.without(List.of(new FeasibleRegion.Keep(box, Double.NaN)))
                        .area())
                .isEqualTo(10000);
        Shape far = new Shape.Disc(new Circle(new Pt(300, 50), 10));
        assertThat(free.without(List.of(new FeasibleRegion.Keep(far, 5))).area())
                .isEqualTo(10000);
    }

    /** Golden section on (x - 2)²: inside, and at either end when the valley lies beyond. */
    @Test
    void leastOfAValley() {
        assertThat(Solids.least(0, 5, x -> (x - 2) * (x - 2) + 1)).isEqualTo(1, within(1e-12));
        assertThat(Solids.least(3, 5, x -> (x - 2) * (x - 2) + 1)).isEqualTo(2);
        assertThat(Solids.least(0, 1, x -> (x - 2) * (x - 2) + 1)).isEqualTo(2);
    }
}
