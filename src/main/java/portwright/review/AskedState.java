package portwright.review;

import static portwright.units.Celsius.ZERO_C;

import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;

/**
 * A step that burns gas.
 *
 * @param step index from 0
 * @param litK chamber when gas is lit for it, K, likewise; the start's where it burns on
 * @param startK chamber at its start, K: the lower of what the steps say and what the forecast reaches
 * @param endK chamber at its end, K: as asked; of a hold the lower likewise
 * @param level asked for; null when none is
 */
public record AskedState(int step, double litK, double startK, double endK, AtmosphereLevel level) {
    static List<AskedState> of(List<StepTime> steps) {
        return steps.stream()
                .filter(StepTime::gas)
                .map(s -> new AskedState(
                        s.index(),
                        s.cold().litC() + ZERO_C,
                        s.cold().startC() + ZERO_C,
                        (s.hold() ? s.cold().endC() : s.endC()) + ZERO_C,
                        s.atmosphere() == null
                                ? null
                                : AtmosphereLevel.named(s.atmosphere().id())))
                .toList();
    }
}
