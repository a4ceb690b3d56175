package portwright.model;

import portwright.units.Quantity;

/** Floor or lid. {@code pan}: metal sheet under it; null unknown. */
public record Slab(Quantity thickness, String brick, Quantity overhang, Boolean pan, Joints joints) {}
