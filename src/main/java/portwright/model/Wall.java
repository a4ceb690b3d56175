package portwright.model;

import portwright.units.Quantity;

/** The wall: panels of one thickness. {@code brick} is an id of the brick table, or null. */
public record Wall(Quantity thickness, String brick) {}
