package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Bond;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.FittingKind;
import portwright.model.Fuel;
import portwright.model.Jet;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Slab;
import portwright.model.Wall;
import portwright.review.Review;

/**
 * Every clearance passes exactly at its limit and fires a micrometre beyond it. The places are worked out by hand from the rule book's own
 * limits: d+ = d + 2 mm.
 */
class AtTheLimitTest {
    /** How a design depends on the room left over: 0 at the limit, negative beyond. */
    private record Case(
            String name,
            Rule rule,
            Severity severity,
            Forbids forbids,
            List<String> parts,
            DoubleFunction<TestKiln> kiln) {}

    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    private static final double MICROMETRE = 1e-3;

    /** A square chamber of 600 mm, wall 60 mm, slabs of the same outline as the wall, 450 mm high: every distance is plain. */
    static TestKiln square() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(600), mm(600), null));
        k.height = mm(450);
        k.wall = new Wall(mm(60), "ifb-23");
        k.floor = new Slab(mm(60), "ifb-23", mm(0), true, null);
        k.lid = new Slab(mm(60), "ifb-23", mm(0), null, null);
        return k;
    }

    static Burner burner(String port, double tip, double body, double setback, double length) {
        return new Burner(
                "burner",
                port,
                Fuel.PROPANE,
                null,
                new Jet("1 mm", mm(1), null),
                null,
                null,
                null,
                null,
                null,
                BurnerHead.PORTED,
                mm(tip),
                mm(body),
                mm(setback),
                mm(length),
                null,
                null,
                null);
    }

    private static TestKiln withBurner(double tip, double body, double setback, double length, double stand) {
        TestKiln k = square().inlet("A", 0, 0, 40);
        k.burners = new ArrayList<>(List.of(burner("A", tip, body, setback, length)));
        k.stand = mm(stand);
        return k;
    }

    private static final double TAN11 = Math.tan(Math.toRadians(11));

    private static List<Case> cases() {
        List<Case> c = new ArrayList<>();
        // inside: wall face at x = 300, d+ = 42
        c.add(new Case(
                "floor hole under the wall",
                new InsideChamber(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "wall"),
                t -> square().inlet("A", 300 - 21 - t, 0, 40)));
        c.add(new Case(
                "lid hole under the wall",
                new InsideChamber(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("F", "wall"),
                t -> square().flue("F", 0, -300 + 21 + t, 40)));
        // a wall hole low over the floor
        c.add(new Case(
                "wall hole into the floor",
                new InsideChamber(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "wall 1 (back)"),
                t -> square().wallInlet("A", 1, 0, 21 + t, 40)));
        // mitres open outward in a convex kiln, so the hot face is the narrow one: u = ±300
        c.add(new Case(
                "wall hole past the mitre",
                new InsideChamber(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "wall 2 (right)"),
                t -> square().wallInlet("A", 2, 300 - 21 - t, 200, 40)));
        // rim at 360: stop max(d, 50) = 60 for d = 60 (d+ = 62), caution max(90, 60, 75) = 90
        c.add(new Case(
                "rim, stop",
                new EdgeDistance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "floor rim"),
                t -> square().inlet("A", 360 - 31 - 60 - t, 0, 60)));
        c.add(new Case(
                "rim, caution by diameters",
                new EdgeDistance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("A", "floor rim"),
                t -> square().inlet("A", 360 - 31 - 90 - t, 0, 60)));
        c.add(new Case(
                "rim, caution 75 mm",
                new EdgeDistance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("F", "lid rim"),
                t -> square().flue("F", 360 - 16 - 75 - t, 0, 30)));
        c.add(new Case(
                "panel edge, stop",
                new EdgeDistance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "wall 3 (front)"),
                t -> square().wallInlet("A", 3, 0, 21 + 25 + t, 40)));
        c.add(new Case(
                "panel edge, caution",
                new EdgeDistance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("A", "wall 3 (front)"),
                t -> square().wallInlet("A", 3, 0, 450 - 21 - 40 - t, 40)));
        // spacing: stop max(d, 50)/2 = 30 for d = 60; caution max(60, 60, 50) = 60
        c.add(new Case(
                "two holes, stop",
                new PortSpacing(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "B"),
                t -> square().inlet("A", 0, 0, 40).inlet("B", 21 + 31 + 30 + t, 0, 60)));
        c.add(new Case(
                "two holes, caution",
                new PortSpacing(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("A", "B"),
                t -> square().inlet("A", 0, 0, 40).inlet("B", 0, 21 + 31 + 60 + t, 60)));
        // through the corner: hot rims at (300 − 21 side, …): nearest points (300−e, 300) and (300, 300−e) give e·√2
        c.add(new Case(
                "through the corner, stop",
                new PortSpacing(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "B"),
                t -> {
                    double e = (25 + t) / Math.sqrt(2);
                    return square().wallInlet("A", 1, 300 - 21 - e, 200, 40).wallInlet("B", 2, -300 + 21 + e, 200, 40);
                }));
        // groove in the floor: strip 16 wide along y at x = 100
        c.add(new Case(
                "floor groove, stop",
                new ElementClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "EF"),
                t -> square().slabElement("EF", On.FLOOR, 16, 20, at(100, -150), at(100, 150))
                        .inlet("A", 100 - 8 - 21 - 25 - t, 0, 40)));
        c.add(new Case(
                "floor groove, caution",
                new ElementClearance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("A", "EF"),
                t -> square().slabElement("EF", On.FLOOR, 16, 20, at(100, -150), at(100, 150))
                        .inlet("A", 100 - 8 - 21 - 35 - t, 0, 40)));
        c.add(new Case(
                "round end of a groove",
                new ElementClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "EF"),
                t -> square().slabElement("EF", On.FLOOR, 16, 20, at(100, -150), at(100, 50))
                        .inlet("A", 100, 50 + 8 + 21 + 25 + t, 40)));
        c.add(new Case(
                "wall groove on the same panel",
                new ElementClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "E1"),
                t -> square().wallElement("E1", 150, 16, 20, 0, null).wallInlet("A", 1, 0, 150 - 8 - 21 - 25 - t, 40)));
        // slope 45° over 20 mm of depth drops the groove's floor by 20
        c.add(new Case(
                "sloped wall groove",
                new ElementClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "E1"),
                t -> square().wallElement("E1", 150, 16, 20, 45, null)
                        .wallInlet("A", 1, 0, 150 - 8 - 20 - 21 - 25 - t, 40)));
        // another part: a floor hole tangent to the wall plane x = 300 − 21 − p, groove floor at height h over it:
        // distance √(p² + h²)
        c.add(new Case(
                "floor hole to a wall groove",
                new ElementClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "E1"),
                t -> square().wallElement("E1", 20 + 8, 16, 20, 0, null).inlet("A", 300 - 21 - (15 + t), 0, 40)));
        c.add(new Case(
                "wall hole to a floor groove",
                new ElementClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "EF"),
                t -> square().slabElement("EF", On.FLOOR, 16, 20, at(-100, 300 - 8 - 15 - t), at(100, 300 - 8 - 15 - t))
                        .wallInlet("A", 1, 0, 21 + 20, 40)));
        // fittings
        c.add(new Case(
                "leg, caution",
                new FittingClearance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("A", "leg"),
                t -> square().fitting("leg", FittingKind.LEG, On.FLOOR, null, at(0, 0), 50)
                        .inlet("A", 25 + 21 + 25 + t, 0, 40)));
        c.add(new Case(
                "leg, stop",
                new FittingClearance(),
                Severity.STOP,
                Forbids.DRILLING,
                List.of("A", "leg"),
                t -> square().fitting("leg", FittingKind.LEG, On.FLOOR, null, at(0, 0), 50)
                        .inlet("A", 25 + 21 + 12.5 + t, 0, 40)));
        c.add(new Case(
                "crack",
                new FittingClearance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("F", "crack"),
                t -> square().crack("crack", On.LID, at(-50, -50), at(-50, 50)).flue("F", -50 + 21 + 25 + t, 0, 40)));
        c.add(new Case(
                "handle",
                new FittingClearance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("F", "handle"),
                t -> square().box("handle", FittingKind.HANDLE, On.LID, null, at(0, -100), 120, 20, null)
                        .flue("F", 0, -90 + 21 + 100 + t, 40)));
        // a box outside the wall: its face at 300 + 60 + 25 = 385 from the axis, reaching down to the floor's underside
        c.add(new Case(
                "box outside the wall against a floor hole",
                new FittingClearance(),
                Severity.CAUTION,
                Forbids.DRILLING,
                List.of("A", "box"),
                t -> square().box("box", FittingKind.CONTROL_BOX, On.WALL, 2, at(0, 100), 200, 200, 25.0)
                        .inlet("A", 385 - 21 - 150 - t, 0, 40)));
        // joints: rows 100 apart through the origin, bricks 200 long
        c.add(new Case(
                "sliver beside a row joint",
                new JointSliver(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("A", "floor joint"),
                t -> square().joints(On.FLOOR, 200, 100, Bond.STACKED, 0, 0, 0).inlet("A", 90, 21 + 20 + t, 40)));
        // posts 40 mm square: circle of 28.284; shelf at 75 mm
        double post = 40 / Math.sqrt(2);
        c.add(new Case(
                "post over the hole",
                new PostInFlame(),
                Severity.STOP,
                Forbids.LIGHTING,
                List.of("A", "shelf post 1"),
                t -> square().roundShelf("shelf", 400, 75, 40, at(20 + post + t, 0))
                        .inlet("A", 0, 0, 40)));
        c.add(new Case(
                "post in the flame",
                new PostInFlame(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("A", "shelf post 1"),
                t -> square().roundShelf("shelf", 400, 75, 40, at(20 + 75 * TAN11 + 10 + post + t, 0))
                        .inlet("A", 0, 0, 40)));
        c.add(new Case(
                "shelf chokes the port",
                new ShelfOverInlet(),
                Severity.STOP,
                Forbids.LIGHTING,
                List.of("A", "shelf"),
                t -> square().roundShelf("shelf", 400, 10 + t, 40).inlet("A", 0, 0, 40)));
        c.add(new Case(
                "shelf low",
                new ShelfOverInlet(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("A", "shelf"),
                t -> square().roundShelf("shelf", 400, 40 + t, 40).inlet("A", 0, 0, 40)));
        c.add(new Case(
                "shelf a little low",
                new ShelfOverInlet(),
                Severity.NOTE,
                Forbids.NOTHING,
                List.of("A", "shelf"),
                t -> square().roundShelf("shelf", 400, 60 + t, 40).inlet("A", 0, 0, 40)));
        c.add(new Case(
                "gap at the wall",
                new FlamePath(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("shelf"),
                t -> square().roundShelf("shelf", 600 - 38 - 2 * t, 75, 40).inlet("A", 0, 0, 40)));
        // coil of 12 mm in a wall groove 20 deep: its middle at (310, z); the flame's side at height z has radius 20 +
        // z tan 11
        c.add(new Case(
                "flame on a coil, stop",
                new FlameOnElement(),
                Severity.STOP,
                Forbids.LIGHTING,
                List.of("A", "E1"),
                t -> flameAndCoil(10 + t)));
        c.add(new Case(
                "flame on a coil, caution",
                new FlameOnElement(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("A", "E1"),
                t -> flameAndCoil(25 + t)));
        c.add(new Case(
                "flue over inlet",
                new FlueOverInlet(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("A", "F"),
                t -> square().inlet("A", 0, 0, 40).flue("F", 40 + 30 + t, 0, 30)));
        // 15 % of 300
        c.add(new Case(
                "balance",
                new PortBalance(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("A"),
                t -> square().inlet("A", 45 - t, 0, 40)));
        // burners
        c.add(new Case(
                "burner too long",
                new BurnerRoom(),
                Severity.STOP,
                Forbids.LIGHTING,
                List.of("burner", "stand"),
                t -> withBurner(20, 30, 15, 150, 165 + t)));
        c.add(new Case(
                "no room for the hose",
                new BurnerRoom(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("burner", "stand"),
                t -> withBurner(20, 30, 15, 150, 215 + t)));
        c.add(new Case(
                "leg beside the burner",
                new BurnerRoom(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("burner", "leg"),
                t -> withBurner(20, 30, 15, 150, 400)
                        .fitting("leg", FittingKind.LEG, On.FLOOR, null, at(15 + 50 + 25 + t, 0), 50)));
        c.add(new Case(
                "ring gap",
                new BurnerFit(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("A", "burner"),
                t -> withBurner(40 - 2 * (20.0 / 3) - 2 * t, 30, 15, 150, 400)));
        c.add(new Case(
                "set-back",
                new BurnerFit(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                List.of("A", "burner"),
                t -> withBurner(20, 30, 12.7 + t, 150, 400)));
        c.add(new Case(
                "tip inside",
                new BurnerFit(),
                Severity.STOP,
                Forbids.LIGHTING,
                List.of("A", "burner"),
                t -> withBurner(20, 30, t, 150, 400)));
        // sizes
        c.add(new Case(
                "small hole",
                new PortSize(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("A"),
                t -> square().inlet("A", 0, 0, 19 + t)));
        c.add(new Case(
                "large hole",
                new PortSize(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("A"),
                t -> square().inlet("A", 0, 0, 102 - t)));
        c.add(new Case("slab deeper than a saw", new SawDepth(), Severity.NOTE, Forbids.NOTHING, List.of("A"), t -> {
            TestKiln k = square().inlet("A", 0, 0, 40);
            k.floor = new Slab(mm(48 - t), "ifb-23", mm(0), true, null);
            return k;
        }));
        c.add(new Case(
                "across flats off the brick", new FacetRule(), Severity.NOTE, Forbids.NOTHING, List.of("kiln"), t -> {
                    double byBrick = 9 * 25.4 / Math.tan(Math.PI / 8) - 2 * 63.5;
                    return TestKiln.of(new PlanShape.PolygonPlan(8, mm(byBrick + 38 - t), null))
                            .inlet("A", 0, 0, 40);
                }));
        return c;
    }

    /** An inlet whose flame leaves so much room to the coil of a wall element at height 100, no shelf. */
    private static TestKiln flameAndCoil(double left) {
        // distance from the coil's middle to the flame's straight side, square to it: (310 − x − 20 − z tan a) cos a =
        // left + 6
        double z = 100;
        double x = 310 - 20 - z * TAN11 - (left + 6) / Math.cos(Math.toRadians(11));
        return square().wallElement("E1", z, 16, 20, 0, List.of(2)).inlet("A", x, 0, 40);
    }

    @TestFactory
    Stream<DynamicTest> passesAtItsLimitAndFiresAMicrometreBeyond() {
        return cases().stream()
                .map(c -> DynamicTest.dynamicTest(c.name(), () -> {
                    assertThat(of(c, 0)).as("at the limit").noneMatch(f -> f.severity() == c.severity());
                    assertThat(of(c, 1)).as("a millimetre inside").noneMatch(f -> f.severity() == c.severity());
                    List<Finding> beyond = of(c, -MICROMETRE).stream()
                            .filter(f -> f.severity() == c.severity())
                            .toList();
                    assertThat(beyond).as("a micrometre beyond").hasSize(1);
                    assertThat(beyond.get(0).parts()).isEqualTo(c.parts());
                    assertThat(beyond.get(0).forbids()).isEqualTo(c.forbids());
                    assertThat(beyond.get(0).message()).isNotBlank();
                    assertThat(beyond.get(0).remedy()).isNotBlank();
                    assertThat(beyond.get(0).source()).isNotNull();
                }));
    }

    private static List<Finding> of(Case c, double room) {
        CheckResult r = BOOK.check(
                Review.geometryOnly(c.kiln().apply(room).build()), java.util.Set.of(RuleBook.Section.GEOMETRY));
        return r.findings().stream()
                .filter(f -> f.rule().equals(c.rule().id()))
                .filter(f -> !(c.rule() instanceof PortBalance) || f.severity() != Severity.NOTE)
                .toList();
    }
}
