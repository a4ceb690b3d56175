package portwright.review;

import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;

/**
 * Where the climbs end, as it is told everywhere. The steady balance gives the temperature that is neared for ever; a firing that is followed to where its climb
 * dies away is given up a few kelvin under it. Where one is, its own end is the figure.
 *
 * @param electricK by electricity alone with the ports plugged, K
 * @param gasK with gas as the steps ask, K; NaN without a step with gas
 */
public record ClimbEnds(double electricK, double gasK) {

    /** The forecast must be known. */
    public static ClimbEnds of(FiringReview firing) {
        Forecast f = firing.forecast().value();
        boolean elements = firing.kiln().value().elements().nominalW() > 0;
        FiringRun alone = elements && firing.allElectric().known()
                ? firing.allElectric().value().run()
                : null;
        double electric = alone == null ? f.stallElectricK() : told(f.stallElectricK(), alone);
        double gas = f.nominal().last().step().gas() ? told(f.stallAllK(), f.nominal()) : f.stallAllK();
        return new ClimbEnds(electric, gas);
    }

    private static double told(double stallK, FiringRun run) {
        return run.last().ending() == Ending.CLIMB_ENDS && Forecast.alike(stallK, run.endK()) ? run.endK() : stallK;
    }
}
