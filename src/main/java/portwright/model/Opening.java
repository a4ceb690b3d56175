package portwright.model;

import portwright.units.Quantity;

/**
 * An opening of the room.
 *
 * @param level height of its middle over the floor
 * @param to where it leads; null unknown, then it brings no air
 * @param free clear share of the area
 * @param height its own clear height
 * @param duct duct behind it; null direct or unknown
 */
public record Opening(Quantity area, Quantity level, LeadsTo to, Quantity free, Quantity height, Duct duct) {}
