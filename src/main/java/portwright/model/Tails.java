package portwright.model;

import portwright.units.Quantity;

/** Where the ends of an element pass the wall; {@code at} is (u, v) on the panel. */
public record Tails(int panel, Place at, Quantity diameter) {}
