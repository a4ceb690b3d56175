package portwright.calc.firing.log;

import java.util.List;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Step;

/**
 * A record and the kiln it came from.
 *
 * @param steps of the plan
 * @param plannedDamper open share of each step as forecast; NaN with the ports plugged or the step not begun
 * @param designGasPa gauge pressure at which the design states its flow; NaN where it states none
 */
public record RecordCase(
        FiringLog log, KilnHeat kiln, GasExchange gas, List<Step> steps, double[] plannedDamper, double designGasPa) {
    /** The same record against another kiln. */
    public RecordCase with(KilnHeat otherKiln, GasExchange otherGas) {
        return new RecordCase(log, otherKiln, otherGas, steps, plannedDamper, designGasPa);
    }
}
