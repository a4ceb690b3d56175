package portwright.model;

import portwright.units.Quantity;

/** The shelf piece that covers the flues. */
public record DamperPlate(Quantity thickness, Quantity width, Quantity length, Boolean shared) {}
