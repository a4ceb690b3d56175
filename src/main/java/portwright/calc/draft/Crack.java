package portwright.calc.draft;

/**
 * A long narrow gap, such as the lid joint.
 *
 * @param height above the hot face of the floor, m
 * @param width gap, m
 * @param length along the joint, m
 * @param depth through the wall, m
 */
public record Crack(double height, double width, double length, double depth) {
    public Crack {
        Require.finite("height of the crack, m", height);
        Require.atLeastZero("width of the crack, m", width);
        Require.atLeastZero("length of the crack, m", length);
        Require.positive("depth of the crack, m", depth);
    }
}
