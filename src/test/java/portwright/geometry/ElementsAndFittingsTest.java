package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Place;

/** Grooves, coils and fittings of the box kiln of {@link PartsTest}, and what they lack. */
class ElementsAndFittingsTest {
    /** A groove 20 high and 30 deep round the chamber at 100, sloping 45° down: its floor drops 30. The coil of 12 fits. */
    @Test
    void wallGrooves() {
        KilnGeometry g = KilnGeometry.of(
                PartsTest.box().wallElement("E", 100, 20, 30, 45, List.of(1, 3)).build());
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
        PartsTest.at3(solid.outermost(new Pt3(0.1, 1, -1)), 330, 230, 60);
        PartsTest.at3(solid.outermost(new Pt3(-0.1, -1, 1)), -300, 200, 110);
        CoilRun c = g.coils().get(0);
        assertThat(c.panels()).containsExactly(1, 3);
        assertThat(c.radius()).isEqualTo(6);
        assertThat(c.wide()).isFalse();
        // half way in, a quarter of the drop below the middle
        PartsTest.at3(c.pieces().get(0).a(), -315, 215, 92.5);
        PartsTest.at3(c.pieces().get(0).b(), 315, 215, 92.5);
        PartsTest.at3(c.solid(0).outermost(new Pt3(0, 3, 4)), -315, 215 + 3.6, 92.5 + 4.8);
        assertThat(new GrooveSolid.OnWall("E", w.panel(), 1, 2, 0, 5).bottomAt(0))
                .isEqualTo(1);
        assertThat(KilnGeometry.of(PartsTest.box()
                                .wallElement("E", 100, 20, 30, 0, null)
                                .build())
                        .grooves())
                .hasSize(4);
        assertThat(KilnGeometry.of(PartsTest.box()
                                .wallElement("E", 100, 11, 30, 0, null)
                                .build())
                        .coils()
                        .get(0)
                        .wide())
                .isTrue();
        assertThat(KilnGeometry.of(PartsTest.box()
                                .wallElement("E", 100, 12, 12, 0, null)
                                .build())
                        .coils()
                        .get(0)
                        .wide())
                .isFalse();
    }

    @Test
    void slabGrooves() {
        KilnGeometry g = KilnGeometry.of(PartsTest.box()
                .slabElement("F", On.FLOOR, 16, 20, at(0, 0), at(100, 0), at(100, 50))
                .slabElement("L", On.LID, 16, 20, at(0, 0), at(100, 0))
                .build());
        GrooveSolid f = g.grooves().get(0);
        assertThat(f.face()).isEqualTo(new Face(On.FLOOR, 0, true));
        assertThat(f.depth()).isEqualTo(20);
        assertThat(f.footprint()).isEqualTo(new Shape.Strip(List.of(new Pt(0, 0), new Pt(100, 0), new Pt(100, 50)), 8));
        assertThat(f.solids(g)).hasSize(2);
        PartsTest.at3(f.solids(g).get(0).outermost(new Pt3(1, 0, -1)), 108, 0, -20);
        PartsTest.at3(f.solids(g).get(0).outermost(new Pt3(-1, 0, 1)), -8, 0, 0);
        assertThat(g.coils().get(0).pieces().get(0).a().z()).isEqualTo(-10);
        assertThat(g.coils().get(1).pieces().get(0).a().z()).isEqualTo(460);
        assertThat(g.coils().get(0).on()).isEqualTo(On.FLOOR);
    }

    private static ElementRun run(On on, Double height, List<Place> path, Groove groove, Double coil) {
        return new ElementRun(
                "E", on, height == null ? null : mm(height), null, path, groove, coil == null ? null : mm(coil), null);
    }

    private static KilnGeometry with(ElementRun e) {
        TestKiln k = PartsTest.box();
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
        TestKiln unknown = PartsTest.box();
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

    /** A crack 6 wide along a path is a strip of half width 3; without a width, a line. */
    @Test
    void fittingsAlongAPath() {
        TestKiln k = PartsTest.box();
        for (Double wide : new Double[] {6., null}) {
            k.fittings.add(new Fitting(
                    "C",
                    FittingKind.CRACK,
                    null,
                    null,
                    On.FLOOR,
                    null,
                    null,
                    wide == null ? null : mm(wide),
                    null,
                    null,
                    List.of(at(0, 0), at(40, 30)),
                    null,
                    null,
                    null));
        }
        KilnGeometry g = KilnGeometry.of(k.build());
        assertThat(g.fittings().get(0).shape()).isEqualTo(new Shape.Strip(List.of(new Pt(0, 0), new Pt(40, 30)), 3));
        assertThat(((Shape.Strip) g.fittings().get(1).shape()).halfWidth()).isZero();
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
        TestKiln k = PartsTest.box();
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
        KilnGeometry g = KilnGeometry.of(PartsTest.box()
                .box("B", FittingKind.CONTROL_BOX, On.FLOOR, null, at(0, 0), 100, 60, 30.0)
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
        PartsTest.at3(f.get(0).solids(g).get(0).outermost(new Pt3(1, 1, 1)), 50, 30, -PartsTest.T - 30);
        PartsTest.at3(f.get(0).solids(g).get(0).outermost(new Pt3(1, 1, -1)), 50, 30, -PartsTest.T - 30);
        PartsTest.at3(f.get(1).solids(g).get(0).outermost(new Pt3(1, 1, 1)), 30, 50, 0);
        PartsTest.at3(f.get(1).solids(g).get(0).outermost(new Pt3(-1, -1, -1)), -30, -50, -PartsTest.T);
        PartsTest.at3(f.get(2).solids(g).get(0).outermost(new Pt3(1, 0, 1)), 10, 0, 450 + PartsTest.T);
        PartsTest.at3(f.get(4).solids(g).get(0).outermost(new Pt3(1, 0, -1)), 10, 0, 450 + PartsTest.T);
        assertThat(f.get(5).solids(g)).hasSize(2);
        PartsTest.at3(f.get(5).solids(g).get(0).outermost(new Pt3(1, 0, 1)), 40, 0, 0);
    }
}
