package portwright.app.doc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.check.Severity;
import portwright.file.DesignText;
import portwright.geometry.Circle;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.On;
import portwright.model.UnitSystem;

/** Where a new port begins: at a round place with much brick round it that raises no stop, if there is one. Lengths in mm. */
public final class FreePlace {
    /** More brick than this counts as no better. */
    private static final double PLENTY = 75;

    private static final double BUCKET = 2;
    private static final int TRIES = 6;
    private static final double APART = 30;

    private final Document doc;
    private final KilnGeometry kiln;
    private final boolean inch;
    private final String role;
    private final On on;
    private final double radius;

    /** A place; panel 0 in floor and lid. */
    public record Spot(int panel, Pt at) {}

    private record Candidate(Spot spot, double room, double off) {}

    private FreePlace(Document doc, String role, On on, double diameterMm) {
        this.doc = doc;
        this.kiln = doc.shapes().geometry();
        this.inch = doc.design().units() == UnitSystem.INCH;
        this.role = role;
        this.on = on;
        this.radius = diameterMm / 2;
    }

    /** Adds a port at the best place found. */
    public static DesignText add(Document doc, String role, On on, String name) {
        FreePlace f = new FreePlace(doc, role, on, Moves.newDiameterMm(doc.text(), role));
        return f.with(f.find(name), name);
    }

    private DesignText with(Spot s, String name) {
        return Moves.addPort(doc.text(), role, on.id(), s.panel(), s.at(), name);
    }

    private Spot find(String name) {
        List<Candidate> all = candidates(inch ? 12.7 : 10);
        List<Spot> tried = new ArrayList<>();
        for (Candidate c : all) {
            if (tried.size() == TRIES) {
                break;
            }
            if (tried.stream().noneMatch(t -> near(t, c.spot()))) {
                tried.add(c.spot());
                if (doc.worst(with(c.spot(), name), name) != Severity.STOP) {
                    return c.spot();
                }
            }
        }
        return !all.isEmpty()
                ? all.get(0).spot()
                : new Spot(on == On.WALL ? 1 : 0, new Pt(0, on == On.WALL ? kiln.height() / 4 : 0));
    }

    private static boolean near(Spot a, Spot b) {
        return a.panel() == b.panel() && a.at().distance(b.at()) < APART;
    }

    /** Round places with brick round them, those with the most first; among alike those nearest to where such a hole usually goes. */
    private List<Candidate> candidates(double step) {
        List<Candidate> out = new ArrayList<>();
        if (on == On.WALL) {
            for (Panel p : kiln.panels()) {
                grid(out, p.number(), p.width() / 2, 0, kiln.height(), new Pt(0, kiln.height() / 4), step);
            }
        } else {
            double reach = kiln.inner().points().stream()
                    .mapToDouble(q -> Math.hypot(q.x(), q.y()))
                    .max()
                    .orElse(0);
            grid(out, 0, reach, -reach, reach, new Pt(0, 0), step);
        }
        out.sort(Comparator.comparingDouble((Candidate c) -> -Math.floor(Math.min(c.room(), PLENTY) / BUCKET))
                .thenComparingDouble(Candidate::off));
        return out;
    }

    private void grid(List<Candidate> out, int panel, double side, double low, double high, Pt usual, double step) {
        Face face = new Face(on, panel, true);
        long across = (long) (side / step);
        for (long i = -across; i <= across; i++) {
            for (long j = (long) Math.ceil(low / step); j * step <= high; j++) {
                Pt at = new Pt(i * step, j * step);
                double room = room(face, at);
                if (room > 0) {
                    out.add(new Candidate(new Spot(panel, at), room, at.distance(usual)));
                }
            }
        }
    }

    /** Least brick or air between the hole's rim and whatever else there is in its part. */
    private double room(Face face, Pt at) {
        double room = edge(face, at) - radius;
        for (var h : kiln.holes()) {
            if (h.face().samePart(face)) {
                room = Math.min(room, h.centre().distance(at) - h.diameter() / 2 - radius);
            }
        }
        for (var t : kiln.tails()) {
            if (t.face().samePart(face)) {
                room = Math.min(
                        room, t.circle().centre().distance(at) - t.circle().radius() - radius);
            }
        }
        for (var f : kiln.fittings()) {
            if (f.face().samePart(face)) {
                room = Math.min(room, f.shape().distance(at) - radius);
            }
        }
        for (var g : kiln.grooves()) {
            if (room > 0 && g.face().samePart(face)) {
                room = Math.min(room, g.footprint().distance(at) - radius);
            }
        }
        for (var s : on == On.FLOOR ? kiln.shelves() : List.<ShelfPlate>of()) {
            for (var post : s.posts() == null ? List.<Circle>of() : s.posts()) {
                room = Math.min(room, post.centre().distance(at) - post.radius() - radius);
            }
        }
        return room;
    }

    private double edge(Face face, Pt at) {
        if (on != On.WALL) {
            return kiln.inner().depth(at);
        }
        double half = kiln.panel(face.panel()).width() / 2;
        return Math.min(half - Math.abs(at.x()), Math.min(at.y(), kiln.height() - at.y()));
    }
}
