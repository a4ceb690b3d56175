package portwright.model;

import portwright.units.Quantity;

/** A hole to be drilled. {@code panel} only on walls; {@code at} is (x, y) on slabs, (u, v) on a panel. */
public record Port(String name, Role role, On on, Integer panel, Place at, Quantity diameter) {}
