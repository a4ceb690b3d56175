package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import portwright.model.ElementRun;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Tails;
import portwright.units.Quantity;

/** Grooves, coils and tails of the heating elements, and which fields are missing for them. */
final class ElementShapes {
    final List<GrooveSolid> grooves = new ArrayList<>();
    final List<CoilRun> coils = new ArrayList<>();
    final List<TailHole> tails = new ArrayList<>();
    final List<String> grooveLacks = new ArrayList<>();
    final List<String> coilLacks = new ArrayList<>();

    ElementShapes(List<ElementRun> elements, List<Panel> panels, double height) {
        if (elements == null) {
            grooveLacks.add("kiln.elements");
            coilLacks.add("kiln.elements");
            return;
        }
        for (int i = 0; i < elements.size(); i++) {
            ElementRun e = elements.get(i);
            String field = "kiln.elements[" + i + "]";
            if (e.on() == On.WALL) {
                onWall(e, field, panels);
            } else {
                onSlab(e, field, height);
            }
            if (e.tails() != null) {
                String lacks = lacks(e.tails());
                if (lacks != null) {
                    grooveLacks.add(field + ".tails." + lacks);
                } else {
                    Face face = new Face(On.WALL, e.tails().panel(), true);
                    tails.add(new TailHole(
                            e.name(),
                            face,
                            new Circle(
                                    PlanOutlines.pt(e.tails().at()),
                                    e.tails().diameter().mm() / 2)));
                }
            }
        }
    }

    /** What of the tails is not measured yet; null for nothing. */
    private static String lacks(Tails t) {
        return t.panel() == null ? "panel" : t.at() == null ? "at" : t.diameter() == null ? "diameter" : null;
    }

    private void onWall(ElementRun e, String field, List<Panel> panels) {
        Groove g = e.groove();
        if (e.height() == null) {
            grooveLacks.add(field + ".height");
            coilLacks.add(field + ".height");
            return;
        }
        boolean shaped = g != null && g.height() != null && g.depth() != null;
        double depth = g == null || g.depth() == null ? 0 : g.depth().mm();
        double slope = g == null ? 0 : PlanOutlines.angle(g.slope());
        double drop = depth * Math.tan(slope);
        double v = e.height().mm();
        List<Integer> numbers = new ArrayList<>();
        List<Segment3> pieces = new ArrayList<>();
        for (Panel p : panels) {
            if (e.panels() != null && !e.panels().contains(p.number())) {
                continue;
            }
            if (shaped) {
                double h = g.height().mm();
                grooves.add(new GrooveSolid.OnWall(e.name(), p, v - h / 2, v + h / 2, depth, drop));
            }
            double w = depth / 2;
            double middle = v - drop / 4;
            numbers.add(p.number());
            pieces.add(new Segment3(p.point(p.uMin(w), middle, w), p.point(p.uMax(w), middle, w)));
        }
        if (!shaped) {
            grooveLacks.add(field + (g == null ? ".groove" : g.height() == null ? ".groove.height" : ".groove.depth"));
        }
        coil(e, field, numbers, pieces, shaped ? Math.min(g.height().mm(), depth) : 0);
    }

    private void onSlab(ElementRun e, String field, double height) {
        Groove g = e.groove();
        if (e.path() == null || e.path().isEmpty()) {
            grooveLacks.add(field + ".path");
            coilLacks.add(field + ".path");
            return;
        }
        List<Pt> path = e.path().stream().map(PlanOutlines::pt).toList();
        Quantity depthGiven = g == null ? null : g.depth();
        boolean shaped = g != null && g.width() != null && depthGiven != null;
        if (shaped) {
            grooves.add(new GrooveSolid.OnSlab(
                    e.name(), e.on(), new Shape.Strip(path, g.width().mm() / 2), depthGiven.mm()));
        } else {
            grooveLacks.add(field + (g == null ? ".groove" : g.width() == null ? ".groove.width" : ".groove.depth"));
        }
        double depth = depthGiven == null ? 0 : depthGiven.mm();
        double z = e.on() == On.FLOOR ? -depth / 2 : height + depth / 2;
        List<Segment3> pieces = new Shape.Strip(path, 0)
                .pieces().stream()
                        .map(s -> new Segment3(new Pt3(s.a().x(), s.a().y(), z), new Pt3(s.b().x(), s.b().y(), z)))
                        .toList();
        coil(e, field, List.of(), pieces, shaped ? Math.min(g.width().mm(), depth) : 0);
    }

    /** @param room the lesser of the groove's width and depth, mm; 0 where one is not known */
    private void coil(ElementRun e, String field, List<Integer> panels, List<Segment3> pieces, double room) {
        if (e.coil() == null) {
            coilLacks.add(field + ".coil");
        } else {
            coils.add(new CoilRun(
                    e.name(),
                    e.on(),
                    panels,
                    pieces,
                    e.coil().mm() / 2,
                    e.coil().mm() > room));
        }
    }
}
