package portwright.model;

import portwright.units.Quantity;

/** A point in the frame of its part, in mm: plan x to the right, y to the back; panel u to the right seen from inside, v up. */
public sealed interface Place {
    /** First coordinate (x or u), mm. */
    double xMm();

    /** Second coordinate (y or v), mm. */
    double yMm();

    /** Typed as two lengths. */
    record Cartesian(Quantity x, Quantity y) implements Place {
        @Override
        public double xMm() {
            return x.mm();
        }

        @Override
        public double yMm() {
            return y.mm();
        }
    }

    /** Typed as radius and bearing (clockwise from the back, seen from above). */
    record Polar(Quantity radius, Quantity bearing) implements Place {
        @Override
        public double xMm() {
            return radius.mm() * Math.sin(bearing.si());
        }

        @Override
        public double yMm() {
            return radius.mm() * Math.cos(bearing.si());
        }
    }
}
