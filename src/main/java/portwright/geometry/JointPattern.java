package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Bond;
import portwright.model.Joints;

/**
 * Brick joints of a slab. Rows run along x before turning; at {@code origin} a row joint and a brick-end joint of the row above it cross; with
 * half bond every second row is shifted half a brick.
 */
public record JointPattern(double brickLength, double row, boolean half, double turn, Pt origin) {
    /** From the design; a turn or offset that is not given counts as none. */
    static JointPattern of(Joints j) {
        Pt origin = j.offset() == null ? new Pt(0, 0) : PlanOutlines.pt(j.offset());
        return new JointPattern(
                j.brickLength().mm(), j.row().mm(), j.bond() != Bond.STACKED, PlanOutlines.angle(j.turn()), origin);
    }

    private Pt local(Pt p) {
        return p.plus(-origin.x(), -origin.y()).turned(-turn);
    }

    private Pt plan(double x, double y) {
        return new Pt(x, y).turned(turn).plus(origin.x(), origin.y());
    }

    private double shift(long rowNumber) {
        return half && Math.floorMod(rowNumber, 2L) == 1 ? brickLength / 2 : 0;
    }

    /** The brick at a point. */
    public Brick brick(Pt p) {
        Pt q = local(p);
        long r = (long) Math.floor(q.y() / row);
        double shift = shift(r);
        double x0 = Math.floor((q.x() - shift) / brickLength) * brickLength + shift;
        double y0 = r * row;
        Outline o = new Outline(List.of(
                plan(x0, y0 + row), plan(x0 + brickLength, y0 + row), plan(x0 + brickLength, y0), plan(x0, y0)));
        return new Brick(o, q.x() - x0, x0 + brickLength - q.x(), q.y() - y0, y0 + row - q.y());
    }

    /** All joints within an outline, cut off at it. */
    public List<Segment> within(Outline slab) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (Pt p : slab.points()) {
            Pt q = local(p);
            x0 = Math.min(x0, q.x());
            x1 = Math.max(x1, q.x());
            y0 = Math.min(y0, q.y());
            y1 = Math.max(y1, q.y());
        }
        return between(slab, x0, y0, x1, y1);
    }

    /** Joints within an outline that come within a distance of a point, cut off at the outline. */
    public List<Segment> near(Outline slab, Pt p, double reach) {
        Pt q = local(p);
        return between(slab, q.x() - reach, q.y() - reach, q.x() + reach, q.y() + reach);
    }

    private List<Segment> between(Outline slab, double x0, double y0, double x1, double y1) {
        List<Segment> out = new ArrayList<>();
        long first = (long) Math.floor(y0 / row);
        long last = (long) Math.floor(y1 / row);
        for (long r = first; r <= last; r++) {
            if (r * row >= y0) {
                out.addAll(Clip.within(slab, new Segment(plan(x0, r * row), plan(x1, r * row))));
            }
            double shift = shift(r);
            for (double k = Math.ceil((x0 - shift) / brickLength); k * brickLength + shift <= x1; k++) {
                double x = k * brickLength + shift;
                out.addAll(Clip.within(slab, new Segment(plan(x, r * row), plan(x, (r + 1) * row))));
            }
        }
        return out;
    }
}
