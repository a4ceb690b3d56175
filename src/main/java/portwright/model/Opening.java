package portwright.model;

import portwright.units.Quantity;

/** An opening of the room; {@code to} names where it leads. */
public record Opening(Quantity area, Quantity level, String to, Quantity free) {}
