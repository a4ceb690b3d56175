package portwright.calc.firing;

/** A film coefficient, W/(m² K), at a face and a room temperature in K. */
@FunctionalInterface
public interface Film {
    double coefficient(double faceK, double roomK);
}
