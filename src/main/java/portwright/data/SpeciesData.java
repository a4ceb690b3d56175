package portwright.data;

import java.util.Map;
import portwright.source.Source;

/**
 * Two-range seven-coefficient polynomials of one species (standard pressure 1 bar).
 *
 * @param name the species
 * @param atoms element to number of atoms
 * @param tMin lower end of the low range, K
 * @param tJoint where the ranges meet, K
 * @param tMax upper end of the high range, K
 * @param low a1 to a7 below the joint
 * @param high a1 to a7 above the joint
 * @param source where the coefficients come from
 */
public record SpeciesData(
        String name,
        Map<String, Integer> atoms,
        double tMin,
        double tJoint,
        double tMax,
        double[] low,
        double[] high,
        Source source) {

    public SpeciesData {
        atoms = Map.copyOf(atoms);
        low = low.clone();
        high = high.clone();
    }

    @Override
    public double[] low() {
        return low.clone();
    }

    @Override
    public double[] high() {
        return high.clone();
    }

    /** Heat capacity over R: a1 + a2 T + a3 T² + a4 T³ + a5 T⁴. */
    public static double cp(double[] a, double t) {
        return a[0] + t * (a[1] + t * (a[2] + t * (a[3] + t * a[4])));
    }

    /** Enthalpy over RT: a1 + a2 T/2 + a3 T²/3 + a4 T³/4 + a5 T⁴/5 + a6/T. */
    public static double h(double[] a, double t) {
        return a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5))) + a[5] / t;
    }

    /** Entropy over R: a1 ln T + a2 T + a3 T²/2 + a4 T³/3 + a5 T⁴/4 + a7. */
    public static double s(double[] a, double t) {
        return a[0] * Math.log(t) + t * (a[1] + t * (a[2] / 2 + t * (a[3] / 3 + t * a[4] / 4))) + a[6];
    }
}
