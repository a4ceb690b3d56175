package portwright.review;

import java.util.Optional;
import portwright.calc.firing.ConeWork;
import portwright.data.Cones;
import portwright.data.FiringFigure;
import portwright.model.FiringStep;

/**
 * The trade's rule of thumb about power for each inner surface beside what the heat balance says of electricity alone. Where they differ
 * both stand; nothing is averaged.
 *
 * @param wPerIn2 rated power for each square inch of inner surface
 * @param goal the hottest goal in words of the design
 * @param trade what the trade says of such a kiln
 * @param electricReaches whether the forecast with electricity alone, ports plugged, reaches every goal
 * @param reaches whether the forecast of the firing as it is written does
 * @param tenAtMost whether the hottest goal is no hotter than cone 10
 */
public record TradePower(
        double wPerIn2, String goal, Says trade, boolean electricReaches, boolean reaches, boolean tenAtMost) {
    private static final double SAME_K = 5;
    private static final double CHART_K_PER_S = 60 / 3600.0;

    /** What the trade says. */
    public enum Says {
        STOPS_NEAR_CONE_8,
        REACHES_CONE_10,
        /** The two figures leave the room between them open. */
        NOTHING
    }

    /**
     * Empty while there is no forecast or power, and for a firing no hotter than cone 8, of which the
     * figures do not speak.
     */
    public static Optional<TradePower> of(Review review) {
        FiringReview firing = review.firing();
        if (firing == null
                || !firing.forecast().known()
                || firing.kiln().value().elements().nominalW() <= 0) {
            return Optional.empty();
        }
        double hottest = 0;
        String words = "";
        for (FiringStep s : review.design().firing().steps()) {
            double k = s.cone() != null ? coneK(s.cone()) : s.to() != null ? s.to().si() : 0;
            if (k > hottest) {
                hottest = k;
                words = s.cone() != null ? "cone " + s.cone() : s.to().typed();
            }
        }
        if (hottest <= coneK("8") + SAME_K) {
            return Optional.empty();
        }
        double w = TradeFigure.powerPerIn2(firing.kiln().value());
        double told = Math.rint(w * 10) / 10;
        Says says = told <= figure("power-short").high()
                ? Says.STOPS_NEAR_CONE_8
                : told >= figure("power-enough").low() ? Says.REACHES_CONE_10 : Says.NOTHING;
        return Optional.of(new TradePower(
                w,
                words,
                says,
                firing.allElectric().value().run().reached(),
                firing.forecast().value().nominal().reached(),
                hottest <= coneK("10") + SAME_K));
    }

    /** Whether the trade and the forecast of electricity alone contradict each other. */
    public boolean conflict() {
        return trade == Says.STOPS_NEAR_CONE_8 && electricReaches
                || trade == Says.REACHES_CONE_10 && !electricReaches && tenAtMost;
    }

    /** A figure of the trade's rule as it was found. */
    public static FiringFigure figure(String id) {
        return FiringFigure.all().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double coneK(String cone) {
        return ConeWork.of(Cones.load().find(cone).orElseThrow()).endTemperatureK(CHART_K_PER_S);
    }
}
