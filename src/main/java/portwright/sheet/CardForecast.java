package portwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.report.ForecastText;
import portwright.report.HeldCones;
import portwright.report.PowerWords;
import portwright.report.RelightWords;
import portwright.report.StepRemarks;
import portwright.review.ClosePlates;
import portwright.review.Missed;
import portwright.review.PlateSetting;
import portwright.review.Review;
import portwright.review.StepPlate;
import portwright.review.StepRow;
import portwright.units.Format;

/**
 * What the forecast gives to the card.
 *
 * @param plates how the plate stands, one a step of the design; empty where nothing is computed
 * @param bands travel at the end of each step with gas that has one
 * @param line one line for the record; empty when there is no forecast
 * @param endsC what the forecast expects at the end of each step that it reaches, °C, by the step's index
 * @param missed what is said under a step that is not reached, or surely, by the step's index
 * @param coneDown steps by index whose cone is down before they begin
 * @param remarks what is said under a step that does not go as asked, by its index: a hold that sags, a cone that is down already, a fall at
 *     another rate, a climb that slows
 * @param notes what is said under all steps
 * @param close fires that the plate tells apart by less than a hand can set, one sentence for all; empty for none
 */
public record CardForecast(
        List<StepPlate> plates,
        List<CardData.Band> bands,
        String line,
        Map<Integer, Double> endsC,
        Map<Integer, String> missed,
        Set<Integer> coneDown,
        Map<Integer, String> remarks,
        List<String> notes,
        String close) {

    /** The least that a plate of shelf is moved by hand, mm (own judgement). */
    private static final int LEAST_NUDGE_MM = 1;
    /** More at once would leave the level on any damper (own judgement), mm. */
    private static final int MOST_NUDGE_MM = 5;

    /** From a review. */
    public static CardForecast of(Review review) {
        Map<Integer, Double> ends = new HashMap<>();
        Set<Integer> down = new HashSet<>();
        Map<Integer, String> remarks = new HashMap<>();
        List<String> notes = new ArrayList<>();
        List<StepPlate> plates = StepPlate.of(review);
        if (review.firing() != null && review.firing().forecast().known()) {
            review.firing().rows(review.fire()).stream()
                    .filter(r -> r.reached() || r.sags())
                    .forEach(r -> {
                        ends.put(r.index(), r.endC());
                        if (r.coneDownBefore()) {
                            down.add(r.index());
                            remarks.put(r.index(), StepRemarks.coneDown(r));
                        } else if (r.fallsOtherwise() || fallsOnShare(review, r)) {
                            remarks.put(r.index(), StepRemarks.falls(r, fahrenheit(review, r.index())));
                        } else if (r.sags()) {
                            remarks.put(r.index(), sag(r));
                        } else if (r.slows()) {
                            remarks.put(r.index(), StepRemarks.slows(r, fahrenheit(review, r.index())));
                        }
                    });
            HeldCones.words(review).ifPresent(w -> notes.add("Forecast: " + w + "."));
            String conflict = PowerWords.conflict(review);
            if (!conflict.isEmpty()) {
                notes.add(conflict);
            }
        }
        String relight = RelightWords.card(review);
        if (!relight.isEmpty()) {
            notes.add(relight);
        }
        List<CardData.Band> bands = bands(review, plates);
        return new CardForecast(
                plates,
                List.copyOf(bands),
                ForecastText.line(review),
                Map.copyOf(ends),
                Missed.of(review).map(m -> Map.of(m.step(), words(m))).orElse(Map.of()),
                Set.copyOf(down),
                Map.copyOf(remarks),
                List.copyOf(notes),
                CloseMarks.words(ClosePlates.of(review), bands));
    }

    /** Whether a step falls while its elements stay on a fixed share: only the forecast knows how fast. */
    private static boolean fallsOnShare(Review review, StepRow r) {
        FiringStep s = review.design().firing().steps().get(r.index());
        return s.to() != null && s.elementShare() != null && s.heat() != Heat.GAS && r.fallKPerH() >= 1;
    }

    private static List<CardData.Band> bands(Review review, List<StepPlate> plates) {
        List<CardData.Band> out = new ArrayList<>();
        for (StepPlate p : plates) {
            Heat heat = review.design().firing().steps().get(p.step()).heat();
            if (p.stand() != StepPlate.Stand.SET || heat != Heat.GAS && heat != Heat.BOTH) {
                continue;
            }
            if (p.level() == null) {
                out.add(new CardData.Band(p.step(), "", p.endMm(), p.endMm(), p.endMm()));
                continue;
            }
            PlateSetting s = p.setting(review);
            out.add(new CardData.Band(p.step(), p.level(), s.mm(), s.lowMm(), s.highMm()));
        }
        return List.copyOf(out);
    }

    /** Whether a step that names a temperature has its rate in °F; at full power, where no rate is typed, the temperature. */
    private static boolean fahrenheit(Review review, int step) {
        FiringStep s = review.design().firing().steps().get(step);
        return (s.rate() == null ? s.to() : s.rate())
                .typed()
                .toUpperCase(Locale.ROOT)
                .contains("F");
    }

    /** Nothing is known of the firing. */
    public static CardForecast none() {
        return new CardForecast(List.of(), List.of(), "", Map.of(), Map.of(), Set.of(), Map.of(), List.of(), "");
    }

    /**
     * By how much to move the plate where the temperature falls, whole mm: half of what lies between the two levels that stand nearest to each
     * other, each at its last step, at least {@link #LEAST_NUDGE_MM}, at most {@link #MOST_NUDGE_MM}; the least where no two levels are told.
     */
    int nudgeMm() {
        Map<String, Double> last = new HashMap<>();
        bands.forEach(b -> last.put(b.level(), b.setMm()));
        List<Double> apart = last.values().stream().sorted().toList();
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < apart.size(); i++) {
            nearest = Math.min(nearest, apart.get(i) - apart.get(i - 1));
        }
        return Double.isInfinite(nearest)
                ? LEAST_NUDGE_MM
                : (int) Math.max(LEAST_NUDGE_MM, Math.min(MOST_NUDGE_MM, Math.rint(nearest / 2)));
    }

    /** How the plate stands in a step, in words. */
    String plate(int step) {
        return step < plates.size() ? plates.get(step).words() : "by flame";
    }

    private static String words(Missed m) {
        return m.surely()
                ? "NOT REACHED by the forecast: " + m.how() + " at " + scales(m.endC()) + "."
                        + (m.later() ? " Later steps are not begun." : "")
                : "MAY NOT BE REACHED: if the brick leaks 20 % more heat, " + m.how() + " at " + scales(m.endC()) + ".";
    }

    private static String sag(StepRow r) {
        return "The forecast: the hold " + r.lacks("it") + ", it ends at " + scales(Math.rint(r.endC()))
                + "; the minutes with open ports are counted.";
    }

    private static String scales(double c) {
        return Format.plain(c, 0) + " °C (" + Format.plain(c * 1.8 + 32, 0) + " °F)";
    }
}
