package portwright.calc.draft;

/**
 * One flue hole.
 *
 * @param name for results
 * @param diameter m
 * @param length thickness drilled through, m
 * @param height of its OUTER mouth above the hot face of the floor, m: the flue itself is a piece of hot stack
 * @param openShare what the damper leaves open, 0 to 1
 * @param outsidePressure gauge pressure at its mouth, Pa: negative under a drawing hood, positive in a down-draught
 */
public record Flue(
        String name, double diameter, double length, double height, double openShare, double outsidePressure) {
    public Flue {
        Require.atLeastZero("diameter of " + name + ", m", diameter);
        Require.positive("length of " + name + ", m", length);
        Require.finite("height of " + name + ", m", height);
        Require.share("open share of " + name, openShare);
        Require.finite("outside pressure at " + name + ", Pa", outsidePressure);
    }

    /** The same flue of another diameter, m. */
    public Flue withDiameter(double metres) {
        return new Flue(name, metres, length, height, openShare, outsidePressure);
    }

    /** The same flue with another damper setting. */
    public Flue withOpenShare(double share) {
        return new Flue(name, diameter, length, height, share, outsidePressure);
    }
}
