package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.geometry.Pt;

/**
 * The places of n holes on one slab that come nearest to passing: fewest stops, then the least deep ({@link Shortfall}), then the least off balance. Hole
 * by hole all places of the slab are tried, from several starts, until no other place of any one hole is nearer. Holes lie in the chamber, where one fits, and never overlap. Where the design
 * has its holes is not asked. Lengths in mm.
 */
final class NearMiss {
    /** How holes are named that stand where least stops them. */
    static final String FAMILY = "where least stops them";

    private static final int STARTS = 12;
    /** Places along one side at most, and how far apart at least. */
    private static final int ALONG = 400;

    private static final double APART_MM = 1;
    /** How far about its place each hole is tried at every step of a tape in the end, and how far at the finest. */
    private static final double ABOUT_MM = 60;

    private static final double FINEST_MM = 1.5;
    private static final int ROUNDS = 100;
    /** Weakest sections weighed for one hole at most, as they take nearly all the time. */
    private static final int SECTIONS = 300;

    private final Site site;
    private final int n;
    private final Typed typed;
    private final Progress progress;
    private final Pt middle;
    private final double[] x;
    private final double[] y;

    NearMiss(Site site, int n, Typed typed, Progress progress) {
        this.site = site;
        this.n = n;
        this.typed = typed;
        this.progress = progress;
        middle = site.kiln.centre();
        x = new double[n];
        y = new double[n];
    }

    /** The nearest places found, at steps of a tape, or finer where that is nearer. */
    Spots run() {
        StopField field = new StopField(site, typed.step());
        double side = 2 * site.kiln.inner().bounds().a().distance(middle);
        int steps = (int) Math.ceil(Math.max(APART_MM, side / ALONG) / typed.step() - 1e-9);
        List<StopField.Node> all = field.all(steps);
        Shortfall best = null;
        double[][] at = null;
        for (StopField.Node first : firsts(all)) {
            if (progress.cancelled() && at != null) {
                break;
            }
            set(first, all);
            Shortfall s = settled(i -> all, ROUNDS);
            if (at == null || s.compareTo(best) < 0 || s.compareTo(best) == 0 && offset() < offset(at[0], at[1])) {
                best = s;
                at = new double[][] {x.clone(), y.clone()};
            }
        }
        System.arraycopy(at[0], 0, x, 0, n);
        System.arraycopy(at[1], 0, y, 0, n);
        best = settled(i -> field.about(x[i], y[i], ABOUT_MM), ROUNDS);
        double[][] tape = {x.clone(), y.clone()};
        StopField finest = new StopField(site, typed.finer().step());
        Shortfall finer = settled(i -> finest.about(x[i], y[i], FINEST_MM), ROUNDS);
        return finer.stops() < best.stops() || best.beyond(finer) ? spots(x, y) : spots(tape[0], tape[1]);
    }

    private Spots spots(double[] atX, double[] atY) {
        return new Spots(FAMILY, false, atX.clone(), atY.clone(), site.margin(atX, atY, Double.NEGATIVE_INFINITY));
    }

    /** The best places, none within a hole's width of another. */
    private List<StopField.Node> firsts(List<StopField.Node> all) {
        List<StopField.Node> out = new ArrayList<>();
        for (StopField.Node q : all) {
            if (out.size() < (n == 1 ? 1 : STARTS)
                    && out.stream().noneMatch(o -> Math.hypot(o.x() - q.x(), o.y() - q.y()) < site.diameter)) {
                out.add(q);
            }
        }
        return out;
    }

    /** Beside a first hole each next one where the least stops it. */
    private void set(StopField.Node first, List<StopField.Node> all) {
        x[0] = first.x();
        y[0] = first.y();
        for (int i = 1; i < n; i++) {
            StopField.Node to = moved(i, i + 1, all, null);
            x[i] = to.x();
            y[i] = to.y();
        }
    }

    /** Places that a hole is tried at. */
    private interface Tried {
        List<StopField.Node> of(int hole);
    }

    /** Moves hole by hole until none gains; what then stops them. */
    private Shortfall settled(Tried places, int rounds) {
        boolean moved = true;
        for (int k = 0; k < rounds && moved && !progress.cancelled(); k++) {
            moved = false;
            for (int i = 0; i < n; i++) {
                StopField.Node to = moved(i, n, places.of(i), total());
                if (to != null) {
                    x[i] = to.x();
                    y[i] = to.y();
                    moved = true;
                }
            }
        }
        return total();
    }

    /**
     * Where one hole is nearer to passing, the others standing still; null where nowhere.
     *
     * @param many holes that stand
     * @param than what is to be bettered; null where anything does
     */
    private StopField.Node moved(int hole, int many, List<StopField.Node> places, Shortfall than) {
        Shortfall others = Shortfall.NONE;
        StopField field = new StopField(site, 1);
        for (int i = 0; i < many; i++) {
            if (i != hole) {
                others = others.and(field.alone(x[i], y[i]));
                for (int j = 0; j < i; j++) {
                    others = j == hole ? others : others.and(between(i, j));
                }
            }
        }
        double wasX = x[hole];
        double wasY = y[hole];
        Shortfall best = than;
        double off = than == null ? Double.POSITIVE_INFINITY : offset();
        StopField.Node to = null;
        int sections = 0;
        for (StopField.Node q : places) {
            Shortfall s = others.and(q.alone());
            if (best != null && s.beyond(best) || sections > SECTIONS) {
                break;
            }
            if (best != null && s.compareTo(best) > 0) {
                continue;
            }
            x[hole] = q.x();
            y[hole] = q.y();
            s = beside(hole, many, s);
            if (!nearer(s, best, off)) {
                continue;
            }
            if (many == n) {
                sections++;
                s = s.and(site.section(x, y));
            }
            if (nearer(s, best, off)) {
                best = s;
                off = offset();
                to = q;
            }
        }
        x[hole] = wasX;
        y[hole] = wasY;
        return to;
    }

    private boolean nearer(Shortfall s, Shortfall best, double off) {
        return best == null || s.compareTo(best) < 0 || s.compareTo(best) == 0 && offset() < off - 1e-6;
    }

    /** With what the brick between a hole and the others lacks. */
    private Shortfall beside(int hole, int many, Shortfall alone) {
        Shortfall out = alone;
        for (int j = 0; j < many; j++) {
            if (j != hole) {
                out = out.and(between(hole, j));
            }
        }
        return out;
    }

    /** What the brick between two holes lacks; where they overlap more than any place may. */
    private Shortfall between(int i, int j) {
        boolean overlap = Math.hypot(x[i] - x[j], y[i] - y[j]) < 2 * site.radius;
        Shortfall s = Shortfall.NONE.and(site.pair(x[i], y[i], x[j], y[j]));
        return overlap ? new Shortfall(StopField.NO_PLACE, s.depth(), s.all()) : s;
    }

    private Shortfall total() {
        Shortfall out = Shortfall.NONE;
        StopField field = new StopField(site, 1);
        for (int i = 0; i < n; i++) {
            out = out.and(field.alone(x[i], y[i]));
            for (int j = 0; j < i; j++) {
                out = out.and(between(i, j));
            }
        }
        return out.and(site.section(x, y));
    }

    private double offset() {
        return offset(x, y);
    }

    private double offset(double[] atX, double[] atY) {
        return Math.hypot(
                Arrays.stream(atX).average().orElse(0) - middle.x(),
                Arrays.stream(atY).average().orElse(0) - middle.y());
    }
}
