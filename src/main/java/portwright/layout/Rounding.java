package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import portwright.geometry.Pt;

/**
 * Rounds places to what a tape shows. Nearest is not always best: half a step can leave a sliver of brick at a joint. From the nearest, holes are moved
 * by single steps as long as the margin gains; holes that mirror each other move as mirrors, those on a circle together, and
 * those in a wall never up.
 */
final class Rounding {
    private static final int ROUNDS = 12;
    private static final double SAME_MM = 1e-6;
    private static final long SEED = 17;
    private static final int SHAKES = 600;

    private final Typed typed;
    private final Pt middle;
    private final Weigher weigher;
    private final boolean circles;

    /** Margin of rounded places; whatever is not above {@code enough} may be answered roughly. */
    interface Weigher {
        double margin(Spots inlets, Spots flues, double enough);
    }

    /** @param circles whether holes on a circle about the origin stay on it, at whole lengths of its radius and half degrees */
    Rounding(Typed typed, Pt middle, boolean circles, Weigher weigher) {
        this.circles = circles;
        this.typed = typed;
        this.middle = middle;
        this.weigher = weigher;
    }

    /** Inlets and flues at rounded places. */
    List<Spots> best(Spots inlets, Spots flues) {
        Spots[] at = {nearest(inlets), nearest(flues)};
        double best = weigher.margin(at[0], at[1], Double.NEGATIVE_INFINITY);
        SplittableRandom random = new SplittableRandom(SEED);
        double from = Double.NEGATIVE_INFINITY;
        for (int round = 0; (round == 0 || best > from) && round < ROUNDS; round++) {
            from = best;
            best = stepped(at, inlets, flues, shaken(at, inlets, flues, best, random));
        }
        return List.of(at[0], at[1]);
    }

    /** Moves hole by hole by single steps until none gains. */
    private double stepped(Spots[] at, Spots inlets, Spots flues, double from) {
        double best = from;
        boolean moved = true;
        for (int round = 0; moved && round < ROUNDS; round++) {
            moved = false;
            for (int role = 0; role < at.length; role++) {
                for (int hole = 0; hole < at[role].x().length; hole++) {
                    for (Spots to : beside(at[role], hole)) {
                        if (strays(to, role == 0 ? inlets : flues)) {
                            continue;
                        }
                        Spots was = at[role];
                        at[role] = to;
                        double v = weigher.margin(at[0], at[1], best);
                        if (v > best + 1e-9) {
                            best = v;
                            moved = true;
                        } else {
                            at[role] = was;
                        }
                    }
                }
            }
        }
        return best;
    }

    /** Both roles moved at random by up to two steps: where several holes stand in each other's way, none gains alone. */
    private double shaken(Spots[] at, Spots inlets, Spots flues, double from, SplittableRandom random) {
        double best = from;
        for (int k = 0; k < SHAKES; k++) {
            int holes = inlets.x().length + flues.x().length;
            Spots in = shaken(at[0], holes, random);
            Spots out = shaken(at[1], holes, random);
            if (strays(in, inlets) || strays(out, flues)) {
                continue;
            }
            double v = weigher.margin(in, out, best);
            if (v > best + 1e-9) {
                best = v;
                at[0] = in;
                at[1] = out;
            }
        }
        return best;
    }

    /** Rounding is no search: a hole in the middle stays there, others within two steps of their exact place. */
    private boolean strays(Spots s, Spots exact) {
        double most = s.symmetric() && !s.inWall() && s.x().length == 1 ? 0.75 : 2.5;
        for (int i = 0; i < s.x().length; i++) {
            double off = Math.max(Math.abs(s.x()[i] - exact.x()[i]), Math.abs(s.y()[i] - exact.y()[i]));
            if (off > most * typed.step() && !polar(s)) {
                return true;
            }
        }
        return polar(s)
                && Math.abs(Math.hypot(s.x()[0], s.y()[0]) - Math.hypot(exact.x()[0], exact.y()[0]))
                        > most * typed.step();
    }

    /** About two of all holes moved, of few half. */
    private Spots shaken(Spots s, int holes, SplittableRandom random) {
        Spots out = s;
        for (int i = 0; i < s.x().length && (i == 0 || !polar(s)); i++) {
            if (random.nextInt(Math.max(4, holes)) < 2) {
                int a = random.nextInt(5) - 2;
                int b = random.nextInt(s.inWall() ? 3 : 5) - 2;
                out = polar(s) ? turned(out, a, b) : shifted(out, i, a * typed.step(), b * typed.step());
            }
        }
        return out;
    }

    private boolean polar(Spots s) {
        return circles && circle(s, middle);
    }

    /** Whether places may be written as radius and bearing. */
    static boolean circle(Spots s, Pt middle) {
        return s.family().equals("on a circle") && middle.equals(new Pt(0, 0));
    }

    private Spots nearest(Spots s) {
        double[] x = new double[s.x().length];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            Pt p = polar(s)
                    ? Typed.pt(typed.polar(s.x()[i], s.y()[i]))
                    : new Pt(typed.mm(s.x()[i]), typed.mm(s.y()[i]));
            x[i] = p.x();
            y[i] = p.y();
        }
        return at(s, x, y);
    }

    private static Spots at(Spots s, double[] x, double[] y) {
        return s.at(x, y);
    }

    /** The eight neighbours by a step of one hole, with what moves with it. */
    private List<Spots> beside(Spots s, int hole) {
        List<Spots> out = new ArrayList<>();
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                if ((i != 0 || j != 0) && (!polar(s) || hole == 0) && (!s.inWall() || j <= 0)) {
                    out.add(polar(s) ? turned(s, i, j) : shifted(s, hole, i * typed.step(), j * typed.step()));
                }
            }
        }
        return out;
    }

    private Spots turned(Spots s, int out, int on) {
        double[] x = s.x().clone();
        double[] y = s.y().clone();
        for (int i = 0; i < x.length; i++) {
            double r = Math.max(0, Math.hypot(x[i], y[i]) + out * typed.step());
            double w = Math.atan2(x[i], y[i]) + on * Math.toRadians(typed.stepDegrees());
            x[i] = r * Math.sin(w);
            y[i] = r * Math.cos(w);
        }
        return nearest(at(s, x, y));
    }

    /** One of a mirror pair moved with the other; on the axis along it. */
    private Spots mirrored(Spots s, int hole, double dx, double dy) {
        Mirror m = s.mirror();
        int mate = m.mate(hole);
        double along = m.axis().along(s.x()[hole] + dx, s.y()[hole] + dy);
        double across = mate == hole ? 0 : m.axis().across(s.x()[hole] + dx, s.y()[hole] + dy);
        double[] x = s.x().clone();
        double[] y = s.y().clone();
        for (int i : new int[] {mate, hole}) {
            Pt p = m.axis().at(along, i == hole ? across : -across);
            x[i] = p.x();
            y[i] = p.y();
        }
        return nearest(at(s, x, y));
    }

    private Spots shifted(Spots s, int hole, double dx, double dy) {
        double[] x = s.x().clone();
        double[] y = s.y().clone();
        if (s.mirror() != null) {
            return mirrored(s, hole, dx, dy);
        }
        x[hole] += dx;
        y[hole] += dy;
        for (int i = 0; s.symmetric() && !s.inWall() && i < x.length; i++) {
            if (i != hole
                    && Math.abs(s.x()[i] + s.x()[hole] - 2 * middle.x()) < SAME_MM
                    && Math.abs(s.y()[i] + s.y()[hole] - 2 * middle.y()) < SAME_MM) {
                x[i] -= dx;
                y[i] -= dy;
            }
        }
        if (s.inWall() && s.symmetric()) {
            for (int i = 0; i < x.length; i++) {
                x[i] = s.x()[i] + dx;
                y[i] = s.y()[i] + dy;
            }
        }
        return nearest(at(s, x, y));
    }
}
