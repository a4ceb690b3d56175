package portwright.model;

import portwright.units.Quantity;

/** Damper: open share of the total flue area, and the plate. */
public record Damper(Quantity open, DamperPlate plate) {}
