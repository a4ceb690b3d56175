package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/** A kiln shelf; {@code height}: hot face of the floor to its underside; {@code posts} null unknown. */
public record Shelf(
        String name,
        ShelfShape shape,
        Quantity diameter,
        Integer sides,
        Quantity acrossFlats,
        Quantity width,
        Quantity depth,
        Quantity turn,
        Quantity height,
        Quantity thickness,
        Place at,
        List<Place> posts,
        Quantity postSize) {}
