package portwright.model;

import portwright.units.Quantity;

/** A hood over the kiln. */
public record Hood(Quantity flow, Quantity diameter, Quantity height) {}
