package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;

/**
 * What a wandering drill does to a design: odds of a stop for each hole, the mark's best place, and how far each hole may wander.
 * All holes share one stream of random numbers, so that two places are compared by the same drillings. Rules on clearances of single holes, on the
 * brick between holes and on the weakest section; the balance hardly moves with a drill and is left to the check, and so are holes in neighbouring panels of a wall. Bores start on the outside, where
 * the template is taped, so that a lean shows most at the hot face.
 */
public final class Tolerance {
    /** Drillings simulated for one answer. */
    public static final int DRAWS = 20_000;

    private static final long SEED = 20260102;
    private static final int BEARINGS = 16;

    private static final double[] NO_SECTION =
            DoubleStream.generate(() -> Wander.MOST_MM).limit(BEARINGS).toArray();

    private final KilnGeometry kiln;
    private final DrillError error;
    private final List<DrilledHole> holes;

    private final Map<String, double[]> sections = new HashMap<>();

    private Tolerance(Design design, DrillError error) {
        this.error = error;
        kiln = KilnGeometry.of(design);
        holes = DrilledHole.of(design, kiln);
    }

    /** How far each hole may wander: those of floor and lid, then those of walls. */
    public static List<Wander> wander(Design design) {
        Tolerance t = new Tolerance(design, DrillError.of(design));
        List<Wander> out = new ArrayList<>(
                t.holes.stream().filter(h -> !h.wall()).map(t::wander).toList());
        out.addAll(WallWander.of(design));
        return List.copyOf(out);
    }

    /** Odds of a stop for each hole, as the design says that the drill strays. */
    public static List<HoleOdds> odds(Design design) {
        return odds(design, DrillError.of(design), DRAWS);
    }

    /** Odds of a stop with given errors and number of drillings. */
    public static List<HoleOdds> odds(Design design, DrillError error, int draws) {
        Tolerance t = new Tolerance(design, error);
        double[][] random = t.random(draws);
        return t.holes.stream().map(h -> t.odds(h, random)).toList();
    }

    /** Spare above the tightest stop of a bore square to the slab; negative where a rule stops. */
    private double spare(DrilledHole h, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (Obstacle o : h.near()) {
            least = Math.min(least, o.gap().at(x, y) - o.stop());
        }
        for (DrilledHole other : holes) {
            if (other != h && other.samePart(h)) {
                least = Math.min(least, Math.hypot(x - other.x(), y - other.y()) - apart(h, other));
            }
        }
        return least;
    }

    /** Distance of two centres at the stop. */
    private double apart(DrilledHole a, DrilledHole b) {
        return a.radius() + b.radius() + Math.max(a.spacingStop(), b.spacingStop());
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

    /** For each hole and draw: centre x, y, tilt shift x, y (of the whole thickness), growth of the radius; then one x, y of the measured elements. */
    private double[][] random(int draws) {
        SplittableRandom r = new SplittableRandom(SEED);
        double[][] out = new double[holes.size() * 5 + 2][draws];
        for (int i = 0; i < draws; i++) {
            for (int h = 0; h < holes.size(); h++) {
                double t = error.tiltSigma(kiln.thickness(holes.get(h).port().on()));
                out[5 * h][i] = error.centreSigma() * r.nextGaussian();
                out[5 * h + 1][i] = error.centreSigma() * r.nextGaussian();
                out[5 * h + 2][i] = t * r.nextGaussian();
                out[5 * h + 3][i] = t * r.nextGaussian();
                out[5 * h + 4][i] = error.oversizeMm() / 2 * r.nextDouble();
            }
            out[5 * holes.size()][i] = error.measureSigma() * r.nextGaussian();
            out[5 * holes.size() + 1][i] = error.measureSigma() * r.nextGaussian();
        }
        return out;
    }

    private HoleOdds odds(DrilledHole h, double[][] random) {
        int draws = random[0].length;
        Map<String, Integer> counts = new TreeMap<>();
        double p = stops(h, random, 0, 0, counts) / (double) draws;
        Map<String, Double> byRule = new TreeMap<>();
        counts.forEach((rule, n) -> byRule.put(rule, n / (double) draws));
        double[] nudge = p == 0 ? new double[] {0, 0, 0} : nudge(h, random, p);
        return new HoleOdds(h.port().name(), p, Math.sqrt(p * (1 - p) / draws), byRule, nudge[0], nudge[1], nudge[2]);
    }

    /** Shift of the mark with the fewest stops, by ever shorter steps; of as many the shorter shift. */
    private double[] nudge(DrilledHole h, double[][] random, double start) {
        double[] best = {0, 0, start};
        int draws = random[0].length;
        for (double step = 4; step >= 0.5; step /= 2) {
            boolean moved = true;
            for (int round = 0; moved && round < 8; round++) {
                moved = false;
                for (int k = 0; k < 8; k++) {
                    double x = best[0] + step * Math.sin(k * Math.PI / 4);
                    double y = best[1] + step * Math.cos(k * Math.PI / 4);
                    double p = stops(h, random, x, y, null) / (double) draws;
                    if (p < best[2]) {
                        best = new double[] {x, y, p};
                        moved = true;
                    }
                }
            }
        }
        return best;
    }

    /** Number of drillings that stop with the mark shifted by (mx, my). */
    private int stops(DrilledHole h, double[][] random, double mx, double my, Map<String, Integer> counts) {
        int me = holes.indexOf(h);
        double[] cx = random[5 * me];
        double[] cy = random[5 * me + 1];
        double[] tx = random[5 * me + 2];
        double[] ty = random[5 * me + 3];
        double[] grow = random[5 * me + 4];
        double[] gx = random[5 * holes.size()];
        double[] gy = random[5 * holes.size() + 1];
        double nominal = h.radius() - h.diameter() / 2;
        Obstacle[] near = h.near().stream()
                .sorted(Comparator.comparingDouble(o -> o.gap().at(h.x(), h.y()) - o.stop()))
                .toArray(Obstacle[]::new);
        List<DrilledHole> others = holes.stream()
                .filter(o -> o != h
                        && o.samePart(h)
                        && Math.hypot(h.x() - o.x(), h.y() - o.y()) - apart(h, o) < DrilledHole.REACH)
                .toList();
        double[] sections = sections(h);
        boolean weak = Arrays.stream(sections).min().orElse(0) < Wander.MOST_MM;
        int total = 0;
        for (int i = 0; i < cx.length; i++) {
            boolean stop = false;
            Set<String> broken = null;
            double x = h.x() + mx + cx[i];
            double y = h.y() + my + cy[i];
            for (int k = 0; k < near.length && (counts != null || !stop); k++) {
                if (breaks(
                        near[k],
                        x,
                        y,
                        tx[i],
                        ty[i],
                        grow[i] - nominal,
                        near[k].moves() ? gx[i] : 0,
                        near[k].moves() ? gy[i] : 0)) {
                    stop = true;
                    broken = note(broken, near[k].rule(), counts);
                }
            }
            for (int k = 0; k < others.size() && (counts != null || !stop); k++) {
                if (meets(h, others.get(k), x, y, random, i, grow[i], tx[i], ty[i])) {
                    stop = true;
                    broken = note(broken, "port-spacing", counts);
                }
            }
            if (weak
                    && (counts != null || !stop)
                    && SectionRoom.leaves(sections, x - h.x(), y - h.y(), Wander.MOST_MM)) {
                stop = true;
                note(broken, "weakest-section", counts);
            }
            total += stop ? 1 : 0;
        }
        return total;
    }

    /** Counts each rule once a drilling. */
    private static Set<String> note(Set<String> broken, String rule, Map<String, Integer> counts) {
        if (counts == null) {
            return null;
        }
        Set<String> now = broken == null ? new HashSet<>() : broken;
        if (now.add(rule)) {
            counts.merge(rule, 1, Integer::sum);
        }
        return now;
    }

    /** The bore against an obstacle, at both ends of the depth where it lies. */
    private static boolean breaks(
            Obstacle o, double x, double y, double tx, double ty, double wider, double gx, double gy) {
        double limit = o.stop() + (o.grows() ? wider : 0);
        double near = 1 - o.from();
        double far = 1 - o.to();
        return o.gap().at(x + near * tx - gx, y + near * ty - gy) < limit
                || o.to() > o.from() && o.gap().at(x + far * tx - gx, y + far * ty - gy) < limit;
    }

    private boolean meets(
            DrilledHole h,
            DrilledHole o,
            double x,
            double y,
            double[][] random,
            int i,
            double grow,
            double tx,
            double ty) {
        int it = holes.indexOf(o);
        double dx = x - o.x() - random[5 * it][i];
        double dy = y - o.y() - random[5 * it + 1][i];
        double limit = (h.diameter() + o.diameter()) / 2
                + grow
                + random[5 * it + 4][i]
                + Math.max(h.spacingStop(), o.spacingStop());
        double ex = dx + tx - random[5 * it + 2][i];
        double ey = dy + ty - random[5 * it + 3][i];
        return dx * dx + dy * dy < limit * limit || ex * ex + ey * ey < limit * limit;
    }
}
