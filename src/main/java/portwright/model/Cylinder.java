package portwright.model;

import portwright.units.Quantity;

/** A gas cylinder: {@code capacity} is the mass of gas when full, {@code propane} the share of propane by mass in a mix as filled. */
public record Cylinder(Quantity capacity, Quantity fill, Quantity diameter, Quantity length, Quantity propane) {}
