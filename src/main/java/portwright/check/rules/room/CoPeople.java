package portwright.check.rules.room;

import java.util.List;
import java.util.Optional;
import portwright.calc.room.AlarmWindow;
import portwright.data.CoEffect;
import portwright.review.RoomReview;

/** What the CO of a room does to the people in it. */
final class CoPeople {
    private CoPeople() {}

    /** What the table's levels on either side of a peak do: the level that it has passed and the next, which it comes near. Nothing under the first. */
    private static String effect(double peakPpm) {
        Optional<CoEffect> passed = CoEffect.at(peakPpm);
        if (passed.isEmpty()) {
            return "";
        }
        CoEffect low = passed.get();
        String above = Say.over(peakPpm, low.ppm())
                ? CoEffect.over(peakPpm)
                        .map(e -> "; at " + Say.n(e.ppm()) + " ppm: " + e.effect())
                        .orElse("")
                : "";
        String already = Say.over(peakPpm, low.ppm()) ? " already" : "";
        return " At " + Say.n(low.ppm()) + " ppm" + already + ": " + low.effect() + above + " ("
                + low.source().title() + ").";
    }

    /** What the peak does to people, and whether a house alarm would say so. */
    static String words(RoomReview room, RoomReview.Co co, double gasOnS) {
        String effect = effect(co.calm().peakPpm());
        String standard = AlarmWindow.standard(room.family());
        List<AlarmWindow> windows = AlarmWindow.all(co.calm(), standard);
        double may = windows.stream().mapToDouble(AlarmWindow::earliestS).min().orElse(Double.NaN);
        double must = windows.stream()
                .flatMapToDouble(w -> w.latestS().stream())
                .min()
                .orElse(Double.NaN);
        return effect
                + (windows.isEmpty()
                        ? " A house alarm to " + standard + " may stay silent throughout."
                        : " A house alarm to " + standard + " sounds " + Say.time(may - gasOnS)
                                + " after the first gas at the earliest"
                                + (Double.isNaN(must)
                                        ? " and need not sound at all."
                                        : ", " + Say.time(must - gasOnS) + " at the latest."));
    }
}
