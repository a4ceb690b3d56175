package portwright.review;

/** A value that the program assumed because the design does not give it. */
public record Assumed(String field, String value, String why) {}
