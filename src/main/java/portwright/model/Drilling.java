package portwright.model;

import portwright.units.Quantity;

/** How far the drill wanders. */
public record Drilling(Quantity oversize, Quantity centre, Quantity tilt) {}
