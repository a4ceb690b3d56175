package portwright.review;

/** Fire figures of a design. */
public record FireReview() {}
