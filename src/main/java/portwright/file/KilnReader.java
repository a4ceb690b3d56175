package portwright.file;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.model.Bond;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.Ided;
import portwright.model.Joints;
import portwright.model.Kiln;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.Size2;
import portwright.model.Slab;
import portwright.model.Tails;
import portwright.model.Wall;
import portwright.units.Kind;
import portwright.units.Quantity;

/** The kiln: plan, slabs, wall, elements, fittings. */
final class KilnReader {
    /** Letters of IEC 60584-1, as a potter may type them. */
    private static final Pattern THERMOCOUPLE = Pattern.compile("(?i)\\s*(?:type\\s+)?([BEJKNRST])\\s*");

    private static final int MANY = 64;

    private KilnReader() {}

    static Kiln kiln(Fields f) {
        f.need("plan", "{\"shape\": \"polygon\", \"sides\": 8, \"acrossFlats\": \"17 in\"}");
        PlanShape plan = f.object("plan", KilnReader::plan);
        Quantity height = f.needQuantity("height", Kind.LENGTH, Range.CHAMBER_HEIGHT);
        f.need("wall", "{\"thickness\": \"2 1/2 in\"}");
        Wall wall = f.object(
                "wall", w -> new Wall(w.needQuantity("thickness", Kind.LENGTH, Range.LINING), w.text("brick")));
        Slab floor = slab(f, "floor");
        Slab lid = slab(f, "lid");
        Quantity leak = f.quantity("leakArea", Kind.AREA, Range.between("0 cm2", "1 m2"));
        List<ElementRun> elements = f.objects("elements", KilnReader::element);
        List<Fitting> fittings = f.objects("fittings", KilnReader::fitting);
        Quantity stand = f.object("stand", s -> s.quantity("height", Kind.LENGTH, Range.DISTANCE));
        Quantity power = power(f, elements);
        Double loss = f.number("lossFactor", 0.5, 3);
        Quantity rise = f.quantity("elementRise", Kind.SHARE, Range.between("0 %", "100 %"));
        Boolean all = f.bool("fittingsComplete");
        return new Kiln(plan, height, wall, floor, lid, leak, elements, fittings, stand, power, loss, rise, all);
    }

    /** No power at all goes only with no elements at all. */
    private static Quantity power(Fields f, List<ElementRun> elements) {
        Quantity power = f.quantity("power", Kind.POWER, Range.from("0 kW"));
        if (power != null && power.si() == 0 && (elements == null || !elements.isEmpty())) {
            f.fault(
                    "power",
                    "must be more than 0 kW where elements may be. For a kiln without electric heat write \"elements\": [] and leave \"power\" out.");
            return null;
        }
        return power;
    }

    private enum Shape implements Ided {
        POLYGON("polygon"),
        RECTANGLE("rectangle"),
        OVAL("oval"),
        OUTLINE("outline");

        private final String id;

        Shape(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    private static PlanShape plan(Fields f) {
        Shape shape = f.needWord("shape", Shape.class);
        if (shape == null) {
            for (String any : List.of("sides", "acrossFlats", "width", "depth", "stretch", "points", "turn")) {
                f.value(any);
            }
            return null;
        }
        return switch (shape) {
            case POLYGON -> {
                Integer sides = sides(f);
                Quantity flats = f.needQuantity("acrossFlats", Kind.LENGTH, Range.SIZE);
                Quantity turn = f.quantity("turn", Kind.ANGLE, Range.ANY);
                yield sides == null || flats == null ? null : new PlanShape.PolygonPlan(sides, flats, turn);
            }
            case RECTANGLE -> {
                Quantity width = f.needQuantity("width", Kind.LENGTH, Range.SIZE);
                Quantity depth = f.needQuantity("depth", Kind.LENGTH, Range.SIZE);
                Quantity turn = f.quantity("turn", Kind.ANGLE, Range.ANY);
                yield width == null || depth == null ? null : new PlanShape.RectanglePlan(width, depth, turn);
            }
            case OVAL -> {
                Integer sides = sides(f);
                Quantity flats = f.needQuantity("acrossFlats", Kind.LENGTH, Range.SIZE);
                Quantity stretch = f.needQuantity("stretch", Kind.LENGTH, Range.DISTANCE);
                Quantity turn = f.quantity("turn", Kind.ANGLE, Range.ANY);
                if (sides != null && sides % 2 != 0) {
                    f.fault("sides", "an oval has an even number of sides, not " + sides + ".");
                    yield null;
                }
                yield sides == null || flats == null || stretch == null
                        ? null
                        : new PlanShape.OvalPlan(sides, flats, stretch, turn);
            }
            case OUTLINE -> {
                f.need("points", "[[\"x\", \"y\"], …], clockwise seen from above");
                List<Place> points = f.list("points", (v, at) -> Values.place(v, at, f.faults()));
                yield points == null ? null : new PlanShape.OutlinePlan(points);
            }
        };
    }

    private static Integer sides(Fields f) {
        f.need("sides", "8");
        return f.integer("sides", 4, MANY);
    }

    private static Slab slab(Fields kiln, String name) {
        kiln.need(name, "{\"thickness\": \"2 1/2 in\"}");
        return kiln.object(
                name,
                f -> new Slab(
                        f.needQuantity("thickness", Kind.LENGTH, Range.LINING),
                        f.text("brick"),
                        f.quantity("overhang", Kind.LENGTH, Range.between("-1 m", "1 m")),
                        f.bool("pan"),
                        f.object(
                                "joints",
                                j -> new Joints(
                                        j.quantity("brickLength", Kind.LENGTH, Range.BRICK),
                                        j.quantity("row", Kind.LENGTH, Range.BRICK),
                                        j.word("bond", Bond.class),
                                        j.quantity("turn", Kind.ANGLE, Range.ANY),
                                        j.place("offset")))));
    }

    private static ElementRun element(Fields f) {
        String name = f.name();
        On on = f.needWord("on", On.class);
        Quantity height = null;
        List<Integer> panels = null;
        List<Place> path = null;
        boolean wall = on == On.WALL;
        if (on == null || wall) {
            height = f.quantity("height", Kind.LENGTH, Range.SIZE);
            panels = f.list("panels", (v, at) -> Values.integer(v, at, 1, 1000, f.faults()));
        } else {
            f.refuse("height", "belongs to wall elements; an element on the " + on.id() + " has \"path\".");
            f.refuse("panels", "belongs to wall elements; an element on the " + on.id() + " has \"path\".");
        }
        if (on == null || !wall) {
            path = path(f);
        } else {
            f.refuse("path", "belongs to floor and lid elements; a wall element has \"height\".");
        }
        Groove groove = f.object("groove", g -> groove(g, on));
        Quantity coil = f.quantity("coil", Kind.LENGTH, Range.THICKNESS);
        Tails tails = f.object("tails", t -> {
            Integer panel = t.integer("panel", 1, 1000);
            Place at = t.place("at");
            return new Tails(panel, at, t.quantity("diameter", Kind.LENGTH, Range.THICKNESS));
        });
        return new ElementRun(name, on, height, panels, path, groove, coil, tails);
    }

    private static Groove groove(Fields g, On on) {
        Quantity height = null;
        Quantity width = null;
        Quantity slope = null;
        if (on == On.WALL || on == null) {
            height = g.quantity("height", Kind.LENGTH, Range.THICKNESS);
            slope = g.quantity("slope", Kind.ANGLE, Range.between("0 deg", "60 deg"));
        } else {
            g.refuse("height", "is the opening of a wall groove; a groove in the " + on.id() + " has \"width\".");
            g.refuse("slope", "belongs to wall grooves.");
        }
        if (on == On.WALL) {
            g.refuse("width", "is for grooves in floor and lid; a wall groove has \"height\".");
        } else {
            width = g.quantity("width", Kind.LENGTH, Range.THICKNESS);
        }
        return new Groove(height, width, g.quantity("depth", Kind.LENGTH, Range.THICKNESS), slope);
    }

    private static List<Place> path(Fields f) {
        List<Place> path = f.list("path", (v, at) -> Values.place(v, at, f.faults()));
        if (path != null && path.size() < 2 && f.faults().none()) {
            f.fault("path", "a path has at least two points.");
        }
        return path;
    }

    /** Letter of a thermocouple, large; null when not given. */
    private static String thermocouple(Fields f) {
        String typed = f.text("type");
        Matcher m = THERMOCOUPLE.matcher(typed == null ? "" : typed);
        if (typed != null && !m.matches()) {
            f.fault("type", "one letter of a thermocouple is expected: B, E, J, K, N, R, S or T, as on its plug.");
        }
        return m.matches() ? m.group(1).toUpperCase(Locale.ROOT) : null;
    }

    private static Fitting fitting(Fields f) {
        String name = f.name();
        FittingKind kind = f.needWord("kind", FittingKind.class);
        String type = thermocouple(f);
        String grade = f.text("class");
        On on = f.needWord("on", On.class);
        Integer panel = PortReader.panel(f, on);
        Place at = f.place("at");
        Quantity diameter = f.quantity("diameter", Kind.LENGTH, Range.SIZE);
        Size2 size = f.has("size") ? size(f) : null;
        f.value("size");
        List<Place> path = path(f);
        int shapes = (diameter == null ? 0 : 1) + (size == null ? 0 : 1);
        if (shapes == 2) {
            f.fault("size", "the shape is given twice. Keep \"diameter\" or \"size\".");
        }
        return new Fitting(
                name,
                kind,
                type,
                grade,
                on,
                panel,
                at,
                diameter,
                size,
                f.quantity("turn", Kind.ANGLE, Range.ANY),
                path,
                f.quantity("standoff", Kind.LENGTH, Range.DISTANCE),
                f.quantity("reach", Kind.LENGTH, Range.DISTANCE),
                f.quantity("clear", Kind.LENGTH, Range.DISTANCE));
    }

    private static Size2 size(Fields f) {
        if (!(f.value("size") instanceof Json.Arr)) {
            f.fault("size", "two lengths are expected, [\"width\", \"depth\"]; for a round one write \"diameter\".");
            return null;
        }
        List<Quantity> two = f.list("size", (v, at) -> Values.quantity(v, at, Kind.LENGTH, Range.SIZE, f.faults()));
        if (two == null) {
            return null;
        }
        if (f.value("size") instanceof Json.Arr a && a.items().size() != 2) {
            f.fault(
                    "size",
                    "a size has two lengths, [\"width\", \"depth\"]; here are "
                            + a.items().size() + ".");
        }
        return two.size() == 2 ? new Size2(two.get(0), two.get(1)) : null;
    }
}
