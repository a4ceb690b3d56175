package portwright.calc.firing;

import java.util.List;

/**
 * Everything the heat balance knows of the kiln and what stands in it.
 *
 * @param parts walls, floor, lid
 * @param lossFactor on the conductivity of every part: grooves, joints, element tails and the lid's gap lose more than
 *     the plain slab; default 1.25, range 1.0 to 1.5
 * @param loadHeatCapacityJPerK ware, shelves and posts together
 * @param loadSurfaceM2 surface through which the load takes heat from the chamber
 * @param ports every hole with its bore
 * @param roomK air around the kiln, K
 */
public record KilnHeat(
        List<ShellPart> parts,
        double lossFactor,
        double loadHeatCapacityJPerK,
        double loadSurfaceM2,
        Elements elements,
        List<OpenPort> ports,
        double roomK) {
    /** Loss factor used when the design gives none (this project's judgement; learnt from records). */
    public static final double DEFAULT_LOSS_FACTOR = 1.25;

    public KilnHeat {
        parts = List.copyOf(parts);
        ports = List.copyOf(ports);
        if (parts.isEmpty() || !(lossFactor > 0 && loadHeatCapacityJPerK >= 0 && roomK > 0)) {
            throw new IllegalArgumentException("the kiln needs parts, a loss factor and a room temperature");
        }
    }

    /** Inner surface, m². */
    public double innerAreaM2() {
        return parts.stream().mapToDouble(ShellPart::innerAreaM2).sum();
    }

    /** The same kiln with every conductivity times a factor. */
    public KilnHeat conducting(double factor) {
        return new KilnHeat(
                parts.stream().map(p -> p.conducting(factor)).toList(),
                lossFactor,
                loadHeatCapacityJPerK,
                loadSurfaceM2,
                elements,
                ports,
                roomK);
    }

    public KilnHeat withLossFactor(double factor) {
        return new KilnHeat(parts, factor, loadHeatCapacityJPerK, loadSurfaceM2, elements, ports, roomK);
    }

    public KilnHeat withElements(Elements other) {
        return new KilnHeat(parts, lossFactor, loadHeatCapacityJPerK, loadSurfaceM2, other, ports, roomK);
    }

    /** The same kiln with another heat capacity of load and furniture, J/K. */
    public KilnHeat withLoad(double heatCapacityJPerK) {
        return new KilnHeat(parts, lossFactor, heatCapacityJPerK, loadSurfaceM2, elements, ports, roomK);
    }
}
