package portwright.model;

import portwright.units.Quantity;

/** A burner jet: bore by diameter, or a number drill; exactly one of {@code diameter} and {@code drillNumber} is given. */
public record Jet(String typed, Quantity diameter, Integer drillNumber) {}
