package portwright.model;

import portwright.units.Quantity;

/** Flame-failure device: present or not, and the time it takes to close. */
public record FlameSafety(boolean present, Quantity closes) {}
