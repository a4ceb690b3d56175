package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.units.Quantity;

/** Shelves and flames in the box kiln of {@link PartsTest}. */
class ShelvesAndFlamesTest {
    private static Shelf shelf(
            ShelfShape shape, Double d, Integer sides, Double across, Double w, Double depth, Double turn) {
        return new Shelf(
                "S",
                shape,
                q(d),
                sides,
                q(across),
                q(w),
                q(depth),
                turn == null ? null : deg(turn),
                mm(100),
                null,
                at(10, 20),
                null,
                null);
    }

    private static Quantity q(Double mm) {
        return mm == null ? null : mm(mm);
    }

    private static KilnGeometry with(Shelf s) {
        TestKiln k = PartsTest.box();
        k.shelves.add(s);
        return KilnGeometry.of(k.build());
    }

    /** Gap to the wall of the 600 × 400 chamber from a middle 10 right and 20 back of its own. */
    @Test
    void shelves() {
        ShelfPlate round = with(shelf(ShelfShape.ROUND, 300., null, null, null, null, null))
                .shelves()
                .get(0);
        assertThat(round.shape()).isEqualTo(new Shape.Disc(new Circle(new Pt(10, 20), 150)));
        assertThat(round.bottom()).isEqualTo(100);
        assertThat(round.top()).isEqualTo(100);
        assertThat(round.posts()).isNull();
        assertThat(round.name()).isEqualTo("S");
        assertThat(round.postName(1)).isEqualTo("S post 2");
        Outline inner = KilnGeometry.of(PartsTest.box().build()).inner();
        assertThat(ShelfGap.toWall(round, inner)).isEqualTo(30, within(1e-9));
        ShelfPlate square = with(shelf(ShelfShape.RECTANGLE, null, null, null, 500., 300., null))
                .shelves()
                .get(0);
        assertThat(ShelfGap.toWall(square, inner)).isEqualTo(30, within(1e-9));
        ShelfPlate half = with(shelf(ShelfShape.HALF, 300., null, null, null, null, 0.))
                .shelves()
                .get(0);
        assertThat(ShelfGap.toWall(half, inner)).isEqualTo(30, within(1e-9));
        ShelfPlate front = with(shelf(ShelfShape.HALF, 300., null, null, null, null, 180.))
                .shelves()
                .get(0);
        assertThat(ShelfGap.toWall(front, inner)).isEqualTo(70, within(1e-9));
        ShelfPlate side = with(shelf(ShelfShape.HALF, 340., null, null, null, null, 90.))
                .shelves()
                .get(0);
        assertThat(ShelfGap.toWall(side, inner)).isEqualTo(10, within(1e-9));
        ShelfPlate eight = with(shelf(ShelfShape.POLYGON, null, 8, 300., null, null, 0.))
                .shelves()
                .get(0);
        assertThat(ShelfGap.toWall(eight, inner)).isEqualTo(30, within(1e-9));
        // a corner of the chamber that pokes into a shelf too large
        ShelfPlate large = with(shelf(ShelfShape.RECTANGLE, null, null, null, 700., 500., null))
                .shelves()
                .get(0);
        assertThat(ShelfGap.toWall(large, inner)).isNegative();
    }

    @Test
    void whatAShelfLacks() {
        assertThat(with(shelf(ShelfShape.ROUND, null, null, null, null, null, null))
                        .shelfLacks())
                .containsExactly("shelves[0].diameter");
        assertThat(with(shelf(ShelfShape.HALF, null, null, null, null, null, null))
                        .shelfLacks())
                .containsExactly("shelves[0].diameter");
        assertThat(with(shelf(ShelfShape.HALF, 9., null, null, null, null, null))
                        .shelfLacks())
                .containsExactly("shelves[0].turn");
        assertThat(with(shelf(ShelfShape.POLYGON, null, null, 9., null, null, null))
                        .shelfLacks())
                .containsExactly("shelves[0].sides");
        assertThat(with(shelf(ShelfShape.POLYGON, null, 6, null, null, null, null))
                        .shelfLacks())
                .containsExactly("shelves[0].acrossFlats");
        assertThat(with(shelf(ShelfShape.RECTANGLE, null, null, null, null, 9., null))
                        .shelfLacks())
                .containsExactly("shelves[0].width");
        assertThat(with(shelf(ShelfShape.RECTANGLE, null, null, null, 9., null, null))
                        .postLacks())
                .containsExactly("shelves[0].depth");
        assertThat(with(shelf(null, null, null, null, 9., null, null)).shelfLacks())
                .containsExactly("shelves[0].shape");
        Shelf noHeight =
                new Shelf("S", ShelfShape.ROUND, mm(9), null, null, null, null, null, null, null, null, null, null);
        assertThat(with(noHeight).shelfLacks()).containsExactly("shelves[0].height");
        assertThat(with(shelf(ShelfShape.ROUND, 9., null, null, null, null, null))
                        .postLacks())
                .containsExactly("shelves[0].posts");
        Shelf noSize = new Shelf(
                "S",
                ShelfShape.ROUND,
                mm(9),
                null,
                null,
                null,
                null,
                null,
                mm(9),
                mm(16),
                null,
                List.of(at(1, 2)),
                null);
        assertThat(with(noSize).postLacks()).containsExactly("shelves[0].postSize");
        Shelf none = new Shelf(
                "S", ShelfShape.ROUND, mm(9), null, null, null, null, null, mm(9), mm(16), null, List.of(), null);
        assertThat(with(none).postLacks()).isEmpty();
        assertThat(with(none).shelves().get(0).top()).isEqualTo(25);
        KilnGeometry posts = KilnGeometry.of(
                PartsTest.box().roundShelf("S", 300, 100, 20, at(3, 4)).build());
        assertThat(posts.shelves().get(0).posts().get(0).centre()).isEqualTo(new Pt(3, 4));
        assertThat(posts.shelves().get(0).posts().get(0).radius()).isEqualTo(10 * Math.sqrt(2), within(1e-9));
    }

    /** Half angle atan 0.1: a 30 mm hole's flame is 15 + s/10 wide. */
    @Test
    void flames() {
        double angle = Math.atan(0.1);
        KilnGeometry g = KilnGeometry.of(PartsTest.box()
                .inlet("A", 0, 0, 30)
                .wallInlet("W", 1, 50, 100, 30)
                .build());
        Flame f = Flame.of(g, g.holes().get(0), angle);
        assertThat(f.reach()).isEqualTo(450);
        assertThat(f.shelf()).isNull();
        assertThat(f.radius(100)).isEqualTo(25, within(1e-9));
        assertThat(f.distance(new Pt3(20, 0, 100))).isZero();
        assertThat(f.distance(new Pt3(0, 0, 460))).isEqualTo(10, within(1e-9));
        assertThat(f.distance(new Pt3(0, 18, -4))).isEqualTo(5, within(1e-9));
        assertThat(f.distance(new Pt3(3, 4, -4))).isEqualTo(4, within(1e-9));
        // square off the slanting side: (radius excess) times cos of the half angle
        assertThat(f.distance(new Pt3(35, 0, 100))).isEqualTo(10 * Math.cos(angle), within(1e-9));
        assertThat(f.distance(new Segment3(new Pt3(35, -50, 100), new Pt3(35, 50, 100)), 1e9))
                .isEqualTo(10 * Math.cos(angle), within(1e-6));
        assertThat(f.distance(new Segment3(new Pt3(135, -1, 100), new Pt3(135, 1, 100)), 20))
                .isGreaterThan(20);
        Flame w = Flame.of(g, g.holes().get(1), angle);
        PartsTest.at3(w.origin(), 50, 200, 100);
        PartsTest.at3(w.axis(), 0, -1, 0);
        assertThat(w.reach()).isEqualTo(400, within(1e-9));
        KilnGeometry lid = KilnGeometry.of(PartsTest.box()
                .port("D", Role.INLET, On.LID, null, at(0, 0), mm(30))
                .build());
        Flame down = Flame.of(lid, lid.holes().get(0), angle);
        PartsTest.at3(down.origin(), 0, 0, 450);
        PartsTest.at3(down.axis(), 0, 0, -1);
    }

    /** A shelf of 100 at 120 catches a flame of 15 + 12 from its middle; 74 off the middle the flame passes its edge. */
    @Test
    void aShelfCutsTheFlameThatStaysUnderIt() {
        double angle = Math.atan(0.1);
        KilnGeometry g = KilnGeometry.of(PartsTest.box()
                .roundShelf("high", 200, 300, 20)
                .roundShelf("low", 200, 120, 20)
                .inlet("A", 0, 0, 30)
                .inlet("B", 0, 72, 30)
                .inlet("C", 0, 74, 30)
                .inlet("D", 0, 101, 30)
                .build());
        Flame under = Flame.of(g, g.holes().get(0), angle);
        assertThat(under.reach()).isEqualTo(120);
        assertThat(under.shelf().name()).isEqualTo("low");
        assertThat(Flame.of(g, g.holes().get(1), angle).reach()).isEqualTo(120);
        assertThat(Flame.of(g, g.holes().get(2), angle).reach()).isEqualTo(450);
        assertThat(Flame.of(g, g.holes().get(3), angle).shelf()).isNull();
    }
}
