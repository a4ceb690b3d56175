package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import portwright.check.Limits;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;

/** Finds the shortest move of a hole, of those that can be said in a few words, after which a rule is content. */
final class Move {
    /** Farthest move that is worth saying, mm. */
    private static final double FAR_MM = 1000;

    private static final int TRIES = 200;

    /** @param far from here on, mm, the move is told by other words */
    private record Way(double dx, double dy, String words, double far, String farWords) {
        Way(double dx, double dy, String words) {
            this(dx, dy, words, Double.POSITIVE_INFINITY, words);
        }

        String told(double by) {
            return by > far ? farWords : words;
        }
    }

    private Move() {}

    /** The move after which there is so much room, or null when there is none. The room changes by no more than the hole moves. */
    static String forRoom(KilnGeometry kiln, Limits limits, Hole hole, double wanted, ToDoubleFunction<Hole> room) {
        return of(kiln, limits, hole, h -> {
            double left = room.applyAsDouble(h);
            return Geo.under(left, wanted) ? wanted - left : 0;
        });
    }

    /** The same as a sentence: says that another way is needed when there is no such move. */
    static String sentence(KilnGeometry kiln, Limits limits, Hole hole, double wanted, ToDoubleFunction<Hole> room) {
        String move = forRoom(kiln, limits, hole, wanted, room);
        return move == null
                ? "No straight move of " + hole.name() + " within the "
                        + (hole.face().on() == On.WALL ? "panel" : "chamber")
                        + (hole.face().on() == On.WALL
                                ? " gives that room and keeps clear of all else: choose another panel"
                                : " gives that room: choose another place")
                        + " or a smaller hole."
                : "M" + move.substring(1) + ".";
    }

    /**
     * {@code move inlet B 17.0 mm (11/16 in) toward the centre} ({@code across} it where the hole passes it), or null when no move within the chamber (or the panel) helps, or, in a wall, only one onto a place that another clearance forbids: between rows of elements the way out of one is the way into the next.
     *
     * @param lacks how far the hole has to be moved at least, mm; 0 where the rule is content
     */
    static String of(KilnGeometry kiln, Limits limits, Hole hole, ToDoubleFunction<Hole> lacks) {
        boolean wall = hole.face().on() == On.WALL;
        ToDoubleFunction<Hole> all = h -> {
            double own = lacks.applyAsDouble(h);
            return own > 0 || !wall ? own : Blocked.lacks(kiln, limits, h);
        };
        TreeMap<Double, Way> found = new TreeMap<>();
        for (Way way : ways(kiln, hole)) {
            double enough = wall || found.isEmpty() ? FAR_MM : Math.min(FAR_MM, found.firstKey());
            found.putIfAbsent(least(kiln, hole, way, all, enough), way);
        }
        for (Map.Entry<Double, Way> e : found.entrySet()) {
            double by = e.getKey();
            if (by < FAR_MM && !(wall && Blocked.at(kiln, limits, moved(hole, e.getValue(), by)))) {
                return "move " + hole.name() + " " + Geo.both(by) + " "
                        + e.getValue().told(by);
            }
        }
        return null;
    }

    /** Least move one way, told in whole tenths of a millimetre, with which the rule is content in millimetres and in sixteenths of an inch. */
    private static double least(KilnGeometry kiln, Hole hole, Way way, ToDoubleFunction<Hole> lacks, double enough) {
        double by = 0;
        boolean wasInside = false;
        for (int i = 0; i < TRIES && by < enough; i++) {
            double told = Geo.tenths(by);
            boolean isInside = inside(kiln, moved(hole, way, told));
            if (wasInside && !isInside) {
                break;
            }
            wasInside = isInside;
            double inInches = Geo.sixteenths(told) / 16.0 * 25.4;
            double more = lacks.applyAsDouble(moved(hole, way, told));
            if (more == 0) {
                more = lacks.applyAsDouble(moved(hole, way, inInches));
                if (more == 0) {
                    return isInside && inside(kiln, moved(hole, way, inInches)) ? told : Double.POSITIVE_INFINITY;
                }
            }
            by = Math.max(by + more, told + 1e-3);
        }
        return Double.POSITIVE_INFINITY;
    }

    private static Hole moved(Hole h, Way way, double by) {
        return h.at(h.centre().plus(way.dx() * by, way.dy() * by));
    }

    private static boolean inside(KilnGeometry kiln, Hole h) {
        double room = h.face().on() == On.WALL
                ? PanelEdges.distance(kiln, h)
                : kiln.inner().depth(h.centre());
        return !Geo.under(room, h.drilledRadius());
    }

    private static List<Way> ways(KilnGeometry kiln, Hole h) {
        if (h.face().on() == On.WALL) {
            return List.of(
                    new Way(0, 1, "up"),
                    new Way(0, -1, "down"),
                    new Way(1, 0, "to the right, seen from inside"),
                    new Way(-1, 0, "to the left, seen from inside"));
        }
        List<Way> out = new ArrayList<>();
        Pt c = kiln.centre();
        double off = c.distance(h.centre());
        if (off > 1) {
            double dx = (c.x() - h.centre().x()) / off;
            double dy = (c.y() - h.centre().y()) / off;
            out.add(new Way(dx, dy, "toward the centre", off, "across the centre"));
            out.add(new Way(-dx, -dy, "away from the centre"));
        }
        out.add(new Way(1, 0, "to the right, seen from above"));
        out.add(new Way(-1, 0, "to the left, seen from above"));
        out.add(new Way(0, 1, "to the back"));
        out.add(new Way(0, -1, "to the front"));
        return out;
    }
}
