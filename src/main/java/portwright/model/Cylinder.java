package portwright.model;

import portwright.units.Quantity;

/** A gas cylinder: {@code capacity} is the mass of gas when full. */
public record Cylinder(Quantity capacity, Quantity fill, Quantity diameter, Quantity length) {}
