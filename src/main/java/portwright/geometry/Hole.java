package portwright.geometry;

import portwright.model.Port;
import portwright.model.Role;

/**
 * A proposed hole in its part's frame.
 *
 * @param port the port as typed
 * @param face its part (hot face)
 * @param centre in the part's frame, mm
 * @param diameter as typed (d), mm
 * @param drilled with oversize (d+), mm
 */
public record Hole(Port port, Face face, Pt centre, double diameter, double drilled) {
    public String name() {
        return port.name();
    }

    /** Whether air and flame come in by it. */
    public boolean inlet() {
        return port.role() == Role.INLET;
    }

    /** The same hole elsewhere on its part. */
    public Hole at(Pt place) {
        return new Hole(port, face, place, diameter, drilled);
    }

    /** Radius with oversize, mm. */
    public double drilledRadius() {
        return drilled / 2;
    }

    /** Area of the typed diameter, mm². */
    public double area() {
        return Math.PI / 4 * diameter * diameter;
    }

    /** The circle with oversize. */
    public Circle drilledCircle() {
        return new Circle(centre, drilled / 2);
    }
}
