package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.StepResult;
import portwright.model.Design;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.model.PortsState;

/**
 * Where the damper plate stands in a step. Forecast, card and window all draw it from here.
 *
 * @param step index from 0
 * @param stand how it stands
 * @param level name of the level asked for; null for none
 * @param startMm travel from all shut for the level's middle at the step's start, or for the share that the design states; null unless set
 * @param endMm at the step's end: the hotter the kiln, the wider for the same level, so a step that cools runs from wide to narrow
 * @param endK chamber at the step's end, K
 */
public record StepPlate(int step, Stand stand, String level, Double startMm, Double endMm, double endK) {
    private static final double MM = 1000;

    /** How the plate stands. */
    public enum Stand {
        /** Shut, the ports plugged. */
        PLUGGED("plugged"),
        /** Taken off the flue. */
        OFF("off"),
        /** At a travel. */
        SET(""),
        /** Nothing computes it, or no place of the plate gives the level. */
        BY_FLAME("by flame");

        private final String words;

        Stand(String words) {
            this.words = words;
        }
    }

    /** One a step of the design; temperatures are the forecast's, for steps that it does not begin those asked for. */
    public static List<StepPlate> of(Review review) {
        return of(review.design(), review.firing(), review.fire());
    }

    static List<StepPlate> of(Design design, FiringReview firing, FireReview fire) {
        List<StepPlate> out = new ArrayList<>();
        if (design.firing() == null || design.firing().steps() == null) {
            return out;
        }
        List<FiringStep> steps = design.firing().steps();
        for (int i = 0; i < steps.size(); i++) {
            FiringStep s = steps.get(i);
            boolean gas = s.heat() == Heat.GAS || s.heat() == Heat.BOTH;
            if (!gas && s.ports() != PortsState.OPEN) {
                out.add(new StepPlate(i, Stand.PLUGGED, null, null, null, Double.NaN));
            } else if (gas && s.atmosphere() != null) {
                out.add(forLevel(i, AtmosphereLevel.named(s.atmosphere().id()), firing, fire));
            } else {
                out.add(stated(i, gas, design, fire));
            }
        }
        return List.copyOf(out);
    }

    /** At the share that the design states; without one it is off while no gas burns, and the flame's affair while gas does. */
    private static StepPlate stated(int index, boolean gas, Design design, FireReview fire) {
        Double open = design.damper() == null || design.damper().open() == null
                ? null
                : Double.valueOf(design.damper().open().share());
        if (fire == null || fire.plate() == null || open == null || open >= 1) {
            boolean known = open != null || !gas;
            return new StepPlate(index, known ? Stand.OFF : Stand.BY_FLAME, null, null, null, Double.NaN);
        }
        double mm = fire.plate().travelFor(open) * MM;
        return new StepPlate(index, Stand.SET, null, mm, mm, Double.NaN);
    }

    private static StepPlate forLevel(int index, AtmosphereLevel level, FiringReview firing, FireReview fire) {
        double[] k = temperatures(index, firing, fire);
        boolean known = k != null && fire.kiln().known() && fire.gas() && fire.plate() != null;
        LevelSetting end = known ? fire.level(level, k[1]) : null;
        if (end == null || !end.reachable()) {
            return new StepPlate(index, Stand.BY_FLAME, level.id(), null, null, k == null ? Double.NaN : k[1]);
        }
        LevelSetting start = fire.level(level, k[0]);
        double to = fire.plate().travelFor(end.openMid()) * MM;
        double from = start.reachable() ? fire.plate().travelFor(start.openMid()) * MM : to;
        return new StepPlate(index, Stand.SET, level.id(), from, to, k[1]);
    }

    /** Chamber at start and end, K; null where neither forecast nor design tells. */
    private static double[] temperatures(int index, FiringReview firing, FireReview fire) {
        if (fire == null) {
            return null;
        }
        if (firing != null && firing.forecast().known()) {
            List<StepResult> run = firing.forecast().value().nominal().steps();
            if (index < run.size()) {
                return new double[] {run.get(index).startK(), run.get(index).endK()};
            }
        }
        return !fire.asked().known()
                ? null
                : fire.asked().value().stream()
                        .filter(a -> a.step() == index)
                        .findFirst()
                        .map(a -> new double[] {a.startK(), a.endK()})
                        .orElse(null);
    }

    /** Setting for the fire asked for at the step's end, with the band it may need; null unless the plate is set for one. */
    public PlateSetting setting(Review review) {
        return level == null || stand != Stand.SET
                ? null
                : review.fire().plateSetting(AtmosphereLevel.named(level), endK);
    }

    /** For table and card, whole millimetres from start to end: {@code 17 to 19}, {@code 18}, {@code off}, {@code plugged}, {@code by flame}. */
    public String words() {
        if (stand != Stand.SET) {
            return stand.words;
        }
        String a = PlateSetting.whole(startMm);
        String b = PlateSetting.whole(endMm);
        return a.equals(b) ? b : a + " to " + b;
    }
}
