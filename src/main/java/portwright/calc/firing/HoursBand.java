package portwright.calc.firing;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Least and most time of a firing over the conductivity that the brick may have. Only firings that reach every goal have a time; the
 * nominal one, where it is among them, lies inside by construction.
 *
 * @param leastS of those that reach every goal, s; NaN where none does
 * @param mostS of those that reach every goal, s; NaN where none does
 * @param nominal whether the firing with brick as tabled is among them
 * @param open whether one of the three never gets there: then there is no upper end
 */
public record HoursBand(double leastS, double mostS, boolean nominal, boolean open) {
    static HoursBand of(FiringRun nominal, FiringRun quick, FiringRun slow) {
        double[] times = Stream.of(nominal, quick, slow)
                .filter(FiringRun::reached)
                .mapToDouble(FiringRun::endS)
                .toArray();
        return new HoursBand(
                DoubleStream.of(times).min().orElse(Double.NaN),
                DoubleStream.of(times).max().orElse(Double.NaN),
                nominal.reached(),
                times.length < 3);
    }
}
