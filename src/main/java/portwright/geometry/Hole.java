package portwright.geometry;

import portwright.model.Port;

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
}
