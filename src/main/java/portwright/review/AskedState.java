package portwright.review;

import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;

/**
 * A step that burns gas.
 *
 * @param step index from 0
 * @param startK chamber at its start, K
 * @param endK chamber at its end, K
 * @param level asked for; null when none is
 */
public record AskedState(int step, double startK, double endK, AtmosphereLevel level) {
    private static final double ZERO_C = 273.15;

    static List<AskedState> of(List<StepTime> steps) {
        return steps.stream()
                .filter(StepTime::gas)
                .map(s -> new AskedState(
                        s.index(),
                        s.startC() + ZERO_C,
                        s.endC() + ZERO_C,
                        s.atmosphere() == null
                                ? null
                                : AtmosphereLevel.named(s.atmosphere().id())))
                .toList();
    }
}
