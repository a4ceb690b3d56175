package portwright;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.model.*;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Builds designs for tests, quantities typed as in a design file. */
public final class TestKiln {
    public PlanShape plan;
    public Quantity height = len("18 in");
    public Wall wall = new Wall(len("2 1/2 in"), "ifb-23");
    public Slab floor = new Slab(len("2 1/2 in"), "ifb-23", len("0 in"), true, null);
    public Slab lid = new Slab(len("2 1/2 in"), "ifb-23", len("0 in"), null, null);
    public List<ElementRun> elements = new ArrayList<>();
    public List<Fitting> fittings = new ArrayList<>();
    public List<Shelf> shelves = new ArrayList<>();
    public List<Port> ports = new ArrayList<>();
    public List<Burner> burners;
    public Drilling drilling;
    public Quantity stand;
    public Map<String, Map<String, UserLimit>> limits = new LinkedHashMap<>();

    public static Quantity len(String text) {
        return text == null ? null : Quantity.parse(text, Kind.LENGTH);
    }

    public static Quantity mm(double mm) {
        return new Quantity(mm + " mm", Kind.LENGTH, mm);
    }

    public static Quantity deg(double degrees) {
        return new Quantity(degrees + " deg", Kind.ANGLE, Math.toRadians(degrees));
    }

    public static Place at(String x, String y) {
        return new Place.Cartesian(len(x), len(y));
    }

    public static Place at(double x, double y) {
        return new Place.Cartesian(mm(x), mm(y));
    }

    public static Place polar(String radius, double bearing) {
        return new Place.Polar(len(radius), deg(bearing));
    }

    public static TestKiln polygon(int sides, String acrossFlats) {
        TestKiln k = new TestKiln();
        k.plan = new PlanShape.PolygonPlan(sides, len(acrossFlats), deg(0));
        return k;
    }

    /** A U of 600 by 600 mm: a slot 200 wide runs in from the back for 350. Its centre of area lies in the slot. */
    public static TestKiln u() {
        return of(new PlanShape.OutlinePlan(List.of(
                at(-300, 300),
                at(-100, 300),
                at(-100, -50),
                at(100, -50),
                at(100, 300),
                at(300, 300),
                at(300, -300),
                at(-300, -300))));
    }

    public static TestKiln of(PlanShape plan) {
        TestKiln k = new TestKiln();
        k.plan = plan;
        return k;
    }

    public TestKiln port(String name, Role role, On on, Integer panel, Place at, Quantity d) {
        ports.add(new Port(name, role, on, panel, at, d));
        return this;
    }

    public TestKiln inlet(String name, double x, double y, double d) {
        return port(name, Role.INLET, On.FLOOR, null, at(x, y), mm(d));
    }

    public TestKiln flue(String name, double x, double y, double d) {
        return port(name, Role.FLUE, On.LID, null, at(x, y), mm(d));
    }

    public TestKiln wallInlet(String name, int panel, double u, double v, double d) {
        return port(name, Role.INLET, On.WALL, panel, at(u, v), mm(d));
    }

    public TestKiln wallElement(
            String name, double v, double height, double depth, double slope, List<Integer> panels) {
        elements.add(new ElementRun(
                name, On.WALL, mm(v), panels, null, new Groove(mm(height), null, mm(depth), deg(slope)), mm(12), null));
        return this;
    }

    public TestKiln slabElement(String name, On on, double width, double depth, Place... path) {
        elements.add(new ElementRun(
                name, on, null, null, List.of(path), new Groove(null, mm(width), mm(depth), null), mm(12), null));
        return this;
    }

    public TestKiln fitting(String name, FittingKind kind, On on, Integer panel, Place at, double d) {
        fittings.add(new Fitting(name, kind, null, null, on, panel, at, mm(d), null, null, null, null, null, null));
        return this;
    }

    /** A fitting of which only the place is known. */
    public TestKiln shapeless(String name, FittingKind kind, On on, Place at) {
        fittings.add(new Fitting(name, kind, null, null, on, null, at, null, null, null, null, null, null, null));
        return this;
    }

    public TestKiln box(
            String name,
            FittingKind kind,
            On on,
            Integer panel,
            Place at,
            double width,
            double depth,
            Double standoff) {
        fittings.add(new Fitting(
                name,
                kind,
                null,
                null,
                on,
                panel,
                at,
                null,
                new Size2(mm(width), mm(depth)),
                null,
                null,
                standoff == null ? null : mm(standoff),
                null,
                null));
        return this;
    }

    public TestKiln crack(String name, On on, Place... path) {
        fittings.add(new Fitting(
                name,
                FittingKind.CRACK,
                null,
                null,
                on,
                null,
                null,
                null,
                null,
                null,
                List.of(path),
                null,
                null,
                null));
        return this;
    }

    public TestKiln roundShelf(String name, double diameter, double height, double postSize, Place... posts) {
        shelves.add(new Shelf(
                name,
                ShelfShape.ROUND,
                mm(diameter),
                null,
                null,
                null,
                null,
                null,
                mm(height),
                mm(16),
                at(0, 0),
                List.of(posts),
                mm(postSize)));
        return this;
    }

    public TestKiln oversize(double mm) {
        drilling = new Drilling(mm(mm), null, null);
        return this;
    }

    public TestKiln joints(On on, double length, double row, Bond bond, double turn, double x, double y) {
        Joints j = new Joints(mm(length), mm(row), bond, deg(turn), at(x, y));
        if (on == On.FLOOR) {
            floor = new Slab(floor.thickness(), floor.brick(), floor.overhang(), floor.pan(), j);
        } else {
            lid = new Slab(lid.thickness(), lid.brick(), lid.overhang(), lid.pan(), j);
        }
        return this;
    }

    public TestKiln limit(String rule, String name, double value) {
        limits.computeIfAbsent(rule, r -> new LinkedHashMap<>()).put(name, new UserLimit(value + "", value));
        return this;
    }

    public Design build() {
        Kiln kiln = new Kiln(plan, height, wall, floor, lid, null, elements, fittings, stand, null, null);
        return new Design(
                "test",
                null,
                UnitSystem.METRIC,
                kiln,
                shelves,
                ports,
                drilling,
                burners,
                null,
                null,
                null,
                null,
                limits);
    }
}
