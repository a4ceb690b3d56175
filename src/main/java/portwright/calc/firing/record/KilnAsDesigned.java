package portwright.calc.firing.record;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Step;

/**
 * What a record is compared with.
 *
 * @param gas the flows for a flow factor; 1 is the design as it stands
 * @param steps as planned
 * @param forecast the firing as forecast
 * @param gasPa gauge pressure at which {@code gas} holds, Pa; NaN when the design names none
 * @param shareOfMm open share of the flues at a plate travel in mm; null without a plate
 */
public record KilnAsDesigned(KilnHeat kiln, DoubleFunction<GasExchange> gas, List<Step> steps, FiringRun forecast, double gasPa,
        DoubleUnaryOperator shareOfMm) {
    public KilnAsDesigned {
        steps = List.copyOf(steps);
    }
}
