package portwright.model;

import portwright.units.Quantity;

/** Damper: open share of the total flue area, and the plate. */
public record Damper(Quantity open, DamperPlate plate) {
    /** Whether one plate is stated to lie over all flues. */
    public boolean shared() {
        return plate != null && Boolean.TRUE.equals(plate.shared());
    }
}
