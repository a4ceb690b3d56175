package portwright.geometry;

import java.util.List;
import portwright.model.Shelf;

/**
 * A shelf with its posts.
 *
 * @param bottom underside, mm above the hot face of the floor
 * @param top upper side, mm; equal to {@code bottom} when the thickness is not given
 * @param posts each as the circle round its square; null when the posts are not given
 */
public record ShelfPlate(Shelf shelf, Shape shape, double bottom, double top, List<Circle> posts) {
    public ShelfPlate {
        posts = posts == null ? null : List.copyOf(posts);
    }

    public String name() {
        return shelf.name();
    }

    /** Name of post i (from 0) in findings. */
    public String postName(int i) {
        return shelf.name() + " post " + (i + 1);
    }
}
