package portwright.data;

import java.util.List;
import portwright.source.Source;

/**
 * One kind of insulating brick.
 *
 * @param id the name a design file uses, for example {@code ifb-23}
 * @param classificationC temperature class of the group in °C; a sorting mark, not a working limit
 * @param densityKgPerM3 bulk density
 * @param heatCapacityJPerKgK mean specific heat, from memory of refractory handbooks for every brick
 * @param conductivity points in rising temperature; plus or minus 20 % wherever they are from memory
 * @param source source of the density
 * @param conductivitySource source of the conductivity
 */
public record Brick(
        String id,
        String name,
        double classificationC,
        double densityKgPerM3,
        double heatCapacityJPerKgK,
        List<Point> conductivity,
        Source source,
        Source conductivitySource) {

    public Brick {
        conductivity = List.copyOf(conductivity);
    }

    /** Conductivity in W/(m K) at a mean temperature in °C. */
    public record Point(double temperatureC, double wattsPerMetreKelvin) {}
}
