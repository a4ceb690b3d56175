package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** The widest circle that lies in an outline. */
final class WidestCircle {
    /** The radius found falls short of the true one by no more than this, mm. */
    static final double CLOSE_MM = 0.02;

    private WidestCircle() {}

    /** Its radius, mm. */
    static double radius(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i <= outline.size(); i++) {
            ring.add(new Coordinate(outline.corner(i).x(), outline.corner(i).y()));
        }
        return new MaximumInscribedCircle(
                        new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new)), CLOSE_MM)
                .getRadiusLine()
                .getLength();
    }
}
