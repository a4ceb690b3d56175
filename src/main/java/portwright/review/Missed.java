package portwright.review;

import static portwright.units.Celsius.ZERO_C;

import java.util.List;
import java.util.Optional;
import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.StepResult;
import portwright.model.FiringStep;

/**
 * A step whose goal the forecast does not reach, or not with every brick that may stand there.
 *
 * @param step index from 0
 * @param goal what it does not reach, in words of the design
 * @param surely with the brick as tabled; else only at one end of the conductivity's band
 * @param ending how it ends there
 * @param endC where it ends, °C
 * @param later whether steps follow that are then not begun
 */
public record Missed(int step, String goal, boolean surely, Ending ending, double endC, boolean later) {
    /** A step's goal in words of the design. */
    public static String goal(FiringStep s) {
        return s.hold() != null ? "the end of its hold" : s.cone() != null ? "cone " + s.cone() : s.to().typed();
    }

    /** How it ends there, in words. */
    public String how() {
        return ending.words();
    }

    /** Empty where all goals are reached, and where there is no forecast. */
    public static Optional<Missed> of(Review review) {
        if (review.firing() == null || !review.firing().forecast().known()) {
            return Optional.empty();
        }
        Forecast f = review.firing().forecast().value();
        for (FiringRun run : List.of(f.nominal(), f.slow(), f.quick())) {
            if (!run.reached()) {
                StepResult last = run.steps().get(run.steps().size() - 1);
                return Optional.of(new Missed(
                        last.index(),
                        goal(review.design().firing().steps().get(last.index())),
                        run == f.nominal(),
                        last.ending(),
                        last.endK() - ZERO_C,
                        last.index() + 1 < review.design().firing().steps().size()));
            }
        }
        return Optional.empty();
    }
}
