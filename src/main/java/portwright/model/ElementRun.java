package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/** A heating element in its groove. Wall: {@code height} of the groove's centre, {@code panels} null for all. Slab: {@code path}. */
public record ElementRun(
        String name,
        On on,
        Quantity height,
        List<Integer> panels,
        List<Place> path,
        Groove groove,
        Quantity coil,
        Tails tails) {}
