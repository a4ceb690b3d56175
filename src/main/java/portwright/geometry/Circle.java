package portwright.geometry;

/** A true circle, mm. */
public record Circle(Pt centre, double radius) {}
