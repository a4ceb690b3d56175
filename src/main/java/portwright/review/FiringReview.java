package portwright.review;

/** Firing figures of a design. */
public record FiringReview() {}
