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
        return section.worst(x, y, radius, stop) > stop;
    }

    /** Distance from (px, py) along a unit direction to the first place that stops; {@code most} where there is none nearer. */
    double far(double px, double py, double sx, double sy, double most) {
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
}
