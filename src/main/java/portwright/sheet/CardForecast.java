package portwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import portwright.report.ForecastText;
import portwright.report.HeldCones;
import portwright.report.PowerWords;
import portwright.report.RelightWords;
import portwright.review.ClosePlates;
import portwright.review.Missed;
import portwright.review.Review;
import portwright.review.StepPlate;
import portwright.review.StepRow;
import portwright.units.Format;

/**
 * What the forecast gives to the card.
 *
 * @param plates how the plate stands, one a step of the design; empty where nothing is computed
 * @param bands travel of each level at the end of the last step that asks for it
 * @param line one line for the record; empty when there is no forecast
 * @param endsC what the forecast expects at the end of each step that it reaches, °C, by the step's index
 * @param missed what is said under a step that is not reached, or surely, by the step's index
 * @param notes what is said under all steps
 */
public record CardForecast(
        List<StepPlate> plates,
        List<CardData.Band> bands,
        String line,
        Map<Integer, Double> endsC,
        Map<Integer, String> missed,
        List<String> notes) {

    /** The least that a plate of shelf is moved by hand, mm (own judgement). */
    private static final int LEAST_NUDGE_MM = 1;
    /** More at once would leave the level on any damper (own judgement), mm. */
    private static final int MOST_NUDGE_MM = 5;

    /** From a review. */
    public static CardForecast of(Review review) {
        Map<Integer, Double> ends = new HashMap<>();
        List<String> notes = new ArrayList<>();
        List<StepPlate> plates = StepPlate.of(review);
        if (review.firing() != null && review.firing().forecast().known()) {
            review.firing().rows(review.fire()).stream()
                    .filter(StepRow::reached)
                    .forEach(r -> ends.put(r.index(), r.endC()));
            HeldCones.words(review).ifPresent(w -> notes.add("Forecast: " + w + "."));
            String conflict = PowerWords.conflict(review);
            if (!conflict.isEmpty()) {
                notes.add(conflict);
            }
        }
        ClosePlates.of(review).forEach(p -> notes.add(p.words()));
        String relight = RelightWords.card(review);
        if (!relight.isEmpty()) {
            notes.add(relight);
        }
        List<CardData.Band> bands = new ArrayList<>();
        StepPlate.settings(review, plates)
                .forEach((level, s) -> bands.add(new CardData.Band(level, s.mm(), s.lowMm(), s.highMm())));
        return new CardForecast(
                plates,
                List.copyOf(bands),
                ForecastText.line(review),
                Map.copyOf(ends),
                Missed.of(review).map(m -> Map.of(m.step(), words(m))).orElse(Map.of()),
                List.copyOf(notes));
    }

    /** Nothing is known of the firing. */
    public static CardForecast none() {
        return new CardForecast(List.of(), List.of(), "", Map.of(), Map.of(), List.of());
    }

    /**
     * By how much to move the plate where the temperature falls, whole mm: half of what lies between the two levels that stand nearest to each
     * other, at least {@link #LEAST_NUDGE_MM}, at most {@link #MOST_NUDGE_MM}; the least where no two levels are told.
     */
    int nudgeMm() {
        double nearest = Double.POSITIVE_INFINITY;
        for (CardData.Band a : bands) {
            for (CardData.Band b : bands) {
                if (a != b) {
                    nearest = Math.min(nearest, Math.abs(a.setMm() - b.setMm()));
                }
            }
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

    private static String scales(double c) {
        return Format.plain(c, 0) + " °C (" + Format.plain(c * 1.8 + 32, 0) + " °F)";
    }
}
