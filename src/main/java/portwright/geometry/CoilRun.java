package portwright.geometry;

import java.util.List;
import portwright.model.On;

/**
 * The middle line of a heating coil.
 *
 * @param name name of its element
 * @param pieces straight pieces; on walls one a panel, {@code panels} in the same order (empty on slabs)
 * @param radius half the coil's outer diameter, mm
 */
public record CoilRun(String name, On on, List<Integer> panels, List<Segment3> pieces, double radius) {
    public CoilRun {
        panels = List.copyOf(panels);
        pieces = List.copyOf(pieces);
    }
}
