package portwright.layout;

import java.util.Comparator;
import java.util.List;
import portwright.model.Design;
import portwright.units.Format;

/**
 * What a drill by hand may make of a layout.
 *
 * @param odds of a stop, one a floor or lid hole
 * @param wander room of each of these holes
 */
public record DrillOutlook(List<HoleOdds> odds, List<Wander> wander) {
    private static final String[] TOWARDS = {
        "the back", "back right", "the right", "front right", "the front", "front left", "the left", "back left"
    };

    public DrillOutlook {
        odds = List.copyOf(odds);
        wander = List.copyOf(wander);
    }

    /** Simulated with the drill errors that the design states. */
    public static DrillOutlook of(Design design) {
        return new DrillOutlook(Tolerance.odds(design), Tolerance.wander(design));
    }

    /** Share of drillings that end with all holes inside every stop limit, at least; 0 to 1. */
    public double allInside() {
        return Math.max(0, 1 - odds.stream().mapToDouble(HoleOdds::stop).sum());
    }

    /** The hole that may stray least; null when there is none on floor or lid. */
    public Wander tightest() {
        return wander.stream().min(Comparator.comparingDouble(Wander::leastMm)).orElse(null);
    }

    /** Eight directions in words for a bearing clockwise from the back, deg. */
    public static String towards(double bearing) {
        return TOWARDS[(int) Math.round(bearing / 45) % TOWARDS.length];
    }

    /** Both in a sentence or two; empty when there is no floor or lid hole. */
    public String words() {
        Wander w = tightest();
        if (w == null) {
            return "";
        }
        double percent = 100 * allInside();
        String share = percent > 99.95 ? "more than 99.9" : Format.plain(percent, 1);
        return "Drilled by hand, " + share + " of 100 end inside every stop limit"
                + (allInside() < HoleOdds.TARGET
                        ? ", under the " + Format.plain(100 * HoleOdds.TARGET, 0) + " aimed at: drill with a guide. "
                        : ". ")
                + (w.leastMm() >= Wander.MOST_MM
                        ? "Every hole may wander " + Format.plain(Wander.MOST_MM, 0) + " mm or more."
                        : "Least room: " + w.hole() + " may wander " + Format.plain(w.leastMm(), 1) + " mm to "
                                + towards(w.leastBearing()) + ".");
    }
}
