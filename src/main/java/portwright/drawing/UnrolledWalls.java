package portwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import portwright.check.Finding;
import portwright.geometry.Face;
import portwright.geometry.FittingShape;
import portwright.geometry.GrooveSolid;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.model.ElementRun;
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

    /** Paints all that stays as it is while one hole moves; null for none. */
    public void under(Pen pen, Box window, String moving) {
        for (int i = 0; i < painters.size(); i++) {
            Box own = own(i, window);
            if (own.width() <= 0) {
                continue;
            }
            double dx = middles.get(i);
            painters.get(i).under(new ShiftedPen(pen, dx, 0), own, moving, List.of());
        }
        boolean words = pen.flavour() == Flavour.SCREEN && bounds().width() > pen.size(0, 330);
        bare(pen, window, words);
        headings(pen, window);
        if (words) {
            elements(pen);
            fittings(pen, window);
        }
    }

    /** Names the panels over the walls, all in one way: by number and side; else so where the side is one word; else by number; in no room at all, not. */
    private void headings(Pen pen, Box window) {
        List<UnaryOperator<String>> ways =
                List.of(n -> n, n -> n.indexOf(' ') == n.lastIndexOf(' ') ? n : number(n), n -> number(n));
        for (UnaryOperator<String> way : ways) {
            List<List<String>> words = kiln.panels().stream()
                    .map(p -> lines(pen, p, way.apply(p.number() + " " + p.side())))
                    .toList();
            if (words.stream().noneMatch(List::isEmpty)) {
                kiln.panels().stream()
                        .filter(p -> own(p.number() - 1, window).width() > 0)
                        .forEach(p -> heading(pen, p, words.get(p.number() - 1)));
                return;
            }
        }
    }

    private static String number(String named) {
        return named.substring(0, named.indexOf(' '));
    }

    /** A panel's name in one line over it, or in two; nothing where neither fits. */
    private List<String> lines(Pen pen, Panel panel, String named) {
        double room = Box.around(painters.get(panel.number() - 1).rim()).width() - pen.size(1, 5);
        int cut = named.lastIndexOf(' ');
        List<List<String>> ways = cut == named.indexOf(' ')
                ? List.of(List.of(named))
                : List.of(List.of(named), List.of(named.substring(0, cut), named.substring(cut + 1)));
        return ways.stream()
                .filter(w -> w.stream().allMatch(l -> pen.textWidth(l, TextStyle.LABEL_BOLD) < room))
                .findFirst()
                .orElse(List.of());
    }

    private void heading(Pen pen, Panel panel, List<String> lines) {
        double low = Box.around(painters.get(panel.number() - 1).rim()).maxY() + pen.size(2, 6);
        double step = pen.textSize(TextStyle.LABEL_BOLD) * Words.LEADING;
        for (int i = 0; i < lines.size(); i++) {
            Pt at = new Pt(middle(panel.number()), low + (lines.size() - 1 - i) * step);
            pen.text(lines.get(i), at, Pen.Align.CENTRE, 0, TextStyle.LABEL_BOLD);
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
        Map<String, Double> heights = new LinkedHashMap<>();
        for (GrooveSolid g : kiln.grooves()) {
            if (g instanceof GrooveSolid.OnWall w) {
                heights.putIfAbsent(w.name(), (w.bottom() + w.top()) / 2);
            }
        }
        bare().forEach(e -> heights.put(e.name(), e.height().mm()));
        for (Map.Entry<String, Double> e :
                heights.entrySet().stream().sorted(Map.Entry.comparingByValue()).toList()) {
            double y = e.getValue() - step / 3;
            if (y - last >= step) {
                pen.text(e.getKey(), new Pt(left, y), Pen.Align.RIGHT, 0, TextStyle.LABEL);
                last = y;
            }
        }
    }

    /** Elements of the wall whose height is known and whose groove is not. */
    private List<ElementRun> bare() {
        List<ElementRun> all = kiln.design().kiln().elements();
        return all == null
                ? List.of()
                : all.stream()
                        .filter(e -> e.on() == On.WALL && e.height() != null)
                        .filter(e -> e.groove() == null
                                || e.groove().height() == null
                                || e.groove().depth() == null)
                        .toList();
    }

    /** A dashed line for each element whose groove is not known yet, with what it lacks. */
    private void bare(Pen pen, Box window, boolean words) {
        for (ElementRun e : bare()) {
            boolean said = !words;
            for (Panel p : kiln.panels()) {
                if (e.panels() != null && !e.panels().contains(p.number())
                        || own(p.number() - 1, window).width() <= 0) {
                    continue;
                }
                Box rim = Box.around(painters.get(p.number() - 1).rim());
                double dx = middle(p.number());
                double y = e.height().mm();
                pen.line(new Pt(rim.minX() + dx, y), new Pt(rim.maxX() + dx, y), LineStyle.HIDDEN, Ink.EMBER);
                if (!said) {
                    double high = pen.textSize(TextStyle.LABEL);
                    double low = y + high > rim.maxY() ? y - high : y + pen.size(1, 4);
                    Pt at = new Pt(rim.minX() + dx + pen.size(2, 6), low);
                    pen.text(
                            e.name() + ": groove not typed yet",
                            at,
                            Pen.Align.LEFT,
                            0,
                            TextStyle.LABEL.withInk(Ink.EMBER));
                    said = true;
                }
            }
        }
    }
}
