package portwright.calc.room;

import java.util.List;
import portwright.data.SafetyNumber;

/**
 * Air through openings by warmth and by wind.
 *
 * <p>Stack: {@code Q = Cd A sqrt(2 g dH (Ti - To)/Ti)} through each opening, dH from its middle to the neutral level
 * (published: ASHRAE Fundamentals 1997, 25.13 eq. 37; Cd 0.65 from memory). Wind: {@code Q = Cv A U}, Cv 0.30 for wind at an
 * angle (0.5 to 0.6 square on), A the smaller of the inlet and the outlet side. Temperatures in K, heights in m, areas in m².
 */
public final class Openings {

    private static final double G = 9.80665;

    private Openings() {}

    /**
     * One opening to outdoors.
     *
     * @param freeAreaM2 clear area, screens and louvres taken off
     * @param levelM height of its middle
     */
    public record Opening(double freeAreaM2, double levelM) {
        public Opening {
            Check.atLeastZero(freeAreaM2, "the area of an opening");
            if (!Double.isFinite(levelM)) {
                throw new IllegalArgumentException("the level of an opening must be a number, got " + levelM);
            }
        }
    }

    /**
     * One opening a distance dH from the neutral level. Example: 0.5 m², 1.25 m, 35/20 °C, Cd 0.65: 0.355 m³/s.
     *
     * @return m³/s
     */
    public static double throughOne(double areaM2, double fromNeutralM, double insideK, double outsideK, double cd) {
        Check.atLeastZero(areaM2, "the area");
        Check.aboveZero(insideK, "the indoor temperature");
        Check.aboveZero(outsideK, "the outdoor temperature");
        double warm = Math.max(insideK, outsideK);
        return cd * areaM2 * Math.sqrt(2 * G * Math.abs(fromNeutralM) * Math.abs(insideK - outsideK) / warm);
    }

    /**
     * Stack flow through any number of openings: the neutral level is found at which as much air leaves as enters. Openings
     * all at one level give none by this formula; what a tall one breathes by itself is {@link #tallM3PerS}.
     *
     * @return m³/s of fresh air
     */
    public static double stackM3PerS(List<Opening> openings, double insideK, double outsideK) {
        double ro = 1 / Math.sqrt(outsideK); // mass flow per sqrt(dp) goes with sqrt(rho), rho with 1/T
        double ri = 1 / Math.sqrt(insideK);
        boolean warmInside = insideK > outsideK;
        double a = openings.stream().mapToDouble(Opening::levelM).min().orElse(0);
        double b = openings.stream().mapToDouble(Opening::levelM).max().orElse(0);
        for (int i = 0; i < 200; i++) {
            double mid = (a + b) / 2;
            double net = 0;
            for (Opening o : openings) {
                double d = o.levelM - mid;
                boolean in = warmInside ? d < 0 : d > 0;
                net += (in ? ro : -ri) * o.freeAreaM2 * Math.sqrt(Math.abs(d));
            }
            // raising the level turns outlets into inlets when it is warm inside
            if ((net < 0) == warmInside) {
                a = mid;
            } else {
                b = mid;
            }
        }
        double level = (a + b) / 2;
        double in = 0;
        for (Opening o : openings) {
            boolean inlet = warmInside ? o.levelM < level : o.levelM > level;
            if (inlet) {
                in += throughOne(o.freeAreaM2, o.levelM - level, insideK, outsideK, cd());
            }
        }
        return in;
    }

    /**
     * A tall opening that breathes by itself, out above and in below: {@code Q = Cd/3 A sqrt(g h (Ti - To)/Ti)}, the velocity of the stack formula over
     * the lower half of its height, with {@code Cd = 0.40 + 0.0045 |Ti - To|} for flow both ways (published: ASHRAE Fundamentals 1997, 25.13 eq. 37 and
     * 38), at most that of a plain opening. Example: 2 m², 2.1 m tall, 20/10 °C: 895 m³/h.
     *
     * @return m³/s of fresh air
     */
    public static double tallM3PerS(double freeAreaM2, double heightM, double insideK, double outsideK) {
        double difference = Math.abs(insideK - outsideK);
        double bothWays = Math.min(cd(), 0.40 + 0.0045 * difference);
        return bothWays
                / 3
                * Check.atLeastZero(freeAreaM2, "the area")
                * Math.sqrt(G * Check.atLeastZero(heightM, "the height") * difference / Math.max(insideK, outsideK));
    }

    /**
     * Wind flow counted on the safe side: wind at an angle, A = the smaller of the largest opening and all others together,
     * so one opening alone gives none. Example: 0.5 m² each side, 2 m/s: 0.30 m³/s = 1080 m³/h.
     *
     * @return m³/s
     */
    public static double windM3PerS(List<Opening> openings, double windMPerS) {
        double sum = openings.stream().mapToDouble(Opening::freeAreaM2).sum();
        double largest =
                openings.stream().mapToDouble(Opening::freeAreaM2).max().orElse(0);
        return wind(Math.min(largest, sum - largest), windMPerS, SafetyNumber.value("wind-angle-factor"));
    }

    /** {@code Q = Cv A U}. */
    static double wind(double areaM2, double windMPerS, double factor) {
        return factor * areaM2 * Check.atLeastZero(windMPerS, "the wind");
    }

    private static double cd() {
        return SafetyNumber.value("opening-cd");
    }
}
