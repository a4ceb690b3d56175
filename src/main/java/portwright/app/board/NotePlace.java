package portwright.app.board;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import portwright.app.doc.Plot;
import portwright.app.paint.BoardLook;
import portwright.app.paint.Fonts;
import portwright.app.paint.RulePainter;
import portwright.app.paint.TextSizes;
import portwright.drawing.Box;
import portwright.geometry.Hole;
import portwright.geometry.Pt;

/** Where the box with the numbers of the chosen hole lies: beside the hole, off its neighbours and their names once the hand rests. */
final class NotePlace {
    private static final double KEEP_OUT_MM = 25;
    private static final double NAME_PX = 24;
    private static final double EDGE_PX = 10;
    /** From the ring to a box that stands clear of the hole's own name, px. */
    private static final double FAR_PX = 110;
    /** Between the box and a flag, px. */
    private static final double GAP_PX = 4;

    private NotePlace() {}

    /**
     * @param at the hole's centre, px
     * @param r its ring, px
     * @param size of the box, from 0, px
     * @param flags of stops, px: the box covers none where it need not
     */
    static Box of(Board board, Hole hole, Pt at, double r, Box size, List<Box> flags, Box window) {
        double w = size.maxX();
        double h = size.maxY();
        Box room = new Box(
                RulePainter.BREADTH + 8, RulePainter.BREADTH + 8, window.maxX() - EDGE_PX, window.maxY() - EDGE_PX);
        List<Box> spots = new ArrayList<>();
        for (double y : new double[] {at.y() - r - h - EDGE_PX, at.y() - h / 2, at.y() + r + EDGE_PX}) {
            for (double x : new double[] {
                at.x() + r + 30, at.x() - r - 30 - w, at.x() - w / 2, at.x() + r + FAR_PX, at.x() - r - FAR_PX - w
            }) {
                Box b = into(room, x, y, w, h);
                if (b.minX() > at.x() + r || b.maxX() < at.x() - r || b.minY() > at.y() + r || b.maxY() < at.y() - r) {
                    spots.add(b);
                }
            }
        }
        if (spots.isEmpty()) {
            return into(room, at.x() + r + 30, at.y() - h / 2, w, h);
        }
        List<Box> clear = spots.stream()
                .filter(b -> flags.stream().noneMatch(f -> f.grown(GAP_PX).touches(b)))
                .toList();
        List<Box> of = clear.isEmpty() ? spots : clear;
        if (board.marks().dragged != null) {
            return of.get(0);
        }
        List<Box> others = others(board, hole);
        return Collections.min(of, Comparator.comparingDouble(b -> covered(b, others)));
    }

    /** A box for words beside a line, off the names of the holes and the tapes as far as there is room. */
    static Box beside(Board board, Pt middle, double w, double h, Box window) {
        Box room = new Box(
                RulePainter.BREADTH + 8, RulePainter.BREADTH + 8, window.maxX() - EDGE_PX, window.maxY() - EDGE_PX);
        List<Box> others = others(board, null);
        others.addAll(BoardLook.taped(board.plot(), board.view(), window.maxX(), window.maxY()));
        List<Box> spots = new ArrayList<>();
        for (double dy : new double[] {-34, 8, -64, 38, -94, 68, -124, 98}) {
            for (double dx : new double[] {0, w / 2 + 16, -w / 2 - 16}) {
                spots.add(into(room, middle.x() + dx - w / 2, middle.y() + dy, w, h));
            }
        }
        return Collections.min(spots, Comparator.comparingDouble(b -> covered(b, others)));
    }

    /** Area of other boxes under one, px². */
    private static double covered(Box b, List<Box> others) {
        return others.stream()
                .mapToDouble(o -> Math.max(0, Math.min(b.maxX(), o.maxX()) - Math.max(b.minX(), o.minX()))
                        * Math.max(0, Math.min(b.maxY(), o.maxY()) - Math.max(b.minY(), o.minY())))
                .sum();
    }

    private static Box into(Box room, double x, double y, double w, double h) {
        double left = Math.max(room.minX(), Math.min(room.maxX() - w, x));
        double top = Math.max(room.minY(), Math.min(room.maxY() - h, y));
        return new Box(left, top, left + w, top + h);
    }

    /** The other holes in sight with their rings, and the names over all of them, px; all of them for no hole. */
    private static List<Box> others(Board board, Hole hole) {
        Plot plot = board.plot();
        List<Box> out = new ArrayList<>();
        for (Hole o : plot.kiln().holes()) {
            if (plot.shows(o.face())) {
                Pt c = plot.toPicture(o.face(), o.centre());
                double x = board.view().x(c.x());
                double y = board.view().y(c.y());
                double r = (o.drilled() / 2 + KEEP_OUT_MM) * board.view().scale();
                String name = o.name() + "  ⌀ " + o.port().diameter().typed();
                double half = Math.max(r, TextSizes.width(name, Fonts.bold(13)) / 2);
                boolean own = hole != null && o.name().equals(hole.name());
                out.add(new Box(x - half, y - r - NAME_PX, x + half, own ? y - r : y + r));
            }
        }
        return out;
    }
}
