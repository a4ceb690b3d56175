package portwright.calc.firing.log;

import java.util.List;

/**
 * How far a thermocouple may be off, as a share of its reading in °C.
 *
 * <p>Nobody knows it without cones: wire of standard tolerance starts within 0.75 %, and base metal drifts low with use, 60 °C and more at
 * cone 10 (common practice). Cones that agree, or by which the reading is put right, leave the limit from which they tell.
 *
 * @param lowShare the chamber may be so much hotter
 * @param highShare the chamber may be so much colder
 * @param sdShare standard deviation of the error
 */
record ProbeBand(double lowShare, double highShare, double sdShare) {
    private static final double DRIFT_K = 60;
    private static final double NEW_SHARE = 0.0075;
    /** Where the drift is counted, °C: cone 10, self-supporting, at 60 °C/h by the cone chart ({@code data/cones.csv}, from memory). */
    static final double CONE_10_C = 1285;

    static ProbeBand of(List<ConeOffset> cones) {
        double cone = ConeCheck.TELLS_K / CONE_10_C;
        return cones.isEmpty()
                ? new ProbeBand(DRIFT_K / CONE_10_C, 2 * NEW_SHARE, DRIFT_K / CONE_10_C / 2)
                : new ProbeBand(cone, cone, cone / 2);
    }
}
