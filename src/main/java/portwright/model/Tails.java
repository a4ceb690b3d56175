package portwright.model;

import portwright.units.Quantity;

/** Where the ends of an element pass the wall; {@code at} is (u, v) on the panel; what is not measured yet is null. */
public record Tails(Integer panel, Place at, Quantity diameter) {}
