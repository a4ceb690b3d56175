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
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.units.Quantity;

/** Parts of a box kiln, 600 wide, 400 deep, 450 high, walls and slabs 63.5 thick: every number by plain subtraction or Pythagoras. */
class PartsTest {
    private static final double T = 63.5;

    private static TestKiln box() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(600), mm(400), deg(0)));
        k.height = mm(450);
        return k;
    }

    private static void at3(Pt3 p, double x, double y, double z) {
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
        assertThat(h.circle()).isEqualTo(new Circle(new Pt(10, 20), 15));
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

    /** A groove 20 high and 30 deep round the chamber at 100, sloping 45° down: its floor drops 30. The coil of 12 fits. */
    @Test
    void wallGrooves() {
        KilnGeometry g = KilnGeometry.of(
                box().wallElement("E", 100, 20, 30, 45, List.of(1, 3)).build());
        assertThat(g.grooves()).hasSize(2);
        GrooveSolid.OnWall w = (GrooveSolid.OnWall) g.grooves().get(0);
        assertThat(w.face()).isEqualTo(new Face(On.WALL, 1, true));
        assertThat(List.of(w.bottom(), w.top(), w.depth())).containsExactly(90.0, 110.0, 30.0);
        assertThat(w.drop()).isEqualTo(30, within(1e-9));
        assertThat(w.bottomAt(15)).isEqualTo(75, within(1e-9));
        assertThat(w.mouth()).isEqualTo(new Segment(new Pt(-300, 90), new Pt(300, 110)));
        Outline f = ((Shape.Poly) w.footprint()).outline();
        // mitred at 45°: 30 wider at each end at its full depth
        assertThat(f.bounds().a().x()).isEqualTo(-330, within(1e-9));
        assertThat(f.bounds().b().x()).isEqualTo(330, within(1e-9));
        assertThat(f.bounds().a().y()).isEqualTo(60, within(1e-9));
        assertThat(f.bounds().b().y()).isEqualTo(110, within(1e-9));
        assertThat(f.area()).isEqualTo(660 * 50, within(1e-6));
        Convex solid = w.solids(g).get(0);
        at3(solid.outermost(new Pt3(0.1, 1, -1)), 330, 230, 60);
        at3(solid.outermost(new Pt3(-0.1, -1, 1)), -300, 200, 110);
        CoilRun c = g.coils().get(0);
        assertThat(c.panels()).containsExactly(1, 3);
        assertThat(c.radius()).isEqualTo(6);
        assertThat(c.wide()).isFalse();
        // half way in, a quarter of the drop below the middle
        at3(c.pieces().get(0).a(), -315, 215, 92.5);
        at3(c.pieces().get(0).b(), 315, 215, 92.5);
        at3(c.solid(0).outermost(new Pt3(0, 3, 4)), -315, 215 + 3.6, 92.5 + 4.8);
        assertThat(new GrooveSolid.OnWall("E", w.panel(), 1, 2, 0, 5).bottomAt(0))
                .isEqualTo(1);
        assertThat(KilnGeometry.of(box().wallElement("E", 100, 20, 30, 0, null).build())
                        .grooves())
                .hasSize(4);
        assertThat(KilnGeometry.of(box().wallElement("E", 100, 11, 30, 0, null).build())
                        .coils()
                        .get(0)
                        .wide())
                .isTrue();
        assertThat(KilnGeometry.of(box().wallElement("E", 100, 12, 12, 0, null).build())
                        .coils()
                        .get(0)
                        .wide())
                .isFalse();
    }

    @Test
    void slabGrooves() {
        KilnGeometry g = KilnGeometry.of(box().slabElement("F", On.FLOOR, 16, 20, at(0, 0), at(100, 0), at(100, 50))
                .slabElement("L", On.LID, 16, 20, at(0, 0), at(100, 0))
                .build());
        GrooveSolid f = g.grooves().get(0);
        assertThat(f.face()).isEqualTo(new Face(On.FLOOR, 0, true));
        assertThat(f.depth()).isEqualTo(20);
        assertThat(f.footprint()).isEqualTo(new Shape.Strip(List.of(new Pt(0, 0), new Pt(100, 0), new Pt(100, 50)), 8));
        assertThat(f.solids(g)).hasSize(2);
        at3(f.solids(g).get(0).outermost(new Pt3(1, 0, -1)), 108, 0, -20);
        at3(f.solids(g).get(0).outermost(new Pt3(-1, 0, 1)), -8, 0, 0);
        assertThat(g.coils().get(0).pieces().get(0).a().z()).isEqualTo(-10);
        assertThat(g.coils().get(1).pieces().get(0).a().z()).isEqualTo(460);
        assertThat(g.coils().get(0).on()).isEqualTo(On.FLOOR);
    }

    private static ElementRun run(On on, Double height, List<Place> path, Groove groove, Double coil) {
        return new ElementRun(
                "E", on, height == null ? null : mm(height), null, path, groove, coil == null ? null : mm(coil), null);
    }

    private static KilnGeometry with(ElementRun e) {
        TestKiln k = box();
        k.elements.add(e);
        return KilnGeometry.of(k.build());
    }

    @Test
    void whatAnElementLacks() {
        KilnGeometry g = with(run(On.WALL, null, null, null, 12.0));
        assertThat(g.grooveLacks()).containsExactly("kiln.elements[0].height");
        assertThat(g.coilLacks()).containsExactly("kiln.elements[0].height");
        assertThat(with(run(On.WALL, 9., null, null, 12.)).grooveLacks()).containsExactly("kiln.elements[0].groove");
        Groove noHeight = new Groove(null, null, mm(9), null);
        assertThat(with(run(On.WALL, 9., null, noHeight, 12.)).grooveLacks())
                .containsExactly("kiln.elements[0].groove.height");
        Groove noDepth = new Groove(mm(9), mm(9), null, null);
        assertThat(with(run(On.WALL, 9., null, noDepth, 12.)).grooveLacks())
                .containsExactly("kiln.elements[0].groove.depth");
        assertThat(with(run(On.WALL, 9., null, noDepth, 12.)).coils().get(0).wide())
                .isTrue();
        assertThat(with(run(On.WALL, 9., null, noDepth, null)).coilLacks()).containsExactly("kiln.elements[0].coil");
        assertThat(with(run(On.FLOOR, null, null, null, 12.)).grooveLacks()).containsExactly("kiln.elements[0].path");
        assertThat(with(run(On.FLOOR, null, List.of(), null, 12.)).coilLacks())
                .containsExactly("kiln.elements[0].path");
        List<Place> path = List.of(at(0, 0), at(9, 0));
        assertThat(with(run(On.FLOOR, null, path, null, 12.)).grooveLacks()).containsExactly("kiln.elements[0].groove");
        assertThat(with(run(On.FLOOR, null, path, noHeight, 12.)).grooveLacks())
                .containsExactly("kiln.elements[0].groove.width");
        assertThat(with(run(On.FLOOR, null, path, noDepth, 12.)).grooveLacks())
                .containsExactly("kiln.elements[0].groove.depth");
        TestKiln unknown = box();
        unknown.elements = null;
        unknown.fittings = null;
        unknown.shelves = null;
        KilnGeometry u = KilnGeometry.of(unknown.build());
        assertThat(u.grooveLacks()).containsExactly("kiln.elements");
        assertThat(u.coilLacks()).containsExactly("kiln.elements");
        assertThat(u.fittingLacks()).containsExactly("kiln.fittings");
        assertThat(u.shelfLacks()).containsExactly("shelves");
        assertThat(u.postLacks()).containsExactly("shelves");
    }

    private static Fitting fitting(On on, Integer panel, Place at, Double d) {
        return new Fitting(
                "F",
                FittingKind.OTHER,
                null,
                null,
                on,
                panel,
                at,
                d == null ? null : mm(d),
                null,
                null,
                null,
                null,
                null,
                null);
    }

    @Test
    void whatAFittingLacks() {
        TestKiln k = box();
        k.fittings.add(fitting(On.FLOOR, null, null, 9.));
        k.fittings.add(fitting(On.FLOOR, null, at(0, 0), null));
        k.fittings.add(fitting(On.WALL, null, at(0, 0), 9.));
        k.fittings.add(fitting(On.WALL, 2, at(0, 0), 9.));
        KilnGeometry g = KilnGeometry.of(k.build());
        assertThat(g.fittingLacks())
                .containsExactly("kiln.fittings[0].at", "kiln.fittings[1].diameter", "kiln.fittings[2].panel");
        assertThat(g.fittings()).hasSize(1);
        assertThat(g.fittings().get(0).face()).isEqualTo(new Face(On.WALL, 2, true));
        assertThat(g.fittings().get(0).shape()).isEqualTo(new Shape.Disc(new Circle(new Pt(0, 0), 4.5)));
        assertThat(g.fittings().get(0).outside()).isFalse();
        assertThat(g.fittings().get(0).open()).isFalse();
        assertThat(g.fittings().get(0).name()).isEqualTo("F");
    }

    @Test
    void fittingsAsSlotsAndSolids() {
        KilnGeometry g =
                KilnGeometry.of(box().box("B", FittingKind.CONTROL_BOX, On.FLOOR, null, at(0, 0), 100, 60, 30.0)
                        .box("C", FittingKind.OTHER, On.FLOOR, null, at(0, 0), 60, 100, null)
                        .fitting("V", FittingKind.VENT, On.LID, null, at(0, 0), 20)
                        .fitting("S", FittingKind.SPYHOLE, On.WALL, 1, at(0, 100), 20)
                        .fitting("H", FittingKind.HINGE, On.LID, null, at(0, 0), 20)
                        .crack("K", On.FLOOR, at(0, 0), at(40, 0), at(40, 30))
                        .build());
        List<FittingShape> f = g.fittings();
        assertThat(f.get(0).slot()).isEqualTo(new Shape.Strip(List.of(new Pt(50, 0), new Pt(-50, 0)), 30));
        assertThat(f.get(1).slot()).isEqualTo(new Shape.Strip(List.of(new Pt(0, 50), new Pt(0, -50)), 30));
        assertThat(f.get(2).slot()).isEqualTo(new Shape.Strip(List.of(new Pt(0, 0)), 10));
        assertThat(f.stream().map(FittingShape::outside)).containsExactly(true, false, false, false, true, false);
        assertThat(f.stream().map(FittingShape::open)).containsExactly(false, false, true, true, false, false);
        // the box stands 30 off the floor's cold face, as a plate; the other goes through
        at3(f.get(0).solids(g).get(0).outermost(new Pt3(1, 1, 1)), 50, 30, -T - 30);
        at3(f.get(0).solids(g).get(0).outermost(new Pt3(1, 1, -1)), 50, 30, -T - 30);
        at3(f.get(1).solids(g).get(0).outermost(new Pt3(1, 1, 1)), 30, 50, 0);
        at3(f.get(1).solids(g).get(0).outermost(new Pt3(-1, -1, -1)), -30, -50, -T);
        at3(f.get(2).solids(g).get(0).outermost(new Pt3(1, 0, 1)), 10, 0, 450 + T);
        at3(f.get(4).solids(g).get(0).outermost(new Pt3(1, 0, -1)), 10, 0, 450 + T);
        assertThat(f.get(5).solids(g)).hasSize(2);
        at3(f.get(5).solids(g).get(0).outermost(new Pt3(1, 0, 1)), 40, 0, 0);
    }

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
        TestKiln k = box();
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
        Outline inner = KilnGeometry.of(box().build()).inner();
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
        KilnGeometry posts =
                KilnGeometry.of(box().roundShelf("S", 300, 100, 20, at(3, 4)).build());
        assertThat(posts.shelves().get(0).posts().get(0).centre()).isEqualTo(new Pt(3, 4));
        assertThat(posts.shelves().get(0).posts().get(0).radius()).isEqualTo(10 * Math.sqrt(2), within(1e-9));
    }

    /** Half angle atan 0.1: a 30 mm hole's flame is 15 + s/10 wide. */
    @Test
    void flames() {
        double angle = Math.atan(0.1);
        KilnGeometry g = KilnGeometry.of(
                box().inlet("A", 0, 0, 30).wallInlet("W", 1, 50, 100, 30).build());
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
        at3(w.origin(), 50, 200, 100);
        at3(w.axis(), 0, -1, 0);
        assertThat(w.reach()).isEqualTo(400, within(1e-9));
        KilnGeometry lid = KilnGeometry.of(
                box().port("D", Role.INLET, On.LID, null, at(0, 0), mm(30)).build());
        Flame down = Flame.of(lid, lid.holes().get(0), angle);
        at3(down.origin(), 0, 0, 450);
        at3(down.axis(), 0, 0, -1);
    }

    /** A shelf of 100 at 120 catches a flame of 15 + 12 from its middle; 74 off the middle the flame passes its edge. */
    @Test
    void aShelfCutsTheFlameThatStaysUnderIt() {
        double angle = Math.atan(0.1);
        KilnGeometry g = KilnGeometry.of(box().roundShelf("high", 200, 300, 20)
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
