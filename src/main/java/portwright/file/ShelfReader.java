package portwright.file;

import java.util.List;
import portwright.model.Place;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Kiln shelves and their posts. */
final class ShelfReader {
    private ShelfReader() {}

    static Shelf shelf(Fields f) {
        String name = f.name();
        ShelfShape shape = f.needWord("shape", ShelfShape.class);
        boolean any = shape == null;
        boolean round = shape == ShelfShape.ROUND || shape == ShelfShape.HALF;
        boolean polygon = shape == ShelfShape.POLYGON;
        boolean rectangle = shape == ShelfShape.RECTANGLE;
        Integer sides = own(f, "sides", any || polygon, shape) ? f.integer("sides", 4, 64) : null;
        Quantity diameter = length(f, "diameter", any || round, shape);
        Quantity flats = length(f, "acrossFlats", any || polygon, shape);
        Quantity width = length(f, "width", any || rectangle, shape);
        Quantity depth = length(f, "depth", any || rectangle, shape);
        Quantity turn = f.quantity("turn", Kind.ANGLE, Range.ANY);
        Quantity height = f.quantity("height", Kind.LENGTH, Range.DISTANCE);
        Quantity thickness = f.quantity("thickness", Kind.LENGTH, Range.THICKNESS);
        Place at = f.place("at");
        List<Place> posts = f.list("posts", (v, p) -> Values.place(v, p, f.faults()));
        Quantity postSize = f.quantity("postSize", Kind.LENGTH, Range.THICKNESS);
        return new Shelf(
                name, shape, diameter, sides, flats, width, depth, turn, height, thickness, at, posts, postSize);
    }

    private static Quantity length(Fields f, String name, boolean known, ShelfShape shape) {
        return own(f, name, known, shape) ? f.quantity(name, Kind.LENGTH, Range.SIZE) : null;
    }

    private static boolean own(Fields f, String name, boolean known, ShelfShape shape) {
        if (!known) {
            f.refuse(name, "is no measure of a " + shape.id() + " shelf.");
        }
        return known;
    }
}
