package portwright.review;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import portwright.calc.combustion.AtmosphereLevel;

/**
 * Two steps that ask for different fires with a plate that a hand cannot set differently, or that stands at the same figure for them.
 *
 * @param first step that comes first
 * @param second the other
 * @param firstMm travel for the first one's level, at a temperature that both are told at
 * @param secondMm travel for the second one's, at the same temperature
 * @param kelvin that temperature; NaN where the two differ enough at any one, and only the figures of the two steps agree
 */
public record ClosePlates(StepPlate first, StepPlate second, double firstMm, double secondMm, double kelvin) {
    /** Finest that a plate of shelf is set by hand, mm (own judgement: the millimetre that its travel is read in). */
    private static final double FINEST_MM = 1;

    /** One for each pair of levels that is too close. */
    public static List<ClosePlates> of(Review review) {
        return of(review.fire(), StepPlate.of(review));
    }

    private static List<ClosePlates> of(FireReview fire, List<StepPlate> plates) {
        List<StepPlate> set = plates.stream()
                .filter(p -> p.stand() == StepPlate.Stand.SET && p.level() != null)
                .toList();
        List<ClosePlates> out = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            for (int j = i + 1; j < set.size(); j++) {
                StepPlate a = set.get(i);
                StepPlate b = set.get(j);
                boolean said = out.stream()
                        .anyMatch(c ->
                                c.levels().contains(a.level()) && c.levels().contains(b.level()));
                if (!a.level().equals(b.level()) && !said) {
                    pair(fire, a, b).ifPresent(out::add);
                }
            }
        }
        return List.copyOf(out);
    }

    private List<String> levels() {
        return List.of(first.level(), second.level());
    }

    private static Optional<ClosePlates> pair(FireReview fire, StepPlate a, StepPlate b) {
        for (double k : new double[] {b.endK(), a.endK()}) {
            Double mmA = mm(fire, a.level(), k);
            Double mmB = mm(fire, b.level(), k);
            if (mmA != null && mmB != null && Math.abs(mmA - mmB) < FINEST_MM) {
                return Optional.of(new ClosePlates(a, b, mmA, mmB, k));
            }
        }
        return a.words().equals(b.words())
                ? Optional.of(new ClosePlates(a, b, a.endMm(), b.endMm(), Double.NaN))
                : Optional.empty();
    }

    private static Double mm(FireReview fire, String level, double kelvin) {
        LevelSetting s = fire.level(AtmosphereLevel.named(level), kelvin);
        return s.reachable() ? Double.valueOf(fire.plate().travelFor(s.openMid()) * 1000) : null;
    }

    /** How far apart the plate would stand, mm; NaN where that is not what is told. */
    public double apartMm() {
        return Double.isNaN(kelvin) ? Double.NaN : Math.abs(firstMm - secondMm);
    }

    /** For forecast and card. */
    public String words() {
        String a = "step " + (first.step() + 1);
        String b = "step " + (second.step() + 1);
        if (Double.isNaN(kelvin)) {
            return "The plate stands at " + first.words() + " mm for " + first.level() + " in " + a + " and for "
                    + second.level() + " in " + b
                    + " alike: a hotter kiln wants it wider for the same fire. Set each by flame and meter.";
        }
        double firstTold = Math.rint(firstMm * 10) / 10;
        double secondTold = Math.rint(secondMm * 10) / 10;
        return String.format(
                Locale.ROOT,
                "For %s (%s) and %s (%s) the plate stands %.1f mm apart, %.1f and %.1f mm at %.0f °C: less than it can be set by hand. Only flame and meter tell these two apart.",
                first.level(),
                a,
                second.level(),
                b,
                Math.abs(firstTold - secondTold),
                firstTold,
                secondTold,
                kelvin - ZERO_C);
    }
}
