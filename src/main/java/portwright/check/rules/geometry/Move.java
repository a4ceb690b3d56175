package portwright.check.rules.geometry;

import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;

/** Says which way a hole has to go. */
final class Move {
    private Move() {}

    /** "Move inlet B 17.0 mm (11/16 in) toward the centre." for a hole that has to get away from a point by a distance. */
    static String away(KilnGeometry kiln, Hole hole, Pt from, double by) {
        return away(kiln, hole, from, false, by);
    }

    /** The same; a hole whose centre lies within the obstacle leaves it over the nearest point of its edge. */
    static String away(KilnGeometry kiln, Hole hole, Pt from, boolean within, double by) {
        double out = within ? -1 : 1;
        double dx = out * (hole.centre().x() - from.x());
        double dy = out * (hole.centre().y() - from.y());
        return "Move " + hole.name() + " " + Geo.both(by) + " " + direction(kiln, hole, dx, dy) + ".";
    }

    private static String direction(KilnGeometry kiln, Hole hole, double dx, double dy) {
        if (hole.face().on() == On.WALL) {
            return Math.abs(dx) > Math.abs(dy)
                    ? (dx > 0 ? "to the right, seen from inside" : "to the left, seen from inside")
                    : dy > 0 ? "up" : "down";
        }
        Pt c = kiln.centre();
        double cx = c.x() - hole.centre().x();
        double cy = c.y() - hole.centre().y();
        double along = Math.hypot(cx, cy) * Math.hypot(dx, dy);
        double cos = along == 0 ? 0 : (cx * dx + cy * dy) / along;
        if (cos > 0.8) {
            return "toward the centre";
        }
        if (cos < -0.8) {
            return "away from the centre";
        }
        return Math.abs(dx) > Math.abs(dy)
                ? (dx > 0 ? "to the right" : "to the left")
                : dy > 0 ? "to the back" : "to the front";
    }
}
