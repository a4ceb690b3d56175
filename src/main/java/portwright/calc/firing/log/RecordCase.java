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
 * @param plannedRiseK how far the chamber rises in each step as forecast over the hottest before it, K; below 0 where it does not come so far, NaN for a step not begun
 * @param plannedCone hardest cone that the forecast lays down; empty for none
 * @param plannedWareKg ware of the design, kg
 * @param designGasPa gauge pressure at which the design states its flow; NaN where it states none
 */
public record RecordCase(
        FiringLog log,
        KilnHeat kiln,
        GasExchange gas,
        List<Step> steps,
        double[] plannedDamper,
        double[] plannedRiseK,
        String plannedCone,
        double plannedWareKg,
        double designGasPa) {
    /** The one step of a log that is no firing of the plan: nobody knows what it asks. */
    private static final List<Step> UNPLANNED = List.of(Step.electric(new Step.To(1e6), Step.FULL));

    /** The same record without the plan. */
    RecordCase unplanned() {
        return new RecordCase(
                log,
                kiln,
                gas,
                UNPLANNED,
                new double[] {Double.NaN},
                new double[] {Double.NaN},
                "",
                plannedWareKg,
                designGasPa);
    }

    /** Whether a note of the log tells of less ware than the design's. */
    boolean lessWare() {
        return Notes.loadKg(log) < plannedWareKg;
    }

    /** Whether the plan's steps are held against the record. */
    boolean planned() {
        return steps != UNPLANNED;
    }

    /** The same record against another kiln. */
    public RecordCase with(KilnHeat otherKiln, GasExchange otherGas) {
        return new RecordCase(
                log, otherKiln, otherGas, steps, plannedDamper, plannedRiseK, plannedCone, plannedWareKg, designGasPa);
    }
}
