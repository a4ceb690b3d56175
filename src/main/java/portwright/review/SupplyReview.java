package portwright.review;

/** Supply figures of a design. */
public record SupplyReview() {}
