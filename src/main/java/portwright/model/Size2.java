package portwright.model;

import portwright.units.Quantity;

/** Width along x (u) and depth along y (v) before turning. */
public record Size2(Quantity width, Quantity depth) {}
