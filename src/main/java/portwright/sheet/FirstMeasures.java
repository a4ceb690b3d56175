package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.CheckBar;
import portwright.drawing.HoleNote;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.Pt;
import portwright.model.On;

/** What proves the print: two bars, three pins of a right-angled triangle, and what to do in which order. */
final class FirstMeasures {
    private final Job job;
    private final Block block;

    FirstMeasures(Job job, Block block) {
        this.job = job;
        this.block = block;
    }

    /** Draws it below a block.height, from the top; the findings are block.left to {@link FirstFindings}. */
    void draw(double top) {
        double sx = job.options().scaleX();
        double sy = job.options().scaleY();
        double x = block.left + 20;
        double findingsX = Math.max(block.left + 131, block.right - 74);
        double end = findingsX - 5;
        CheckBar.down(block.pen(block.left + 6, block.height - top - 0.8, sx, sy), new Pt(0, 0));
        double y = top + 6;
        block.words("Measure this sheet first", x, y, FirstPage.HEADING);
        y = block.flow(
                "Steel rule on both bars: 100 mm within 0.5 mm, use the sheets. Within 1.5 mm: print again with a printer correction. In the window: Paper step, type what the rule reads. "
                        + "By command: give the two scales, true over printed length. Worse: mend the printer's scaling first. Prick P, Q, R: sides 150, 200 and 250 mm, each within 0.5 mm.",
                x,
                y + 2,
                end - x,
                FirstPage.SMALL);
        if (job.options().corrected()) {
            y = block.flow("This print is " + job.options().correctionWords() + ".", x, y, end - x, FirstPage.SMALL);
        }
        CheckBar.across(block.pen(x, block.height - y - 8.6, sx, sy), new Pt(0, 0));
        y += 19.5;
        block.words("In this order", x, y, FirstPage.HEADING);
        y += 1.8;
        for (String t : steps()) {
            block.pen.polyline(
                    new Box(x, block.height - y - 3.6, x + 2.8, block.height - y - 0.8).corners(), true, LineStyle.BOX);
            y = block.flow(t, x + 5, y, end - x - 5, FirstPage.SMALL) + 0.5;
        }
        new FirstFindings(job, block)
                .draw(findingsX, top + 6, block.right - findingsX, block.height - Frame.MARGIN - 22);
        pins();
    }

    private List<String> steps() {
        List<String> out = new ArrayList<>();
        out.add("Read the last sheets; local code comes first. Mask and goggles: the dust harms the lungs.");
        boolean joined = job.views().stream().anyMatch(v -> v.tiling().printed().size() > 1);
        out.add("Print at 100 %. Measure both bars of every sheet."
                + (joined
                        ? " Cut on the left and upper trim lines, lay over as the small map in each head shows, cross on cross, tape; measure the schedule."
                        : " Measure the schedule."));
        boolean mirrored = job.views().stream().anyMatch(v -> v.face().mirrored());
        boolean plain = job.views().stream().anyMatch(v -> !v.face().mirrored());
        out.add("Unplug. Tape the sheets, print towards you, to the face that their head names"
                + (mirrored && plain ? "; of floor and lid one face is enough, never mix black and white heads" : "")
                + ". "
                + (mirrored ? "Never turn MIRRORED over. " : "")
                + "Cut it out round legs; inside, along the chamber wall.");
        out.add("Offer up the real burner, then prick each dot through the paper.");
        boolean metal = HoleNote.of(job.kiln()).stream().anyMatch(HoleNote::hasMetal);
        boolean walls = job.views().stream().anyMatch(v -> v.face().on() == On.WALL);
        boolean outsideOnly =
                job.views().stream().anyMatch(v -> job.outsideOnly(v.face().panel()));
        out.add("Pilot right through" + (walls ? ", a wall's from inside" : "")
                + (outsideOnly ? " (its inside sheets: the inner or hot face)" : "")
                + (metal ? ", then metal (dashed circle), then brick, slowly." : ", then brick, slowly."));
        return out;
    }

    private void pins() {
        double sx = job.options().scaleX();
        double sy = job.options().scaleY();
        double px = block.right - 5;
        double py = Frame.MARGIN + 5;
        PdfPen p = block.pen(px, py, sx, sy);
        Pt corner = new Pt(0, 0);
        Pt q = new Pt(-150, 0);
        Pt r = new Pt(0, 200);
        pin(p, corner, "P", -5.5, 3);
        pin(p, q, "Q", -6, -1.6);
        pin(p, r, "R", 0, 6);
        for (Pt[] d : new Pt[][] {
            {q.plus(7, 0), q.plus(19, 0)},
            {corner.plus(-7, 0), corner.plus(-19, 0)},
            {corner.plus(0, 7), corner.plus(0, 19)},
            {r.plus(0, -7), r.plus(0, -19)}
        }) {
            p.line(d[0], d[1], LineStyle.HIDDEN, Ink.INK);
        }
        p.text("P–Q 150 mm · P–R 200 mm · Q–R 250 mm", new Pt(-75, -1.2), Pen.Align.CENTRE, 0, FirstPage.SMALL);
    }

    private static void pin(Pen p, Pt c, String name, double dx, double dy) {
        p.line(c.plus(-4.5, 0), c.plus(4.5, 0), LineStyle.DIMENSION);
        p.line(c.plus(0, -4.5), c.plus(0, 4.5), LineStyle.DIMENSION);
        p.circle(c, 2.5, LineStyle.BOX, Ink.INK);
        p.fillCircle(c, 0.5, Ink.INK, 1);
        p.text(name, c.plus(dx, dy), Pen.Align.CENTRE, 0, TextStyle.BOLD);
    }
}
