package portwright.geometry;

/** Up to four points of a convex body, and the place nearest to the origin between them. */
final class Simplex {
    /** Squares of distances agree no closer than this share of them. */
    private static final double ROUNDING = 4e-15;

    /** So many points may be taken in that bring nothing nearer by themselves: the next may do so together with them. */
    private static final int IDLE = 20;

    private final Pt3[] points = new Pt3[4];
    private int size;
    private Pt3 nearest;
    private int idle;

    Simplex(Pt3 first) {
        points[0] = first;
        size = 1;
        nearest = first;
    }

    /** The place nearest to the origin. */
    Pt3 nearest() {
        return nearest;
    }

    /**
     * Takes a point in and drops those that the nearest place does not need. Where the points lie too close together to tell the nearest place
     * between them, the last nearest place stands for them all. False when no point brings it nearer any more.
     */
    boolean add(Pt3 p) {
        if (size < 4) {
            points[size++] = p;
            if (closer()) {
                return true;
            }
        }
        points[0] = nearest;
        points[1] = p;
        size = 2;
        return closer();
    }

    private boolean closer() {
        double last = nearest.dot(nearest);
        double best = last * (1 + ROUNDING);
        Pt3 found = null;
        int kept = 0;
        int all = 1 << size;
        for (int subset = all - 1; subset >= all / 2; subset--) {
            Pt3 q = place(subset);
            if (q != null && q.dot(q) < best) {
                best = q.dot(q);
                found = q;
                kept = subset;
            }
        }
        if (found == null) {
            return false;
        }
        int n = 0;
        for (int i = 0; i < size; i++) {
            if ((kept & 1 << i) != 0) {
                points[n++] = points[i];
            }
        }
        size = n;
        idle = best < last ? 0 : idle + 1;
        nearest = found;
        return idle < IDLE;
    }

    /** The place nearest to the origin on the flat through some of the points, where it lies between them; else null. */
    private Pt3 place(int subset) {
        int[] at = new int[4];
        int n = 0;
        for (int i = size - 1; i >= 0; i--) {
            if ((subset & 1 << i) != 0) {
                at[n++] = i;
            }
        }
        int base = at[0];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                Pt3 d = points[at[j]].minus(points[at[i]]);
                sum += d.dot(d);
            }
            if (sum < least) {
                least = sum;
                base = at[i];
            }
        }
        // short edges keep their digits
        Pt3[] e = new Pt3[3];
        int edges = 0;
        for (int i = 0; i < n; i++) {
            if (at[i] != base) {
                e[edges++] = points[at[i]].minus(points[base]);
            }
        }
        Pt3 q = points[base];
        double[] share = new double[3];
        for (int round = 0; round < 2 && edges > 0; round++) {
            double[] more = shares(e, q, edges);
            if (more == null) {
                return null;
            }
            for (int i = 0; i < edges; i++) {
                share[i] += more[i];
                q = new Pt3(q.x() + more[i] * e[i].x(), q.y() + more[i] * e[i].y(), q.z() + more[i] * e[i].z());
            }
        }
        double rest = 1;
        for (int i = 0; i < edges; i++) {
            if (!(share[i] >= 0)) {
                return null;
            }
            rest -= share[i];
        }
        return rest < 0 ? null : q;
    }

    /** Shares s for which o + Σ s·e is square to every e. */
    private static double[] shares(Pt3[] e, Pt3 o, int n) {
        if (n == 1) {
            double l = e[0].dot(e[0]);
            return l == 0 ? null : new double[] {-o.dot(e[0]) / l};
        }
        if (n == 2) {
            Pt3 normal = cross(e[0], e[1]);
            double det = normal.dot(normal);
            return det == 0
                    ? null
                    : new double[] {
                        -cross(o, e[1]).dot(normal) / det, -cross(e[0], o).dot(normal) / det
                    };
        }
        double det = cross(e[0], e[1]).dot(e[2]);
        return det == 0
                ? null
                : new double[] {
                    -cross(e[1], e[2]).dot(o) / det,
                    -cross(e[2], e[0]).dot(o) / det,
                    -cross(e[0], e[1]).dot(o) / det
                };
    }

    private static Pt3 cross(Pt3 a, Pt3 b) {
        return new Pt3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
