package portwright.model;

import portwright.units.Quantity;

/** Cross-section of a groove: {@code height} and {@code slope} on walls, {@code width} on slabs. */
public record Groove(Quantity height, Quantity width, Quantity depth, Quantity slope) {}
