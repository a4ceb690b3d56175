package portwright.review;

/** Room figures of a design. */
public record RoomReview() {}
