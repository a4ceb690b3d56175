package portwright.review;

import java.util.List;

/**
 * Where the damper plate stands in a step that burns gas and asks for an atmosphere.
 *
 * @param step index from 0
 * @param level name of the level
 * @param lowMm plate travel at the level's rich end, mm from all shut
 * @param highMm plate travel at its lean end, mm
 */
public record StepTravel(int step, String level, double lowMm, double highMm) {
    /** One for each such step whose level can be reached, at the step's end temperature; empty where the fire is not known. */
    public static List<StepTravel> of(FireReview fire) {
        if (fire == null || !fire.kiln().known() || !fire.asked().known() || !fire.gas() || fire.plate() == null) {
            return List.of();
        }
        return fire.asked().value().stream()
                .filter(a -> a.level() != null)
                .flatMap(a -> {
                    LevelSetting s = fire.level(a.level(), a.endK());
                    return s.reachable()
                            ? java.util.stream.Stream.of(
                                    new StepTravel(a.step(), a.level().id(), s.travelLowMm(), s.travelHighMm()))
                            : java.util.stream.Stream.empty();
                })
                .toList();
    }
}
