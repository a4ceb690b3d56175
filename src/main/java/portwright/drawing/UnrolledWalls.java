package portwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import portwright.check.Finding;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.model.On;

/** All wall panels side by side: seen from inside they follow one another to the right, seen from outside to the left. */
public final class UnrolledWalls {
    private static final double RIM_ROOM_MM = 8;

    private final KilnGeometry kiln;
    private final List<PartPainter> painters = new ArrayList<>();
    private final List<Double> middles = new ArrayList<>();

    /** @param hot seen from inside, else from outside */
    public UnrolledWalls(KilnGeometry kiln, boolean hot, List<Finding> findings, PartLook look) {
        this.kiln = kiln;
        double x = 0;
        for (Panel p : kiln.panels()) {
            double width = hot ? p.width() : p.uMax(p.thickness()) - p.uMin(p.thickness());
            painters.add(new PartPainter(kiln, new Face(On.WALL, p.number(), hot), findings, look));
            middles.add((hot ? 1 : -1) * (x + width / 2));
            x += width;
        }
    }

    /** Where the middle of a panel (u = 0) lies in the picture, mm. */
    public double middle(int panel) {
        return middles.get(panel - 1);
    }

    /** What the picture needs. */
    public Box bounds() {
        Box all = null;
        for (int i = 0; i < painters.size(); i++) {
            Box b = painters.get(i).bounds();
            Box moved = new Box(b.minX() + middles.get(i), b.minY(), b.maxX() + middles.get(i), b.maxY());
            all = all == null ? moved : all.union(moved);
        }
        return all;
    }

    /** Paints what lies in the window. */
    public void paint(Pen pen, Box window) {
        under(pen, window, null);
        over(pen, window, null);
    }

    /** Paints all that stays as it is while one hole moves; null for none. */
    public void under(Pen pen, Box window, String moving) {
        for (int i = 0; i < painters.size(); i++) {
            Box own = own(i, window);
            if (own.width() <= 0) {
                continue;
            }
            double dx = middles.get(i);
            painters.get(i).under(new ShiftedPen(pen, dx, 0), own, moving, List.of());
            Panel panel = kiln.panels().get(i);
            String full = panel.number() + " " + panel.side();
            boolean fits = pen.textWidth(full, TextStyle.LABEL_BOLD) + pen.size(2, 8)
                    < Box.around(painters.get(i).rim()).width();
            double low = Box.around(painters.get(i).rim()).maxY() + pen.size(2, 6);
            int cut = full.lastIndexOf(' ');
            boolean two = pen.flavour() == Flavour.SCREEN
                    && !fits
                    && full.indexOf(' ') < cut
                    && pen.textWidth(full.substring(0, cut), TextStyle.LABEL_BOLD) + pen.size(2, 8)
                            < Box.around(painters.get(i).rim()).width();
            if (two) {
                name(pen, full.substring(cut + 1), dx, low);
                name(pen, full.substring(0, cut), dx, low + pen.textSize(TextStyle.LABEL_BOLD) * Words.LEADING);
            } else {
                String words = fits ? full : String.valueOf(panel.number());
                if (fits
                        || pen.textWidth(words, TextStyle.LABEL_BOLD) + pen.size(0, 4)
                                < Box.around(painters.get(i).rim()).width()) {
                    name(pen, words, dx, low);
                }
            }
        }
        if (pen.flavour() == Flavour.SCREEN && bounds().width() > pen.size(0, 330)) {
            elements(pen);
            fittings(pen, window);
        }
    }

    /** Names what sits in and on the walls; the words may run on over the next panel. */
    private void fittings(Pen pen, Box window) {
        Labels labels = new Labels(pen, window);
        for (PartPainter p : painters) {
            p.sawCircles()
                    .forEach(c -> labels.keepFree(shifted(
                            p,
                            new Box(
                                    c.centre().x() - c.radius(),
                                    c.centre().y() - c.radius(),
                                    c.centre().x() + c.radius(),
                                    c.centre().y() + c.radius()))));
        }
        for (FittingShape f : kiln.fittings()) {
            if (f.face().on() != On.WALL) {
                continue;
            }
            PartPainter p = painters.get(f.face().panel() - 1);
            Box b = shifted(p, ShapeLines.box(f.shape(), p::view));
            String words = f.name() + (f.outside() && p.face().hot() ? " outside" : "");
            List<Labels.Spot> spots = labels.near(b);
            boolean inside = pen.textWidth(words, TextStyle.LABEL) < b.width();
            labels.place(words, inside ? spots : spots.subList(1, spots.size()), TextStyle.LABEL);
        }
    }

    private Box shifted(PartPainter p, Box b) {
        double dx = middle(p.face().panel());
        return new Box(b.minX() + dx, b.minY(), b.maxX() + dx, b.maxY());
    }

    private static void name(Pen pen, String words, double x, double y) {
        pen.text(words, new Pt(x, y), Pen.Align.CENTRE, 0, TextStyle.LABEL_BOLD);
    }

    /** Paints what {@link #under} leaves out. */
    public void over(Pen pen, Box window, String moving) {
        for (int i = 0; i < painters.size(); i++) {
            Box own = own(i, window);
            if (own.width() > 0) {
                painters.get(i).over(new ShiftedPen(pen, middles.get(i), 0), own, moving, List.of());
            }
        }
    }

    /** The part of a window that shows a panel, in the panel's frame; its width is not above 0 when the panel lies outside. */
    private Box own(int i, Box window) {
        double dx = middles.get(i);
        Box rim = Box.around(painters.get(i).rim());
        return new Box(
                Math.max(rim.minX(), window.minX() - dx),
                window.minY(),
                Math.min(rim.maxX(), window.maxX() - dx),
                window.maxY());
    }

    /** Names the elements once, at the left end of the walls, each at its height. */
    private void elements(Pen pen) {
        double left = bounds().minX() + RIM_ROOM_MM - pen.size(2, 8);
        double step = pen.textSize(TextStyle.LABEL);
        double last = Double.NEGATIVE_INFINITY;
        List<GrooveSolid.OnWall> rows = kiln.grooves().stream()
                .filter(GrooveSolid.OnWall.class::isInstance)
                .map(GrooveSolid.OnWall.class::cast)
                .sorted(Comparator.comparingDouble(GrooveSolid.OnWall::bottom))
                .toList();
        Set<String> said = new HashSet<>();
        for (GrooveSolid.OnWall g : rows) {
            double y = (g.bottom() + g.top()) / 2 - step / 3;
            if (y - last >= step && said.add(g.name())) {
                pen.text(g.name(), new Pt(left, y), Pen.Align.RIGHT, 0, TextStyle.LABEL);
                last = y;
            }
        }
    }
}
