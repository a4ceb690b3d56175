package portwright.app.doc;

/** One live figure of the foot: {@code value} is "–" where the design does not give it. */
public record Figure(String label, String value, String unit) {}
