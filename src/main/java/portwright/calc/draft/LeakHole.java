package portwright.calc.draft;

/**
 * A leaking peephole or passage.
 *
 * @param height above the hot face of the floor, m
 * @param diameter of a round hole of the same open area, m
 * @param length through the wall, m
 */
public record LeakHole(double height, double diameter, double length) {
    public LeakHole {
        Require.finite("height of the leak, m", height);
        Require.atLeastZero("diameter of the leak, m", diameter);
        Require.positive("length of the leak, m", length);
    }

    /** A leak given by its open area, m². */
    public static LeakHole ofArea(double height, double area, double length) {
        Require.atLeastZero("area of the leak, m2", area);
        return new LeakHole(height, 2 * Math.sqrt(area / Math.PI), length);
    }
}
