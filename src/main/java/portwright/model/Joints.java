package portwright.model;

import portwright.units.Quantity;

/** Brick joints of a slab: rows along x before {@code turn}; {@code offset} is a crossing of a row joint and a brick-end joint. */
public record Joints(Quantity brickLength, Quantity row, Bond bond, Quantity turn, Place offset) {}
