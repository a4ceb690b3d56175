package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import portwright.check.rules.geometry.EdgeDistance;
import portwright.check.rules.geometry.ElementClearance;
import portwright.check.rules.geometry.FittingClearance;
import portwright.check.rules.geometry.FlameOnElement;
import portwright.check.rules.geometry.FlameOnFitting;
import portwright.check.rules.geometry.PortSpacing;
import portwright.geometry.CoilRun;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.Role;
import portwright.units.Quantity;

/** The wall made ready for inlets of one diameter: margins of places in its panels, by the rule book's own measures. Lengths in mm. */
final class WallSite {
    /** Clearances farther than this many caution limits do not limit a layout. */
    private static final double REACH = 4;

    /** What a hole lacks anywhere for the wall to count as full, mm. */
    private static final double PROOF_MM = 0.5;

    /** After the name of a fitting whose turn is not stated: nearer than its half diagonal the rule cannot be checked. */
    static final String UNTURNED = " whichever way it lies";

    final KilnGeometry kiln;
    final double diameter;
    final double radius;
    private final LayoutLimits limits;
    private final Set<String> skip;
    private final Set<String> elements;
    private final boolean coilsOff;
    private final List<FlameOnFitting.Body> bodies;
    /** Whether it has no place; null until asked. */
    private Boolean full;

    private final Map<Integer, List<Measure>> measured = new HashMap<>();

    /** @param skip rules left out, to find out which one makes a layout impossible */
    WallSite(KilnGeometry kiln, LayoutLimits limits, double diameter, double oversize, Set<String> skip) {
        this.kiln = kiln;
        this.limits = limits;
        this.diameter = diameter;
        this.radius = (diameter + oversize) / 2;
        this.skip = skip;
        elements = ElementClearance.names(kiln);
        bodies = FlameOnFitting.bodies(kiln);
        coilsOff = FlameOnElement.offWithGas(kiln.design());
    }

    Hole hole(String name, int panel, double u, double v) {
        Port port = new Port(
                name,
                Role.INLET,
                On.WALL,
                panel,
                new Place.Cartesian(Quantity.ofMm(u), Quantity.ofMm(v)),
                Quantity.ofMm(diameter));
        return new Hole(port, new Face(On.WALL, panel, true), new Pt(u, v), diameter, 2 * radius);
    }

    /** Margin of one hole by itself. */
    double margin(Hole h) {
        return alone(h).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
    }

    /** Whether no panel has a place for one hole, to within half a millimetre of brick: proven, not sampled. */
    boolean nowhere() {
        full = full == null ? Boolean.valueOf(proven()) : full;
        return full;
    }

    private boolean proven() {
        double up = kiln.height() / 2 - radius;
        for (int p = 1; p <= kiln.panels().size(); p++) {
            double side = kiln.panel(p).width() / 2 - radius;
            if (up <= 0 || side <= 0 || !dead(p, 0, kiln.height() / 2, side, up)) {
                return false;
            }
        }
        return true;
    }

    /** Whether every place of a rectangle about a middle is stopped: what a hole lacks changes by no more than it moves. */
    private boolean dead(int panel, double u, double v, double side, double up) {
        double reach = Math.hypot(side, up);
        double lacks = lacksMm(hole("", panel, u, v), reach);
        if (lacks > reach) {
            return true;
        }
        if (lacks <= PROOF_MM) {
            return false;
        }
        double s = side > up ? side / 2 : 0;
        double w = side > up ? 0 : up / 2;
        return dead(panel, u - s, v - w, s > 0 ? s : side, w > 0 ? w : up)
                && dead(panel, u + s, v + w, s > 0 ? s : side, w > 0 ? w : up);
    }

    /** The most that any rule lacks at a place, mm, 0 where none stops; once over {@code enough} no more is looked at. */
    private double lacksMm(Hole h, double enough) {
        double most = 0;
        for (Measure m : measures(h.face().panel())) {
            if (most <= enough && !Double.isNaN(m.stop())) {
                most = Math.max(most, m.stop() - m.room().applyAsDouble(h));
            }
        }
        return most;
    }

    /** Margin of the brick between two holes; free where they lie in panels apart. */
    double pair(Hole a, Hole b) {
        return meets(a, b) ? between(a, b).margin() : Scale.FREE;
    }

    /** Whether two holes run into each other. */
    boolean overlap(Hole a, Hole b) {
        return meets(a, b) && PortSpacing.room(kiln, a, b) < 0;
    }

    /** Least margin of these places. */
    double margin(Spots s) {
        return terms(s).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
    }

    /** Every term of these places, tightest first. */
    List<Term> terms(Spots s) {
        return terms(IntStream.range(0, s.x().length)
                .mapToObj(i -> hole(String.valueOf(i), s.panels()[i], s.x()[i], s.y()[i]))
                .toList());
    }

    /** Every term of these holes, tightest first. */
    List<Term> terms(List<Hole> holes) {
        List<Term> out = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            out.addAll(alone(holes.get(i)));
            for (int j = 0; j < i; j++) {
                if (meets(holes.get(j), holes.get(i))) {
                    out.add(between(holes.get(j), holes.get(i)));
                }
            }
        }
        out.sort(Comparator.comparingDouble(Term::margin));
        return out;
    }

    /** A clearance of a hole in the wall as a rule measures it. */
    private record Measure(
            String rule, String part, ToDoubleFunction<Hole> room, double stop, double caution, boolean moves) {
        /** Room from which it does not limit a layout. */
        double far() {
            return REACH * (caution > 0 ? caution : Scale.BESIDE_MM);
        }
    }

    private List<Measure> measures(int panel) {
        return measured.computeIfAbsent(panel, this::made);
    }

    private List<Measure> made(int panel) {
        List<Measure> out = new ArrayList<>();
        out.add(new Measure(
                "edge-distance",
                "the edge of " + kiln.panel(panel).words(),
                h -> EdgeDistance.room(kiln, h),
                limits.value("edge-distance", "panel-stop"),
                limits.value("edge-distance", "panel-caution"),
                false));
        double caution = limits.elementCaution();
        for (String e : elements) {
            out.add(new Measure(
                    "element-clearance",
                    e,
                    h -> ElementClearance.room(kiln, h, e, REACH * caution),
                    limits.elementStop(),
                    caution,
                    true));
        }
        for (FittingShape f : kiln.fittings()) {
            double clear = limits.fitting(f.fitting());
            out.add(new Measure(
                    "fitting-clearance",
                    f.name(),
                    h -> FittingClearance.room(kiln, h, f, REACH * clear),
                    clear / 2,
                    clear,
                    false));
            out.add(new Measure(
                    "fitting-clearance",
                    f.name() + UNTURNED,
                    h -> f.face().samePart(h.face())
                            ? FittingClearance.otherWayRound(h, f) - clear / 2
                            : Double.POSITIVE_INFINITY,
                    Double.NaN,
                    0,
                    false));
        }
        for (FlameOnFitting.Body b : bodies) {
            out.add(new Measure(
                    "flame-on-fitting",
                    b.name(),
                    h -> FlameOnFitting.room(kiln, h, b, REACH * Scale.BESIDE_MM),
                    Double.NaN,
                    0,
                    false));
        }
        double wide = limits.value("flame-on-element", "caution");
        double stop = coilsOff ? Double.NaN : limits.value("flame-on-element", "stop");
        for (CoilRun c : kiln.coils()) {
            out.add(new Measure(
                    "flame-on-element",
                    c.name(),
                    h -> FlameOnElement.room(kiln, h, c, REACH * wide),
                    stop,
                    wide,
                    true));
        }
        out.removeIf(m -> skip.contains(m.rule()));
        return out;
    }

    private List<Term> alone(Hole h) {
        List<Term> out = new ArrayList<>();
        for (Measure m : measures(h.face().panel())) {
            double room = m.room().applyAsDouble(h);
            if (room < m.far()) {
                out.add(new Term(
                        m.rule(),
                        List.of(h.name(), m.part()),
                        room,
                        m.stop(),
                        m.caution(),
                        "mm",
                        Scale.atLeast(room, m.stop(), m.caution())));
            }
        }
        return out;
    }

    /** What a drill near a mark in a panel may run into. Each counts at both ends of the bore, strict for a groove; a flame at its mouth alone. */
    List<Obstacle> obstacles(int panel, double x, double y) {
        return measures(panel).stream()
                .filter(m -> m.caution() > 0)
                .map(m -> new Obstacle(
                        m.rule(),
                        m.part(),
                        m.stop(),
                        m.caution(),
                        new NearGap((u, v) -> m.room().applyAsDouble(hole("", panel, u, v)), x, y),
                        0,
                        m.rule().startsWith("flame-on-") ? 0 : 1,
                        m.moves(),
                        null,
                        Double.NaN))
                .toList();
    }

    /** Least brick between two holes in the wall. */
    double spacingStop() {
        return Math.max(diameter, limits.value("port-spacing", "limit")) / 2;
    }

    private boolean meets(Hole a, Hole b) {
        return a.face().samePart(b.face()) || PortSpacing.neighbours(kiln, a, b);
    }

    private Term between(Hole a, Hole b) {
        double least = limits.value("port-spacing", "limit");
        // without the rule holes may touch, not overlap
        boolean spaced = !skip.contains("port-spacing");
        double stop = spaced ? spacingStop() : 0;
        double caution = spaced ? Math.max(Math.max(diameter, kiln.thickness(On.WALL)), least) : 0;
        double room = PortSpacing.room(kiln, a, b);
        return new Term(
                "port-spacing",
                List.of(a.name(), b.name()),
                room,
                stop,
                caution,
                "mm",
                Scale.atLeast(room, stop, caution));
    }
}
