package portwright.model;

/** A limit the user set: a quantity, or a plain number (share or ratio); {@code value} is in the base unit of the limit's kind, as typed in {@code typed}. */
public record UserLimit(String typed, double value) {}
