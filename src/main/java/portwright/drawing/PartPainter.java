package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.check.Finding;
import portwright.check.Mark;
import portwright.check.Severity;
import portwright.geometry.Circle;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.WeakestSection;
import portwright.model.On;
import portwright.units.Format;

/**
 * Paints one face of one part. The picture's frame is the part's frame, mirrored where the face is seen from the other
 * side (x' = −x).
 */
public final class PartPainter {
    private static final double RIM_ROOM_MM = 8;

    private final KilnGeometry kiln;
    private final Face face;
    private final List<Finding> findings;
    private final PartLook look;
    private final List<HoleNote> holes;

    /** @param findings findings whose places are flagged on the drawing; may be empty */
    public PartPainter(KilnGeometry kiln, Face face, List<Finding> findings, PartLook look) {
        this.kiln = kiln;
        this.face = face;
        this.findings = List.copyOf(findings);
        this.look = look;
        this.holes = HoleNote.of(kiln).stream()
                .filter(n -> n.hole().face().samePart(face))
                .toList();
    }

    public Face face() {
        return face;
    }

    /** From the part's frame to the picture's. */
    public Pt view(Pt p) {
        return face.mirrored() ? p.mirrored() : p;
    }

    /** The part's rim in the picture. */
    public List<Pt> rim() {
        return partRim(kiln, face).stream().map(this::view).toList();
    }

    static List<Pt> partRim(KilnGeometry kiln, Face face) {
        if (face.on() != On.WALL) {
            return kiln.slab(face.on()).points();
        }
        Panel p = kiln.panel(face.panel());
        double depth = face.hot() ? 0 : p.thickness();
        double l = p.uMin(depth);
        double r = p.uMax(depth);
        return List.of(new Pt(l, kiln.height()), new Pt(r, kiln.height()), new Pt(r, 0), new Pt(l, 0));
    }

    /** What the picture needs: rim and a little room. */
    public Box bounds() {
        return Box.around(rim()).grown(RIM_ROOM_MM);
    }

    /** The kiln that the part belongs to. */
    public KilnGeometry kiln() {
        return kiln;
    }

    /** Holes of this part. */
    public List<HoleNote> holes() {
        return holes;
    }

    /** Saw circles in the picture. */
    public List<Circle> sawCircles() {
        return holes().stream()
                .map(n -> new Circle(view(n.hole().centre()), n.hole().diameter() / 2))
                .toList();
    }

    /** The widest circle that is cut for each hole, in brick or metal, in the picture. */
    public List<Circle> cutCircles() {
        return holes().stream()
                .map(n -> new Circle(
                        view(n.hole().centre()),
                        (n.hasMetal() ? n.metalMm() : n.hole().diameter()) / 2))
                .toList();
    }

    /** Paints what lies in the window; words stay inside of it. */
    public void paint(Pen pen, Box window) {
        paint(pen, window, List.of());
    }

    /** The lines alone, without words: to find room between them. */
    public void lines(Pen pen, Box window) {
        shapes(pen, window);
        weakestLine(pen);
        HolePainter painter = new HolePainter(pen, new Labels(pen, window), look, window, null, face.hot());
        holes().forEach(n -> painter.rings(n, view(n.hole().centre())));
        flags().forEach(f -> pen.line(f.a, f.b, LineStyle.BOX, f.ink));
    }

    /** Paints; words also keep off the boxes given. */
    public void paint(Pen pen, Box window, List<Box> keepFree) {
        Labels labels = labels(pen, window, keepFree);
        Names names = shapes(pen, window);
        weakest(pen, labels);
        HolePainter painter = new HolePainter(pen, labels, look, window, traces(pen, window), face.hot());
        holes().forEach(n -> painter.rings(n, view(n.hole().centre())));
        flags(pen, labels);
        holes().forEach(n -> painter.label(n, view(n.hole().centre())));
        write(names, pen, window, labels);
    }

    /** Paints all that stays as it is while one hole moves; words leave room for that hole, for flags where they lie now and for the boxes given. */
    public void under(Pen pen, Box window, String moving, List<Box> keepFree) {
        under(pen, pen, window, moving, keepFree);
    }

    /** Paints the words of {@link #under} once more, over what was painted since. */
    public void words(Pen pen, Box window, String moving, List<Box> keepFree) {
        under(new Traces(pen, window), pen, window, moving, keepFree);
    }

    private void under(Pen lines, Pen pen, Box window, String moving, List<Box> keepFree) {
        Names names = shapes(lines, window);
        Traces traces = traces(pen, window);
        Pen mute = new Traces(pen, window);
        Labels labels = labels(mute, window, keepFree);
        weakest(mute, labels);
        HolePainter silent = new HolePainter(mute, labels, look, window, traces, face.hot());
        HolePainter rings = new HolePainter(lines, labels, look, window, traces, face.hot());
        HolePainter painter = new HolePainter(pen, labels.with(pen), look, window, traces, face.hot());
        holes().forEach(n ->
                (moves(n, moving) ? silent : rings).rings(n, view(n.hole().centre())));
        flags(mute, labels);
        holes().forEach(n ->
                (moves(n, moving) ? silent : painter).label(n, view(n.hole().centre())));
        write(names, pen, window, labels.with(pen));
    }

    /** Paints what {@link #under} leaves out: the hole that moves, and what its place decides. */
    public void over(Pen pen, Box window, String moving, List<Box> keepFree) {
        Labels labels = labels(pen, window, keepFree);
        weakest(pen, labels);
        HolePainter painter = new HolePainter(pen, labels, look, window, traces(pen, window), face.hot());
        List<HoleNote> hole = holes().stream().filter(n -> moves(n, moving)).toList();
        hole.forEach(n -> painter.rings(n, view(n.hole().centre())));
        flags(pen, labels);
        hole.forEach(n -> painter.label(n, view(n.hole().centre())));
    }

    private static boolean moves(HoleNote n, String moving) {
        return n.hole().name().equals(moving);
    }

    /** The lines that tickets keep off; there are none on screen. */
    private Traces traces(Pen pen, Box window) {
        if (pen.flavour() == Flavour.SCREEN) {
            return null;
        }
        Traces traces = new Traces(pen, window);
        lines(traces, window);
        return traces;
    }

    private Names shapes(Pen pen, Box window) {
        return new PartShapes(pen, kiln, face, look, window, this::view).paint();
    }

    /** Words keep off the holes and the boxes given. */
    private Labels labels(Pen pen, Box window, List<Box> keepFree) {
        Labels labels = new Labels(pen, window);
        keepFree.forEach(labels::keepFree);
        for (HoleNote n : holes()) {
            Pt c = view(n.hole().centre());
            double r = n.hasMetal() && !look.plan() ? n.metalMm() / 2 : n.hole().diameter() / 2;
            labels.keepFree(new Box(c.x() - r, c.y() - r, c.x() + r, c.y() + r));
        }
        return labels;
    }

    private void write(Names names, Pen pen, Box window, Labels labels) {
        if (!look.plan() && roomy(pen)) {
            names.write(pen, window, labels);
        }
    }

    /** Whether the picture is large enough on screen to carry the names of everything; paper always is. */
    private boolean roomy(Pen pen) {
        Box b = bounds();
        return pen.flavour() != Flavour.SCREEN
                || Math.max(b.width(), b.height()) > pen.size(0, face.on() == On.WALL ? 60 : 330);
    }

    private void weakest(Pen pen, Labels labels) {
        WeakestSection.Line line = weakestLine(pen);
        if (line != null && !look.plan()) {
            labels.place(
                    "weakest line: " + (kiln.sectionLacks().isEmpty() ? "" : "at least ")
                            + Format.plain(line.share() * 100, 0) + " % lost",
                    labels.along(
                            List.of(view(line.across().a()), view(line.across().b())), false, pen.size(1.2, 4)),
                    TextStyle.LABEL_BOLD);
        }
    }

    /** The worst line of a slab where a rule cautions of it, else null. */
    private WeakestSection.Line weakestLine(Pen pen) {
        if (face.on() == On.WALL) {
            return null;
        }
        boolean shown = findings.stream()
                .anyMatch(f -> f.rule().equals("weakest-section")
                        && f.severity() != Severity.NOTE
                        && f.parts().stream()
                                .anyMatch(n -> kiln.holes(face.on()).stream()
                                        .anyMatch(h -> h.name().equals(n))));
        var line = shown ? kiln.weakestSection(face.on()) : null;
        if (line != null) {
            pen.line(view(line.across().a()), view(line.across().b()), LineStyle.WEAKEST);
        }
        return line;
    }

    /** A clearance that a stop or caution names, as it is drawn. */
    private record Flag(Pt a, Pt b, Ink ink, String words) {}

    private List<Flag> flags() {
        List<Flag> out = new ArrayList<>();
        for (Finding f : findings) {
            if (f.severity() == Severity.NOTE || f.rule().equals("weakest-section")) {
                continue;
            }
            for (Mark m : f.marks()) {
                if (m.face().samePart(face)
                        && f.measured() != null
                        && f.measured().unit().equals("mm")
                        && !m.a().equals(m.b())) {
                    out.add(new Flag(
                            view(m.a()),
                            view(m.b()),
                            f.severity() == Severity.STOP ? Ink.OXBLOOD : Ink.RUTILE,
                            look.distance(f.measured().value())));
                }
            }
        }
        return out;
    }

    private void flags(Pen pen, Labels labels) {
        if (look.plan()) {
            return;
        }
        for (Flag f : flags()) {
            pen.line(f.a, f.b, LineStyle.BOX, f.ink);
            List<Labels.Spot> spots = new ArrayList<>(labels.near(Box.around(List.of(f.a, f.b))));
            spots.remove(0);
            labels.place(f.words, spots, TextStyle.LABEL_BOLD.withInk(f.ink));
        }
    }
}
