package portwright.calc.draft;

import java.util.List;

/**
 * A straight-edged plate slid over round flue holes: what stays open at a travel, and the travel for an open share.
 *
 * <p>Open part of a hole of radius r with the edge x past its rim: r² (α − sin α cos α), cos α = 1 − x/r. Travel 0: the edge
 * stands at the first rim, all shut.
 *
 * @param holes holes under one plate
 */
public record DamperPlate(List<Hole> holes) {
    private static final int HALVINGS = 60;

    /**
     * One hole.
     *
     * @param diameter m
     * @param offset of its rim along the slide, behind the first rim, m; 0 for the first
     */
    public record Hole(double diameter, double offset) {
        public Hole {
            Require.positive("diameter of the flue, m", diameter);
            Require.atLeastZero("offset of the flue along the slide, m", offset);
        }

        /** Open share of this hole at a travel, m. */
        double openShare(double travel) {
            double r = diameter / 2;
            double x = Math.max(0, Math.min(diameter, travel - offset));
            double alpha = Math.acos(Math.max(-1, Math.min(1, 1 - x / r)));
            return (alpha - Math.sin(alpha) * Math.cos(alpha)) / Math.PI;
        }
    }

    public DamperPlate {
        holes = List.copyOf(holes);
        if (holes.isEmpty()) {
            throw new IllegalArgumentException("a damper plate needs a flue under it");
        }
    }

    /** Travel from all shut to all open, m. */
    public double fullTravel() {
        return holes.stream().mapToDouble(h -> h.offset() + h.diameter()).max().orElseThrow();
    }

    /** Open share of all holes together at a travel, m. */
    public double openShare(double travel) {
        double open = 0;
        double all = 0;
        for (Hole h : holes) {
            double area = h.diameter() * h.diameter();
            open += area * h.openShare(travel);
            all += area;
        }
        return open / all;
    }

    /** Travel, m, that leaves a share of the total area open. */
    public double travelFor(double share) {
        Require.share("open share", share);
        double lo = 0;
        double hi = fullTravel();
        for (int i = 0; i < HALVINGS; i++) {
            double mid = 0.5 * (lo + hi);
            if (openShare(mid) < share) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return 0.5 * (lo + hi);
    }
}
