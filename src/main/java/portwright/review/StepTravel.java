package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;

/**
 * Where the damper plate stands in a step that burns gas and asks for an atmosphere, mm from all shut.
 *
 * @param step index from 0
 * @param level name of the level
 * @param startMm for the level's middle at the step's start
 * @param endMm at the step's end: the hotter the kiln, the wider for the same level
 * @param lowMm least travel that the end may need, 5 to 95 % of lambda
 * @param highMm greatest
 */
public record StepTravel(int step, String level, double startMm, double endMm, double lowMm, double highMm) {
    /** One for each such step whose level can be reached; empty where the fire is not known. */
    public static List<StepTravel> of(FireReview fire) {
        if (fire == null || !fire.kiln().known() || !fire.asked().known() || !fire.gas() || fire.plate() == null) {
            return List.of();
        }
        List<StepTravel> out = new ArrayList<>();
        for (AskedState a : fire.asked().value()) {
            AtmosphereLevel level = a.level();
            if (level == null || !fire.level(level, a.endK()).reachable()) {
                continue;
            }
            PlateSetting end = fire.plateSetting(level, a.endK());
            LevelSetting start = fire.level(level, a.startK());
            double from = start.reachable() ? (start.travelLowMm() + start.travelHighMm()) / 2 : end.mm();
            out.add(new StepTravel(a.step(), level.id(), from, end.mm(), end.lowMm(), end.highMm()));
        }
        return List.copyOf(out);
    }

    /** In whole millimetres: {@code 17–19} from start to end, or one figure. */
    public String words() {
        String a = PlateSetting.whole(startMm);
        String b = PlateSetting.whole(endMm);
        return a.equals(b) ? b : a + "–" + b;
    }
}
