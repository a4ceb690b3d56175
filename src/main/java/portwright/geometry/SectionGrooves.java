package portwright.geometry;

/** Upper bound of the length that any line of a field can have in one groove. */
final class SectionGrooves {
    private final SectionField field;
    private final SectionModel[] from;
    private final SectionModel[] to;
    private final Tangent[] fromTangent;
    private final Tangent[] toTangent;
    private final int[] index;
    private final int[] order;
    private final SectionModel end = new SectionModel();
    private final SectionModel earlierStart = new SectionModel();
    private final SectionModel earlierEnd = new SectionModel();
    private final SectionModel gap = new SectionModel();
    private final SectionModel trial = new SectionModel();
    private final SectionModel[] touch;
    private int touching;
    private double edgeAt;
    private double edgeNx;
    private double edgeNy;

    /** The tangent of a piece's edge at one end of the middle line's length in it; none where the end is only bounded. */
    private static final class Tangent {
        boolean known;
        double nx;
        double ny;
        double h;
    }

    SectionGrooves(SectionField field, int pieces) {
        this.field = field;
        from = models(pieces);
        to = models(pieces);
        order = new int[pieces];
        index = new int[pieces];
        fromTangent = tangents(pieces);
        toTangent = tangents(pieces);
        touch = models(8);
    }

    private static Tangent[] tangents(int n) {
        Tangent[] out = new Tangent[n];
        for (int i = 0; i < n; i++) {
            out[i] = new Tangent();
        }
        return out;
    }

    private static SectionModel[] models(int n) {
        SectionModel[] out = new SectionModel[n];
        for (int i = 0; i < n; i++) {
            out[i] = new SectionModel();
        }
        return out;
    }

    /** Adds factor × length between two places along the line to a model. */
    void add(SectionStrip s, double low, double high, SectionModel lost) {
        int k = 0;
        for (int i = 0; i < s.ax().length; i++) {
            if (piece(s, i, k)
                    && to[k].value + to[k].swing(field) > low
                    && from[k].value - from[k].swing(field) < high) {
                index[k++] = i;
            }
        }
        for (int p = 0; p < k; p++) {
            int q = p;
            for (; q > 0 && from[order[q - 1]].value > from[p].value; q--) {
                order[q] = order[q - 1];
            }
            order[q] = p;
        }
        int i = 0;
        for (int j = 1; j <= k; j++) {
            outermost(s, to, toTangent, i, j, 1);
            if (j < k) {
                gap.set(from[order[j]]);
                gap.add(end, -1);
                if (gap.value < -gap.swing(field)) {
                    continue;
                }
            }
            if (i > 0) {
                touch(from[order[i]], s.factor());
            }
            lost.add(end, s.factor());
            earlierEnd.set(end);
            outermost(s, from, fromTangent, i, j, -1);
            lost.add(end, -s.factor());
            earlierStart.set(end);
            i = j;
        }
    }

    /**
     * Two groups one after the other: they were counted twice from {@code start}, before which the later one surely starts, to the end of the
     * earlier one. That holds only where on every line of the field the earlier one starts before {@code start} and the later one ends last.
     */
    private void touch(SectionModel start, double factor) {
        gap.set(start);
        gap.add(earlierEnd, -1);
        if (gap.value <= gap.swing(field)
                && neverLess(start, earlierStart)
                && neverLess(end, earlierEnd)
                && touching < touch.length) {
            touch[touching].clear();
            touch[touching++].add(gap, factor);
        }
    }

    /** Whether a number is on no line of the field less than another. */
    private boolean neverLess(SectionModel a, SectionModel b) {
        trial.set(a);
        trial.add(b, -1);
        return trial.value >= trial.swing(field);
    }

    /** Forgets the gaps of the last line field. */
    void start() {
        touching = 0;
    }

    /**
     * Pieces that may overlap a little were added one by one; this much of their overlap may be taken off: any share of (negative) gap from 0
     * to 1. Takes the share that makes the sum smallest over the field.
     */
    void takeOverlapOff(SectionModel sum) {
        for (int t = 0; t < touching; t++) {
            SectionModel g = touch[t];
            double best = sum.value + sum.swing(field);
            double share = 0;
            double[] tries = {
                1, g.byOffset == 0 ? 0 : -sum.byOffset / g.byOffset, g.byAngle == 0 ? 0 : -sum.byAngle / g.byAngle
            };
            for (double m : tries) {
                if (m > 0 && m <= 1) {
                    trial.set(sum);
                    trial.add(g, m);
                    if (trial.value + trial.swing(field) < best) {
                        best = trial.value + trial.swing(field);
                        share = m;
                    }
                }
            }
            sum.add(g, share);
        }
    }

    /** The outermost end of a group: that of one piece where it surely is the outermost, else a constant beyond all. */
    private void outermost(SectionStrip s, SectionModel[] ends, Tangent[] tangents, int i, int j, int sign) {
        int lead = order[i];
        for (int k = i + 1; k < j; k++) {
            if (sign * ends[order[k]].value > sign * ends[lead].value) {
                lead = order[k];
            }
        }
        boolean sure = true;
        double beyond = sign * ends[lead].value + ends[lead].swing(field);
        for (int k = i; k < j; k++) {
            SectionModel m = ends[order[k]];
            if (order[k] != lead && !behind(s, index[order[k]], tangents[lead])) {
                sure &= sign * m.value + m.swing(field) < sign * ends[lead].value - ends[lead].swing(field);
                beyond = Math.max(beyond, sign * m.value + m.swing(field));
            }
        }
        if (sure) {
            end.set(ends[lead]);
        } else {
            end.set(sign * beyond);
        }
    }

    /** Whether a piece lies wholly behind a tangent, so that no line leaves it later. */
    private static boolean behind(SectionStrip s, int i, Tangent t) {
        return t.known
                && Math.max(t.nx * s.ax()[i] + t.ny * s.ay()[i], t.nx * s.bx()[i] + t.ny * s.by()[i]) + s.halfWidth()
                        <= t.h + 1e-9;
    }

    private boolean piece(SectionStrip s, int i, int k) {
        SectionModel lo = from[k];
        SectionModel hi = to[k];
        double ax = s.ax()[i];
        double ay = s.ay()[i];
        double bx = s.bx()[i];
        double by = s.by()[i];
        double g = s.halfWidth();
        double oa = field.beside(ax, ay);
        double ob = field.beside(bx, by);
        double ea = field.sway(ax, ay);
        double eb = field.sway(bx, by);
        if (oa > 0 == ob > 0 && Math.abs(oa) - ea >= g && Math.abs(ob) - eb >= g) {
            return false;
        }
        boolean sure = oa > ea && ob < -eb || oa < -ea && ob > eb || Math.abs(oa) + ea <= g || Math.abs(ob) + eb <= g;
        toTangent[k].known = false;
        fromTangent[k].known = false;
        if (!sure
                || !exit(ax, ay, bx, by, oa, ob, g, 1, hi, toTangent[k])
                || !exit(ax, ay, bx, by, oa, ob, g, -1, lo, fromTangent[k])) {
            toTangent[k].known = false;
            double e = Math.max(ea, eb);
            double slack = (Math.max(Math.hypot(ax, ay), Math.hypot(bx, by)) + g) * field.halfAngle;
            if (!edge(ax, ay, bx, by, oa, ob, g + e, 1)) {
                return false;
            }
            hi.set(edgeAt + slack);
            edge(ax, ay, bx, by, oa, ob, g + e, -1);
            lo.set(edgeAt - slack);
        }
        return true;
    }

    /** Where lines leave (sign 1) or enter (−1) the piece: on the tangent of its edge at the middle line. */
    private boolean exit(
            double ax,
            double ay,
            double bx,
            double by,
            double oa,
            double ob,
            double g,
            int sign,
            SectionModel m,
            Tangent tangent) {
        if (!edge(ax, ay, bx, by, oa, ob, g, sign)) {
            return false;
        }
        double x = field.offset * field.dy + edgeAt * field.dx;
        double y = -field.offset * field.dx + edgeAt * field.dy;
        tangent.nx = edgeNx;
        tangent.ny = edgeNy;
        tangent.h = edgeNx * x + edgeNy * y;
        tangent.known = m.crossing(field, x, y, edgeNx, edgeNy);
        return tangent.known;
    }

    /** Where the middle line leaves or enters a piece of half width g, and the outward normal there. */
    private boolean edge(double ax, double ay, double bx, double by, double oa, double ob, double g, int sign) {
        double best = Double.NEGATIVE_INFINITY;
        double nx = 0;
        double ny = 0;
        for (int k = 0; k < 2; k++) {
            double o = k == 0 ? oa : ob;
            double x = k == 0 ? ax : bx;
            double y = k == 0 ? ay : by;
            if (Math.abs(o) < g) {
                double half = Math.sqrt(g * g - o * o);
                double t = sign * field.along(x, y) + half;
                if (t > best) {
                    best = t;
                    nx = (sign * half * field.dx - o * field.dy) / g;
                    ny = (sign * half * field.dy + o * field.dx) / g;
                }
            }
        }
        double ex = bx - ax;
        double ey = by - ay;
        double len = Math.hypot(ex, ey);
        if (len > 0) {
            double ux = ey / len;
            double uy = -ex / len;
            double run = ux * field.dx + uy * field.dy;
            double flip = run * sign > 0 ? 1 : -1;
            if (Math.abs(run) > 1e-12) {
                // side with outward normal (ux, uy) × flip
                double h = flip * (ux * ax + uy * ay) + g;
                double px = field.offset * field.dy;
                double py = -field.offset * field.dx;
                double t = (h - flip * (ux * px + uy * py)) / (flip * run);
                double along = ((px + t * field.dx - ax) * ex + (py + t * field.dy - ay) * ey) / len;
                if (along >= 0 && along <= len && sign * t > best) {
                    best = sign * t;
                    nx = flip * ux;
                    ny = flip * uy;
                }
            }
        }
        if (best == Double.NEGATIVE_INFINITY) {
            return false;
        }
        edgeAt = sign * best;
        edgeNx = nx;
        edgeNy = ny;
        return true;
    }
}
