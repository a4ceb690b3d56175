package portwright.geometry;

import java.util.List;

/** A closed outline, corners in clockwise order seen from above (unmirrored), the first not repeated; mm. */
public record Outline(List<Pt> points) {
    public Outline {
        points = List.copyOf(points);
    }
}
