package portwright.calc.firing;

/** A cone that went down. */
public record ConeDown(String cone, double timeS, double chamberK) {}
