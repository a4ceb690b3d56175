package portwright.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;

/**
 * What a wandering drill does to a design: odds of a stop for each hole, the mark's best place, and how far each hole may wander.
 * One drilling strays each hole for itself and the measured elements once for all; two places are compared by the same drillings. Rules on clearances of single holes, on the
 * brick between holes and on the weakest section; the balance hardly moves with a drill and is left to the check, and so are holes in neighbouring panels of a wall. Bores start on the outside, where
 * the template is taped, so that a lean shows most at the hot face.
 */
public final class Tolerance {
    /** Drillings simulated for one answer. */
    public static final int DRAWS = 20_000;

    private static final int BEARINGS = 16;

    private static final double[] NO_SECTION =
            DoubleStream.generate(() -> Wander.MOST_MM).limit(BEARINGS).toArray();

    private final KilnGeometry kiln;
    private final List<DrilledHole> holes;

    private final Map<String, double[]> sections = new HashMap<>();

    private Tolerance(Design design) {
        kiln = KilnGeometry.of(design);
        holes = DrilledHole.of(design, kiln);
    }

    /** How far each hole may wander: those of floor and lid, then those of walls. */
    public static List<Wander> wander(Design design) {
        Tolerance t = new Tolerance(design);
        List<Wander> out = new ArrayList<>(
                t.holes.stream().filter(h -> !h.wall()).map(t::wander).toList());
        out.addAll(WallWander.of(design));
        return List.copyOf(out);
    }

    /**
     * Odds of a stop.
     *
     * @param holes one a hole, in file order
     * @param allInside share of kilns, each with all its holes drilled, in which no hole breaks a limit that stops; 0 to 1
     */
    record Odds(List<HoleOdds> holes, double allInside) {}

    /** Odds of a stop, as the design says that the drill strays. */
    static Odds odds(Design design) {
        return odds(design, DrillError.of(design), DRAWS);
    }

    /** Odds of a stop with given errors and number of drillings. */
    static Odds odds(Design design, DrillError error, int draws) {
        Tolerance t = new Tolerance(design);
        Drillings drillings = new Drillings(t.kiln, error, t.holes, draws);
        BitSet stopped = new BitSet(draws);
        List<HoleOdds> each =
                t.holes.stream().map(h -> t.odds(h, drillings, stopped)).toList();
        return new Odds(each, 1 - stopped.cardinality() / (double) draws);
    }

    /** Spare above the tightest stop of a bore square to the slab; negative where a rule stops. */
    private double spare(DrilledHole h, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (Obstacle o : h.near()) {
            least = Math.min(least, o.gap().at(x, y) - o.stop());
        }
        for (DrilledHole other : holes) {
            if (other != h && other.samePart(h)) {
                least = Math.min(least, Math.hypot(x - other.x(), y - other.y()) - h.apart(other));
            }
        }
        return least;
    }

    private String worst(DrilledHole h, double x, double y) {
        double least = spare(h, x, y);
        return h.near().stream()
                .filter(o -> o.gap().at(x, y) - o.stop() <= least + 1e-9)
                .map(Obstacle::rule)
                .findFirst()
                .orElse("port-spacing");
    }

    private Wander wander(DrilledHole h) {
        List<Double> bearings = new ArrayList<>();
        List<Double> allowed = new ArrayList<>();
        List<String> rules = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double leastBearing = 0;
        for (int k = 0; k < BEARINGS; k++) {
            double bearing = 360.0 * k / BEARINGS;
            double sx = Math.sin(Math.toRadians(bearing));
            double sy = Math.cos(Math.toRadians(bearing));
            double far = 0;
            // a clearance changes by no more than the centre moves: step by the spare that is left
            for (int i = 0; i < 400 && far < Wander.MOST_MM; i++) {
                double s = spare(h, h.x() + far * sx, h.y() + far * sy);
                if (s <= 1e-4) {
                    break;
                }
                far += s;
            }
            far = Math.min(far, Wander.MOST_MM);
            double whole = sections(h)[k];
            bearings.add(bearing);
            rules.add(
                    Math.min(far, whole) >= Wander.MOST_MM
                            ? ""
                            : whole < far ? "weakest-section" : worst(h, h.x() + far * sx, h.y() + far * sy));
            far = Math.min(far, whole);
            allowed.add(far);
            if (far < least) {
                least = far;
                leastBearing = bearing;
            }
        }
        return new Wander(h.port().name(), false, bearings, allowed, rules, least, leastBearing);
    }

    /** How far the weakest section lets a hole move toward each bearing; no rule asks that of a wall. */
    private double[] sections(DrilledHole h) {
        if (h.wall()) {
            return NO_SECTION;
        }
        return sections.computeIfAbsent(h.port().name(), k -> {
            List<double[]> others = holes.stream()
                    .filter(o -> o != h && o.port().on() == h.port().on())
                    .map(o -> new double[] {o.x(), o.y(), o.radius()})
                    .toList();
            SectionRoom room = new SectionRoom(kiln, h.port().on(), others, h.radius(), h.sectionStop());
            return room.allRound(h.x(), h.y(), BEARINGS, Wander.MOST_MM);
        });
    }

    /** @param stopped drillings of the whole kiln in which a hole stopped; those of this hole join them */
    private HoleOdds odds(DrilledHole h, Drillings random, BitSet stopped) {
        int draws = random.count();
        Map<String, Integer> counts = new TreeMap<>();
        double p = random.stops(h, sections(h), 0, 0, counts, stopped) / (double) draws;
        Map<String, Double> byRule = new TreeMap<>();
        counts.forEach((rule, n) -> byRule.put(rule, n / (double) draws));
        Nudge nudge = Nudge.of(
                (x, y) -> random.stops(h, sections(h), x, y, null, null) / (double) draws, p, 1 - HoleOdds.TARGET);
        return new HoleOdds(
                h.port().name(),
                h.wall(),
                p,
                Math.sqrt(p * (1 - p) / draws),
                byRule,
                nudge.x(),
                nudge.y(),
                nudge.stop());
    }
}
