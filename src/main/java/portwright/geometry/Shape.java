package portwright.geometry;

import java.util.List;

/** A plain shape in a part's plan. Distances are those of the true shape, never of a polygon that stands for a circle. */
public sealed interface Shape {
    /** Distance from p to the line round the shape, positive outside and negative inside, mm. */
    double distance(Pt p);

    /** The point of the line round the shape that is nearest to p. */
    Pt nearest(Pt p);

    /** Area, mm²; 0 for a line. */
    double area();

    /** Whether p lies inside or on the line. */
    default boolean contains(Pt p) {
        return distance(p) <= 0;
    }

    /** A disc. */
    record Disc(Circle circle) implements Shape {
        @Override
        public double distance(Pt p) {
            return circle.centre().distance(p) - circle.radius();
        }

        @Override
        public Pt nearest(Pt p) {
            return circle.centre().towards(p, circle.radius());
        }

        @Override
        public double area() {
            return Math.PI * circle.radius() * circle.radius();
        }
    }

    /** A polygon. */
    record Poly(Outline outline) implements Shape {
        @Override
        public double distance(Pt p) {
            return -outline.depth(p);
        }

        @Override
        public Pt nearest(Pt p) {
            return outline.nearest(p);
        }

        @Override
        public double area() {
            return outline.area();
        }
    }

    /**
     * Half a disc.
     *
     * @param centre middle of the straight side
     * @param radius of the round side, mm
     * @param bearing where the round side looks, rad clockwise from the back
     */
    record HalfDisc(Pt centre, double radius, double bearing) implements Shape {
        /** The straight side, its left end first as seen towards the round side. */
        public Segment straight() {
            double c = Math.cos(bearing) * radius;
            double s = Math.sin(bearing) * radius;
            return new Segment(centre.plus(-c, s), centre.plus(c, -s));
        }

        private boolean ahead(Pt p) {
            return (p.x() - centre.x()) * Math.sin(bearing) + (p.y() - centre.y()) * Math.cos(bearing) >= 0;
        }

        @Override
        public double distance(Pt p) {
            double flat = straight().distance(p);
            double round = centre.distance(p) - radius;
            if (!ahead(p)) {
                return flat;
            }
            return round >= 0 ? round : -Math.min(flat, -round);
        }

        @Override
        public Pt nearest(Pt p) {
            double flat = straight().distance(p);
            return ahead(p) && Math.abs(centre.distance(p) - radius) <= flat
                    ? centre.towards(p, radius)
                    : straight().nearest(p);
        }

        @Override
        public double area() {
            return Math.PI * radius * radius / 2;
        }
    }

    /** A path widened to both sides, with round ends; a plain line when {@code halfWidth} is 0. */
    record Strip(List<Pt> path, double halfWidth) implements Shape {
        public Strip {
            path = List.copyOf(path);
        }

        /** Straight pieces of the middle line. */
        public List<Segment> pieces() {
            if (path.size() == 1) {
                return List.of(new Segment(path.get(0), path.get(0)));
            }
            List<Segment> out = new java.util.ArrayList<>();
            for (int i = 0; i + 1 < path.size(); i++) {
                out.add(new Segment(path.get(i), path.get(i + 1)));
            }
            return out;
        }

        private Segment closest(Pt p) {
            Segment best = null;
            for (Segment s : pieces()) {
                if (best == null || s.distance(p) < best.distance(p)) {
                    best = s;
                }
            }
            return best;
        }

        @Override
        public double distance(Pt p) {
            return closest(p).distance(p) - halfWidth;
        }

        @Override
        public Pt nearest(Pt p) {
            return closest(p).nearest(p).towards(p, halfWidth);
        }

        @Override
        public double area() {
            double length = pieces().stream().mapToDouble(Segment::length).sum();
            return length * 2 * halfWidth + Math.PI * halfWidth * halfWidth;
        }
    }
}
