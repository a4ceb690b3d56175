package portwright.geometry;

/**
 * Tells whether some line of a field of lines can lose more than a given share. "No" is certain: lost lengths are bounded from above (chords
 * of circles by their tangents, grooves by the tangents of their edges) and the slab's length from below, each with the slopes at the field's
 * middle line and a bound of what second order adds, so that near the worst line the bound closes in with the square of the field's size.
 */
final class SectionBound {
    private static final int MAX_EVENTS = 64;

    private final SectionLoss loss;
    private final int corners;
    private final double[] cornerFar;
    private final double[] edgeNx;
    private final double[] edgeNy;
    private final double[] holeFar;
    private final SectionField field;
    private final SectionGrooves grooves;
    private final int[] side;
    private final double[] beside;
    private final double[] along;
    private final double[] sway;
    private final Event[] events = new Event[MAX_EVENTS];
    private int count;
    private final SectionModel lost = new SectionModel();
    private final SectionModel chord = new SectionModel();
    private final SectionModel sum = new SectionModel();

    /**
     * A place where lines of the field cross the rim: surely once, or perhaps in and out again at a corner. Over more than two edges, at a
     * recess, they may do so besides.
     */
    private static final class Event {
        boolean sure;
        int steps;
        int models;
        final SectionModel[] model = {new SectionModel(), new SectionModel()};
        double low;
        double high;
    }

    SectionBound(SectionLoss loss, SectionField field) {
        this.loss = loss;
        this.field = field;
        corners = loss.cornerX.length;
        cornerFar = new double[corners];
        edgeNx = new double[corners];
        edgeNy = new double[corners];
        for (int i = 0; i < corners; i++) {
            int j = (i + 1) % corners;
            double ex = loss.cornerX[j] - loss.cornerX[i];
            double ey = loss.cornerY[j] - loss.cornerY[i];
            double len = Math.hypot(ex, ey);
            edgeNx[i] = -ey / len;
            edgeNy[i] = ex / len;
            cornerFar[i] = Math.hypot(loss.cornerX[i], loss.cornerY[i]);
        }
        holeFar = new double[loss.holeCount()];
        for (int i = 0; i < holeFar.length; i++) {
            holeFar[i] = Math.hypot(loss.holeX(i), loss.holeY(i));
        }
        grooves = new SectionGrooves(
                field, loss.strips.stream().mapToInt(s -> s.ax().length).max().orElse(0));
        side = new int[corners];
        beside = new double[corners];
        along = new double[corners];
        sway = new double[corners];
        for (int i = 0; i < MAX_EVENTS; i++) {
            events[i] = new Event();
        }
    }

    boolean mayExceed(double share) {
        if (!meetsProposed()) {
            return false;
        }
        int sure = rim();
        if (sure < 0) {
            return true;
        }
        sort();
        for (int i = 0; i + 1 < count; i++) {
            if (events[i].high > events[i + 1].low) {
                return true;
            }
        }
        boolean inside = false;
        for (int i = 0; i < count; i++) {
            Event e = events[i];
            boolean outside = !e.sure && !inside;
            if ((outside || e.steps > 2) && proposedBetween(e.low, e.high)) {
                return true;
            }
            if (outside) {
                continue;
            }
            if (e.sure) {
                inside = !inside;
            }
            if (!inside) {
                continue;
            }
            for (int j = i + 1; j < count; j++) {
                if (exceeds(e, events[j], share)) {
                    return true;
                }
                if (events[j].sure) {
                    break;
                }
            }
        }
        return inside;
    }

    private boolean meetsProposed() {
        for (int i = 0; i < loss.proposed; i++) {
            if (Math.abs(field.beside(loss.holeX(i), loss.holeY(i))) - swayOfHole(i) < loss.holeR(i)) {
                return true;
            }
        }
        return false;
    }

    private double swayOfHole(int i) {
        return Math.abs(field.along(loss.holeX(i), loss.holeY(i))) * field.halfAngle
                + field.halfOffset
                + holeFar[i] * field.halfAngle * field.halfAngle / 2;
    }

    /** Fills the events; −1 where the field is too wide to tell. */
    private int rim() {
        int first = -1;
        for (int i = 0; i < corners; i++) {
            beside[i] = field.beside(loss.cornerX[i], loss.cornerY[i]);
            along[i] = field.along(loss.cornerX[i], loss.cornerY[i]);
            sway[i] = Math.abs(along[i]) * field.halfAngle
                    + field.halfOffset
                    + cornerFar[i] * field.halfAngle * field.halfAngle / 2;
            side[i] = beside[i] > sway[i] ? 1 : beside[i] < -sway[i] ? -1 : 0;
            if (first < 0 && side[i] != 0) {
                first = i;
            }
        }
        count = 0;
        if (first < 0) {
            return -1;
        }
        int at = first;
        for (int walked = 0; walked < corners; ) {
            int steps = 1;
            while (side[(at + steps) % corners] == 0) {
                steps++;
            }
            int to = (at + steps) % corners;
            boolean crosses = side[at] != side[to];
            if (crosses || steps > 1) {
                if (count == MAX_EVENTS) {
                    return -1;
                }
                event(events[count++], at, steps, crosses);
            }
            walked += steps;
            at = to;
        }
        return count;
    }

    private void event(Event e, int at, int steps, boolean crosses) {
        e.sure = crosses;
        e.steps = steps;
        e.models = 0;
        if (crosses && steps <= 2) {
            boolean followed = true;
            for (int k = 0; k < steps && followed; k++) {
                int i = (at + k) % corners;
                followed = e.model[k].crossing(field, loss.cornerX[i], loss.cornerY[i], edgeNx[i], edgeNy[i]);
            }
            if (followed) {
                e.models = steps;
                e.low = Double.POSITIVE_INFINITY;
                e.high = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < steps; k++) {
                    e.low = Math.min(e.low, e.model[k].value - e.model[k].swing(field));
                    e.high = Math.max(e.high, e.model[k].value + e.model[k].swing(field));
                }
                return;
            }
        }
        e.low = Double.POSITIVE_INFINITY;
        e.high = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < steps; k++) {
            int i = (at + k) % corners;
            int j = (i + 1) % corners;
            double wide = Math.max(sway[i], sway[j]);
            double slack = Math.max(cornerFar[i], cornerFar[j]) * field.halfAngle;
            double k0 = 0;
            double k1 = 1;
            if (beside[i] != beside[j]) {
                double p = (-wide - beside[i]) / (beside[j] - beside[i]);
                double q = (wide - beside[i]) / (beside[j] - beside[i]);
                k0 = Math.max(0, Math.min(1, Math.min(p, q)));
                k1 = Math.max(0, Math.min(1, Math.max(p, q)));
            }
            double t0 = along[i] + k0 * (along[j] - along[i]);
            double t1 = along[i] + k1 * (along[j] - along[i]);
            e.low = Math.min(e.low, Math.min(t0, t1) - slack);
            e.high = Math.max(e.high, Math.max(t0, t1) + slack);
        }
    }

    private void sort() {
        for (int i = 1; i < count; i++) {
            Event e = events[i];
            int j = i - 1;
            for (; j >= 0 && events[j].low > e.low; j--) {
                events[j + 1] = events[j];
            }
            events[j + 1] = e;
        }
    }

    private boolean proposedBetween(double low, double high) {
        for (int i = 0; i < loss.proposed; i++) {
            double t = field.along(loss.holeX(i), loss.holeY(i));
            double reach = loss.holeR(i) + holeFar[i] * field.halfAngle;
            if (t + reach > low
                    && t - reach < high
                    && Math.abs(field.beside(loss.holeX(i), loss.holeY(i))) - swayOfHole(i) < loss.holeR(i)) {
                return true;
            }
        }
        return false;
    }

    private boolean exceeds(Event from, Event to, double share) {
        if (!proposedBetween(from.low, to.high)) {
            return false;
        }
        lost.clear();
        grooves.start();
        for (int i = 0; i < loss.holeCount(); i++) {
            hole(i, from.low, to.high);
        }
        for (SectionStrip s : loss.strips) {
            grooves.add(s, from.low, to.high, lost);
        }
        for (int a = 0; a < Math.max(1, from.models); a++) {
            for (int b = 0; b < Math.max(1, to.models); b++) {
                sum.set(lost);
                if (from.models > 0) {
                    sum.add(from.model[a], share);
                } else {
                    sum.value += share * from.high;
                }
                if (to.models > 0) {
                    sum.add(to.model[b], -share);
                } else {
                    sum.value -= share * to.low;
                }
                grooves.takeOverlapOff(sum);
                if (sum.value + sum.swing(field) > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private void hole(int i, double low, double high) {
        double x = loss.holeX(i);
        double y = loss.holeY(i);
        double r = loss.holeR(i);
        double t = field.along(x, y);
        double slack = r + holeFar[i] * field.halfAngle;
        if (t + slack < low || t - slack > high) {
            return;
        }
        double q = field.beside(x, y);
        double e = swayOfHole(i);
        if (Math.abs(q) - e >= r) {
            return;
        }
        if (Math.abs(q) + e >= r) {
            double nearest = Math.max(0, Math.abs(q) - e);
            lost.value += 2 * Math.sqrt(r * r - nearest * nearest);
            return;
        }
        double half = Math.sqrt(r * r - q * q);
        double slope = -2 * q / half;
        chord.value = 2 * half;
        chord.byOffset = -slope;
        chord.byAngle = -slope * t;
        chord.stray = Math.abs(slope) * holeFar[i] * field.halfAngle * field.halfAngle / 2;
        lost.add(chord, 1);
    }
}
