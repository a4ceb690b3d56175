package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.List;
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
    /** So far a hole in floor or lid goes on where another clearance forbids a place that contents the rule, mm. */
    private static final double STEP_MM = 3;

    /** A way off the axes must save this much to be worth saying, mm: one along an axis is easier to measure. */
    private static final double PLAIN_MM = 25.4 / 16;

    private static final int HALF_HOURS = 24;

    /** @param far from here on, mm, the move is told by other words */
    private record Way(double dx, double dy, String words, double far, String farWords, double costsMm) {
        Way(double dx, double dy, String words) {
            this(dx, dy, words, Double.POSITIVE_INFINITY, words, 0);
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
                        + " gives that room and keeps clear of all else: choose another "
                        + (hole.face().on() == On.WALL ? "panel" : "place")
                        + " or a smaller hole."
                : "M" + move.substring(1) + ".";
    }

    /**
     * {@code move inlet B 17.0 mm (11/16 in) toward the centre} ({@code across} it where the hole passes it), or null when no move within the chamber (or the panel) helps, or, in a wall, only one onto a place that another clearance forbids: between rows of elements the way out of one is the way into the next; in floor and lid such a move is told with that. While a hand drags ({@link Limits#quick}) floor and lid are searched along the axes only, and other clearances there are not asked.
     *
     * @param lacks how far the hole has to be moved at least, mm; 0 where the rule is content
     */
    static String of(KilnGeometry kiln, Limits limits, Hole hole, ToDoubleFunction<Hole> lacks) {
        boolean wall = hole.face().on() == On.WALL;
        String move = shortest(kiln, limits, hole, lacks, wall || !limits.quick());
        if (move != null || wall || limits.quick()) {
            return move;
        }
        String crowded = shortest(kiln, limits, hole, lacks, false);
        return crowded == null ? null : crowded + ", though another clearance is too short there";
    }

    /** @param clear whether the move has to keep clear of all else, too */
    private static String shortest(
            KilnGeometry kiln, Limits limits, Hole hole, ToDoubleFunction<Hole> lacks, boolean clear) {
        ToDoubleFunction<Hole> all = h -> {
            double own = lacks.applyAsDouble(h);
            double more = own > 0 || !clear ? own : Blocked.lacks(kiln, limits, h);
            boolean on = clear && more == 0 && h.face().on() != On.WALL && Blocked.at(kiln, limits, h);
            return on ? STEP_MM : more;
        };
        double best = FAR_MM;
        Way found = null;
        for (Way way : ways(kiln, hole, clear)) {
            double enough = found == null ? FAR_MM : best + found.costsMm() - way.costsMm();
            double by = least(kiln, hole, way, all, enough);
            if (by < enough && !(clear && Blocked.at(kiln, limits, moved(hole, way, by)))) {
                best = by;
                found = way;
            }
        }
        return found == null ? null : "move " + hole.name() + " " + Geo.both(best) + " " + found.told(best);
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

    private static List<Way> ways(KilnGeometry kiln, Hole h, boolean all) {
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
            out.add(new Way(dx, dy, "toward the centre", off, "across the centre", 0));
            out.add(new Way(-dx, -dy, "away from the centre"));
        }
        out.add(new Way(1, 0, "to the right, seen from above"));
        out.add(new Way(-1, 0, "to the left, seen from above"));
        out.add(new Way(0, 1, "to the back"));
        out.add(new Way(0, -1, "to the front"));
        for (int half = 0; all && half < HALF_HOURS; half++) {
            if (half % 6 != 0) {
                double bearing = half * 2 * Math.PI / HALF_HOURS;
                String words = "toward " + clock(half) + ", seen from above with 12 o'clock at the back";
                out.add(new Way(
                        Math.sin(bearing), Math.cos(bearing), words, Double.POSITIVE_INFINITY, words, PLAIN_MM));
            }
        }
        return out;
    }

    /** {@code 2 o'clock} or {@code half past 2}. */
    private static String clock(int half) {
        int hour = half < 2 ? 12 : half / 2;
        return half % 2 == 0 ? hour + " o'clock" : "half past " + hour;
    }
}
