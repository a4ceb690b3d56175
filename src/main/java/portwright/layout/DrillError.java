package portwright.layout;

import portwright.model.Design;
import portwright.units.Format;

/**
 * How a drilling strays. Centre, tilt and measuring error are two-way normal. The stated centre is the distance from the mark, whichever way, that 95 of
 * 100 keep within, the stated tilt the angle against the square, whichever way (judgement: a potter's "within 1.5 mm"). The elements are placed by one line
 * each way: they lie off together, across and along each within the stated figure in 95 of 100. Oversize is even between 0 and the stated figure.
 *
 * @param centreMm radius of 95 % of the centres, mm
 * @param oversizeMm largest oversize of the diameter, mm
 * @param tiltRad angle of 95 % of the bores against the square, rad
 * @param measureMm how far off 95 % of all measured elements lie together, across and along each, mm
 */
public record DrillError(double centreMm, double oversizeMm, double tiltRad, double measureMm) {
    /** Radius that holds 95 % of a two-way normal spread, in standard deviations: √(−2 ln 0.05). */
    static final double R95 = Math.sqrt(-2 * Math.log(0.05));
    /** The same of one distance: the normal distribution's two-sided 95 %. */
    static final double ONE95 = 1.959964;
    /** Where the design gives none (judgement, a hand drill on a template). */
    private static final double USUAL_CENTRE_MM = 1.5;

    private static final double USUAL_TILT_RAD = Math.toRadians(2);
    private static final double USUAL_OVERSIZE_MM = 2;
    private static final double USUAL_MEASURE_MM = 2;

    public DrillError {
        if (!(centreMm >= 0 && oversizeMm >= 0 && tiltRad >= 0 && tiltRad < 1 && measureMm >= 0)) {
            throw new IllegalArgumentException(
                    "Drilling errors are lengths and angles from 0 up; a tilt stays under 1 rad.");
        }
    }

    /** From the design, usual values where it gives none. */
    public static DrillError of(Design d) {
        var g = d.drilling();
        return new DrillError(
                g == null || g.centre() == null ? USUAL_CENTRE_MM : g.centre().mm(),
                g == null || g.oversize() == null
                        ? USUAL_OVERSIZE_MM
                        : g.oversize().mm(),
                g == null || g.tilt() == null ? USUAL_TILT_RAD : g.tilt().si(),
                USUAL_MEASURE_MM);
    }

    /** In words, without a full stop. */
    String words() {
        return "19 of 20 within " + Format.plain(centreMm, 1) + " mm of the mark and "
                + Format.plain(Math.toDegrees(tiltRad), 1) + "° of square, up to " + Format.plain(oversizeMm, 1)
                + " mm oversize, the elements together off by up to " + Format.plain(measureMm, 1)
                + " mm each way as measured";
    }

    double centreSigma() {
        return centreMm / R95;
    }

    /** Spread of the bore's shift through a thickness, mm. */
    double tiltSigma(double thicknessMm) {
        return thicknessMm * Math.tan(tiltRad) / R95;
    }

    double measureSigma() {
        return measureMm / ONE95;
    }
}
