package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import portwright.TestKiln;
import portwright.model.Bond;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Fuel;
import portwright.model.Groove;
import portwright.model.Jet;
import portwright.model.Joints;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Size2;
import portwright.model.Slab;
import portwright.model.Tails;
import portwright.model.Wall;
import portwright.units.Kind;
import portwright.units.Quantity;

/** A random kiln from a seed, all lengths whole sixteenths of an inch, that can be written in either system, mirrored left to right, or turned. */
final class KilnSketch {
    private static final double SIXTEENTH = 25.4 / 16;

    private final long seed;
    private final boolean inch;
    private final boolean mirrored;
    private final double turnDeg;
    private Random r;
    private int sides;

    private KilnSketch(long seed, boolean inch, boolean mirrored, double turnDeg) {
        this.seed = seed;
        this.inch = inch;
        this.mirrored = mirrored;
        this.turnDeg = turnDeg;
    }

    static Design metric(long seed) {
        return new KilnSketch(seed, false, false, 0).build();
    }

    static Design inches(long seed) {
        return new KilnSketch(seed, true, false, 0).build();
    }

    static Design mirrored(long seed) {
        return new KilnSketch(seed, false, true, 0).build();
    }

    static Design turned(long seed, double degrees) {
        return new KilnSketch(seed, false, false, degrees).build();
    }

    /** The name of a panel in the mirrored kiln: panel 1 stays, the others go round the other way. */
    static int mirroredPanel(int panel, int sides) {
        return panel == 1 ? 1 : sides + 2 - panel;
    }

    private Quantity len(int sixteenths) {
        return Quantity.parse(inch ? sixteenths / 16.0 + " in" : sixteenths * SIXTEENTH + " mm", Kind.LENGTH);
    }

    private Quantity angle(double degrees) {
        return TestKiln.deg(mirrored ? -degrees : degrees);
    }

    private Quantity planTurn(double degrees) {
        return TestKiln.deg((mirrored ? -degrees : degrees) + turnDeg);
    }

    private int upTo(int sixteenths) {
        return r.nextInt(2 * sixteenths + 1) - sixteenths;
    }

    /** A place in plan. Turned places are no whole sixteenths any more, so they are typed in millimetres. */
    private Place at(int x, int y) {
        if (turnDeg == 0) {
            return new Place.Cartesian(len(mirrored ? -x : x), len(y));
        }
        double a = Math.toRadians(turnDeg);
        double px = x * SIXTEENTH;
        double py = y * SIXTEENTH;
        return new Place.Cartesian(
                TestKiln.mm(px * Math.cos(a) + py * Math.sin(a)), TestKiln.mm(py * Math.cos(a) - px * Math.sin(a)));
    }

    private Place onPanel(int u, int v) {
        return new Place.Cartesian(len(mirrored ? -u : u), len(v));
    }

    private int panel(int p) {
        return mirrored ? mirroredPanel(p, sides) : p;
    }

    private Joints joints() {
        return new Joints(
                len(144),
                len(72),
                r.nextBoolean() ? Bond.HALF : Bond.STACKED,
                planTurn(r.nextInt(4) * 30),
                at(upTo(40), upTo(40)));
    }

    private PlanShape plan() {
        int turn = r.nextInt(60);
        int across = 16 * 16 + r.nextInt(12 * 16);
        return switch (r.nextInt(4)) {
            case 0 -> {
                sides = 4;
                yield new PlanShape.RectanglePlan(len(across), len(across + r.nextInt(80)), planTurn(turn));
            }
            case 1 -> {
                sides = 8 + 2 * r.nextInt(3);
                yield new PlanShape.OvalPlan(sides, len(across), len(40 + r.nextInt(120)), planTurn(turn));
            }
            default -> {
                sides = 5 + r.nextInt(9);
                yield new PlanShape.PolygonPlan(sides, len(across), planTurn(turn));
            }
        };
    }

    private Design build() {
        r = new Random(seed);
        TestKiln k = TestKiln.of(plan());
        k.height = len(16 * 16 + r.nextInt(12 * 16));
        k.wall = new Wall(len(40), "ifb-23");
        k.floor = new Slab(len(40 + 8 * r.nextInt(2)), "ifb-23", len(upTo(8)), true, joints());
        k.lid = new Slab(len(40), "ifb-23", len(upTo(8)), null, joints());
        k.stand = len(130 + r.nextInt(100));
        elements(k);
        fittings(k);
        shelf(k);
        ports(k);
        return k.build();
    }

    private void elements(TestKiln k) {
        for (int i = 0; i < 3; i++) {
            List<Integer> panels = null;
            if (r.nextBoolean()) {
                panels = new ArrayList<>();
                for (int p = 1; p <= sides; p++) {
                    if (r.nextInt(3) > 0) {
                        panels.add(panel(p));
                    }
                }
            }
            Tails tails = new Tails(panel(1 + r.nextInt(sides)), onPanel(upTo(20), 30 + 50 * i), len(8));
            k.elements.add(new ElementRun(
                    "E" + i,
                    On.WALL,
                    len(30 + 50 * i),
                    panels,
                    null,
                    new Groove(len(10), null, len(12), TestKiln.deg(r.nextInt(20))),
                    len(8),
                    tails));
        }
        if (r.nextBoolean()) {
            List<Place> path = List.of(
                    at(-60 - r.nextInt(20), -60), at(60, -60 - r.nextInt(20)), at(60 + r.nextInt(20), 60), at(-50, 70));
            k.elements.add(new ElementRun(
                    "EF", On.FLOOR, null, null, path, new Groove(null, len(10), len(12), null), len(8), null));
        }
    }

    private void fittings(TestKiln k) {
        k.fittings.add(new Fitting(
                "leg",
                FittingKind.LEG,
                null,
                null,
                On.FLOOR,
                null,
                at(upTo(100), upTo(100)),
                len(32),
                null,
                null,
                null,
                null,
                null,
                null));
        k.fittings.add(new Fitting(
                "bar",
                FittingKind.STAND_BAR,
                null,
                null,
                On.FLOOR,
                null,
                at(upTo(100), upTo(100)),
                null,
                new Size2(len(160), len(16)),
                planTurn(r.nextInt(180)),
                null,
                null,
                null,
                null));
        k.fittings.add(new Fitting(
                "handle",
                FittingKind.HANDLE,
                null,
                null,
                On.LID,
                null,
                at(upTo(20), -150),
                null,
                new Size2(len(64), len(8)),
                planTurn(0),
                null,
                null,
                null,
                null));
        k.fittings.add(new Fitting(
                "crack",
                FittingKind.CRACK,
                null,
                null,
                On.LID,
                null,
                null,
                null,
                null,
                null,
                List.of(at(upTo(100), upTo(100)), at(upTo(100), upTo(100))),
                null,
                null,
                null));
        k.fittings.add(new Fitting(
                "probe",
                FittingKind.THERMOCOUPLE,
                "K",
                "standard",
                On.WALL,
                panel(1 + r.nextInt(sides)),
                onPanel(upTo(30), 40 + r.nextInt(100)),
                len(4),
                null,
                null,
                null,
                null,
                len(16),
                null));
        k.fittings.add(new Fitting(
                "box",
                FittingKind.CONTROL_BOX,
                null,
                null,
                On.WALL,
                panel(1 + r.nextInt(sides)),
                onPanel(upTo(10), 120),
                null,
                new Size2(len(80), len(120)),
                angle(0),
                null,
                len(16),
                null,
                null));
    }

    private void shelf(TestKiln k) {
        List<Place> posts = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            posts.add(at(upTo(90), upTo(90)));
        }
        ShelfShape shape = r.nextBoolean() ? ShelfShape.ROUND : ShelfShape.HALF;
        k.shelves.add(new Shelf(
                "shelf",
                shape,
                len(180 + r.nextInt(60)),
                null,
                null,
                null,
                null,
                planTurn(r.nextInt(360)),
                len(20 + r.nextInt(40)),
                len(10),
                at(upTo(10), upTo(10)),
                posts,
                len(24)));
    }

    private void ports(TestKiln k) {
        k.burners = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int d = 12 + r.nextInt(24);
            k.port("inlet " + i, Role.INLET, On.FLOOR, null, at(upTo(110), upTo(110)), len(d));
            k.burners.add(new Burner(
                    "burner " + i,
                    "inlet " + i,
                    Fuel.PROPANE,
                    null,
                    new Jet("1 mm", TestKiln.mm(1), null),
                    null,
                    null,
                    null,
                    null,
                    null,
                    BurnerHead.BARE,
                    len(6 + r.nextInt(8)),
                    len(16),
                    len(r.nextInt(16)),
                    len(80 + r.nextInt(40)),
                    null,
                    null,
                    null));
        }
        k.port("flue 1", Role.FLUE, On.LID, null, at(upTo(110), upTo(110)), len(16 + r.nextInt(16)));
        k.port("flue 2", Role.FLUE, On.LID, null, at(upTo(110), upTo(110)), len(16 + r.nextInt(16)));
        int p = 1 + r.nextInt(sides);
        k.port(
                "wall 1",
                Role.INLET,
                On.WALL,
                panel(p),
                onPanel(upTo(30), 20 + r.nextInt(100)),
                len(14 + r.nextInt(10)));
        k.port(
                "wall 2",
                Role.INLET,
                On.WALL,
                panel(1 + p % sides),
                onPanel(upTo(30), 20 + r.nextInt(100)),
                len(14 + r.nextInt(10)));
    }
}
