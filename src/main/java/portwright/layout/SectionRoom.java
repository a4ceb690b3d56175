package portwright.layout;

import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.model.On;

/** How far one hole may move before the weakest line through it loses more than its stop, all other holes of the slab in their places. Lengths in mm. */
final class SectionRoom {
    private static final double STEP_MM = 2.5;
    private static final double CLOSE_MM = 0.05;

    private final Section section;
    private final double radius;
    private final double stop;
    private final double[] x = new double[1];
    private final double[] y = new double[1];

    /**
     * @param others x, y, radius of the other holes of the slab
     * @param radius of the hole as drilled
     * @param stop largest lost share
     */
    SectionRoom(KilnGeometry kiln, On on, List<double[]> others, double radius, double stop) {
        section = new Section(kiln, on, others);
        this.radius = radius;
        this.stop = stop;
    }

    private boolean stops(double px, double py) {
        x[0] = px;
        y[0] = py;
        return section.worst(x, y, radius, stop, stop) > stop;
    }

    /** Distance from (px, py) along a unit direction to the first place that stops; {@code most} where there is none nearer. */
    private double far(double px, double py, double sx, double sy, double most) {
        if (stops(px, py)) {
            return 0;
        }
        for (double good = 0; good < most; good += STEP_MM) {
            double next = Math.min(most, good + STEP_MM);
            if (stops(px + next * sx, py + next * sy)) {
                double lo = good;
                while (next - lo > CLOSE_MM) {
                    double half = (lo + next) / 2;
                    if (stops(px + half * sx, py + half * sy)) {
                        next = half;
                    } else {
                        lo = half;
                    }
                }
                return lo;
            }
        }
        return most;
    }

    /** Room from (px, py) toward evenly spread bearings, clockwise from the back. */
    double[] allRound(double px, double py, int bearings, double most) {
        double[] out = new double[bearings];
        for (int b = 0; b < bearings; b++) {
            double w = 2 * Math.PI * b / bearings;
            out[b] = far(px, py, Math.sin(w), Math.cos(w), most);
        }
        return out;
    }

    /** Whether a shift leaves the room of {@link #allRound}, by the nearer of the two bearings beside it. */
    static boolean leaves(double[] room, double dx, double dy, double most) {
        double turn = Math.atan2(dx, dy) / (2 * Math.PI) * room.length;
        int k = Math.floorMod((int) Math.floor(turn), room.length);
        double least = Math.min(room[k], room[(k + 1) % room.length]);
        return least < most && dx * dx + dy * dy >= least * least;
    }
}
