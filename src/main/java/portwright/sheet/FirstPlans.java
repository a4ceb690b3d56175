package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.PartLook;
import portwright.drawing.PartPainter;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Face;
import portwright.geometry.Pt;
import portwright.model.On;

/** Small plans of the parts that are drilled, with the edges that the schedule is measured from. */
final class FirstPlans {
    private static final int[] REDUCTIONS = {2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100};

    private final Job job;
    private final Block block;

    FirstPlans(Job job, Block block) {
        this.job = job;
        this.block = block;
    }

    /** Draws them between two heights, from the top. */
    void draw(double top, double bottom) {
        List<Face> faces = new ArrayList<>();
        for (On on : List.of(On.FLOOR, On.LID)) {
            if (!job.kiln().holes(on).isEmpty()) {
                faces.add(new Face(on, 0, on == On.FLOOR));
            }
        }
        job.holes().stream()
                .filter(n -> n.hole().face().on() == On.WALL)
                .map(n -> n.hole().face())
                .distinct()
                .limit(Math.max(0, 3 - faces.size()))
                .forEach(faces::add);
        double end = block.right - FirstPage.PIN_STRIP;
        double slot = (end - block.left) / Math.max(1, faces.size());
        double room = bottom - top - 7;
        List<PartPainter> painters = faces.stream()
                .map(f -> new PartPainter(job.kiln(), f, job.result().findings(), PartLook.small()))
                .toList();
        int reduction = REDUCTIONS[REDUCTIONS.length - 1];
        for (int i = REDUCTIONS.length - 1; i >= 0; i--) {
            int n = REDUCTIONS[i];
            boolean roomy = n >= 10 || block.width > 250;
            if (roomy
                    && painters.stream()
                            .allMatch(p -> p.bounds().width() / n <= slot - 8
                                    && p.bounds().height() / n <= room - 7)) {
                reduction = n;
            }
        }
        for (int i = 0; i < painters.size(); i++) {
            plan(painters.get(i), block.left + slot * i, top, slot, room, reduction);
        }
        block.rule(block.left, end, bottom + 0.5, LineStyle.CHAMBER_WALL);
    }

    private void plan(PartPainter p, double x, double top, double slot, double room, int reduction) {
        double f = 1.0 / reduction;
        Box b = p.bounds();
        double cx = x + slot / 2;
        double cy = block.height - top - room / 2;
        PdfPen small = block.pen(cx - b.centre().x() * f, cy - b.centre().y() * f, f, f);
        Box rim = Box.around(p.rim());
        Box window = rim.grown(5 * reduction);
        List<Box> taken = new ArrayList<>();
        boolean wall = p.face().on() == On.WALL;
        String[] sides = wall ? new String[] {"TOP", "BOTTOM"} : new String[] {"BACK", "FRONT"};
        TextStyle s = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.0, Ink.INK, true);
        Pt back = new Pt(rim.centre().x(), rim.maxY() - 4.2 * reduction);
        Pt front = new Pt(rim.centre().x(), rim.minY() + 1.6 * reduction);
        for (Pt w : List.of(back, front)) {
            taken.add(
                    new Box(w.x() - 6 * reduction, w.y() - reduction, w.x() + 6 * reduction, w.y() + 3.4 * reduction));
        }
        p.paint(small, window, taken);
        small.text(sides[0], back, Pen.Align.CENTRE, 0, s);
        small.text(sides[1], front, Pen.Align.CENTRE, 0, s);
        double over = 2.5 * reduction;
        small.line(
                new Pt(rim.minX(), rim.maxY() + over),
                new Pt(rim.minX(), wall ? rim.minY() - over : rim.minY()),
                LineStyle.CHAMBER_WALL);
        double batten = wall ? rim.minY() : rim.maxY();
        small.line(new Pt(rim.minX() - over, batten), new Pt(rim.maxX(), batten), LineStyle.CHAMBER_WALL);
        String name = switch (p.face().on()) {
            case FLOOR -> "floor from above";
            case LID -> "lid from above";
            case WALL -> "wall " + p.face().panel() + " from inside";
        };
        block.pen.text(
                name + ", 1 : " + reduction,
                new Pt(cx, Math.max(block.height - top - room - 4, cy - b.height() * f / 2 - 9)),
                Pen.Align.CENTRE,
                0,
                TextStyle.BOLD);
    }
}
