package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Pt;

/**
 * Rounds places to what a tape shows. Nearest is not always best: half a step can leave a sliver of brick at a joint. From the nearest, holes are moved
 * by single steps as long as the margin gains; holes that mirror each other move as mirrors, those on a circle together.
 */
final class Rounding {
    private static final int ROUNDS = 12;
    private static final double SAME_MM = 1e-6;

    private final Typed typed;
    private final Pt middle;
    private final Weigher weigher;

    /** Margin of rounded places; whatever is not above {@code enough} may be answered roughly. */
    interface Weigher {
        double margin(Spots inlets, Spots flues, double enough);
    }

    Rounding(Typed typed, Pt middle, Weigher weigher) {
        this.typed = typed;
        this.middle = middle;
        this.weigher = weigher;
    }

    /** Inlets and flues at rounded places. */
    List<Spots> best(Spots inlets, Spots flues) {
        Spots[] at = {nearest(inlets), nearest(flues)};
        double best = weigher.margin(at[0], at[1], Double.NEGATIVE_INFINITY);
        boolean moved = true;
        for (int round = 0; moved && round < ROUNDS; round++) {
            moved = false;
            for (int role = 0; role < at.length; role++) {
                for (int hole = 0; hole < at[role].x().length; hole++) {
                    for (Spots to : beside(at[role], hole)) {
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
        return List.of(at[0], at[1]);
    }

    /** Whether the places are written as radius and bearing. */
    boolean polar(Spots s) {
        return s.family().equals("on a circle") && middle.equals(new Pt(0, 0));
    }

    private Spots nearest(Spots s) {
        double[] x = new double[s.x().length];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            Pt p = Typed.pt(polar(s) ? typed.polar(s.x()[i], s.y()[i]) : typed.place(s.x()[i], s.y()[i]));
            x[i] = p.x();
            y[i] = p.y();
        }
        return at(s, x, y);
    }

    private static Spots at(Spots s, double[] x, double[] y) {
        return new Spots(s.family(), s.symmetric(), s.panels(), x, y, s.margin());
    }

    /** The eight neighbours by a step of one hole, with what moves with it. */
    private List<Spots> beside(Spots s, int hole) {
        List<Spots> out = new ArrayList<>();
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                if ((i != 0 || j != 0) && (!polar(s) || hole == 0)) {
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
            double w = Math.atan2(x[i], y[i]) + on * Math.toRadians(Typed.HALF_DEGREE);
            x[i] = r * Math.sin(w);
            y[i] = r * Math.cos(w);
        }
        return nearest(at(s, x, y));
    }

    private Spots shifted(Spots s, int hole, double dx, double dy) {
        double[] x = s.x().clone();
        double[] y = s.y().clone();
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
