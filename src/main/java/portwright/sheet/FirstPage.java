package portwright.sheet;

import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;
import portwright.report.VerdictLine;

/** Where to begin: verdict, hole schedule, small plans, check bars and pins, findings, what to do before the drill turns. */
final class FirstPage {
    static final TextStyle TITLE = new TextStyle(TextStyle.Face.SERIF_BOLD, 26, 7.6, Ink.INK, false);
    static final TextStyle HEADING = new TextStyle(TextStyle.Face.SANS_BOLD, 17, 4.6, Ink.INK, false);
    static final TextStyle SMALL = new TextStyle(TextStyle.Face.SANS, 12.5, 3.0, Ink.INK, false);
    /** Room at the right for the upper pin, mm. */
    static final double PIN_STRIP = 11;

    private static final double BOTTOM = 112.5;
    /** Type of what was not checked against drilling, bold like the verdict over it, mm. */
    private static final double OPEN_MM = 3.6;
    /** Share of the width for the notes where the plans stand beside them. */
    private static final double NOTES_SHARE = 0.42;

    private final Job job;
    private final Block block;

    private FirstPage(Job job, Block block) {
        this.job = job;
        this.block = block;
    }

    static Page of(Job job, int total, Fonts fonts) {
        Block block = new Block(job.paper(), fonts);
        FirstPage f = new FirstPage(job, block);
        double bottom = block.height - Frame.MARGIN - BOTTOM;
        f.head(total);
        double y = f.verdict(34);
        FirstSchedule.Drawn schedule = new FirstSchedule(job, block).draw(y, f.rows(y, bottom - 2));
        f.notesAndPlans(new FirstNotes(job, block, schedule.leftOut()), schedule.endMm(), bottom - 2);
        new FirstMeasures(job, block).draw(bottom);
        if (job.stops() > 0) {
            Strike.through(block.pen, block.inside(), Strike.stops(job.stops(), "DO NOT DRILL"));
        }
        return block.page;
    }

    /** How many holes the schedule shows: as many as have room, or fewer where the plans below could not be read; all stand on the last sheets. */
    private int rows(double top, double bottom) {
        int all = HoleSchedule.of(job.kiln()).size();
        int fit = new FirstSchedule(job, block).fit(top, bottom);
        FirstPlans plans = new FirstPlans(job, block);
        for (int n = fit; n > 0; n--) {
            double end = FirstSchedule.end(top, n);
            if (plans.readable(place(plans, new FirstNotes(job, block, all - n), end, bottom)
                    .reduction())) {
                return n;
            }
        }
        return fit;
    }

    /**
     * Where the plans lie.
     *
     * @param sideways beside the notes, not below them
     * @param left where they begin, mm from the left
     * @param top where they begin, mm from the top
     * @param reduction how many times smaller than the kiln
     */
    private record PlansPlace(boolean sideways, double left, double top, int reduction) {}

    /** Below the notes or beside them, whichever shows the plans larger. */
    private PlansPlace place(FirstPlans plans, FirstNotes notes, double top, double bottom) {
        double end = block.right - PIN_STRIP;
        double column = NOTES_SHARE * (end - block.left);
        double under = top + notes.height(end - block.left);
        double left = block.left + column + 5;
        int below = plans.reduction(block.left, end, under, bottom);
        int beside = plans.reduction(left, end, top + 2, bottom);
        return notes.height(column) < bottom - top && beside < below
                ? new PlansPlace(true, left, top + 2, beside)
                : new PlansPlace(false, block.left, under, below);
    }

    private void notesAndPlans(FirstNotes notes, double top, double bottom) {
        double end = block.right - PIN_STRIP;
        FirstPlans plans = new FirstPlans(job, block);
        PlansPlace at = place(plans, notes, top, bottom);
        notes.draw(block.left, top, (at.sideways() ? NOTES_SHARE : 1) * (end - block.left));
        plans.draw(at.left(), end, at.top(), bottom);
        block.rule(block.left, end, bottom + 0.5, LineStyle.CHAMBER_WALL);
    }

    private void head(int total) {
        double boxW = 58;
        double room = block.right - boxW - 5 - block.left;
        TextStyle t = TITLE;
        String title = job.result().title();
        if (block.pen.textWidth(title, t) > room) {
            t = t.size(t.px(), Math.max(4.6, 0.999 * t.mm() * room / block.pen.textWidth(title, t)));
        }
        List<String> titled = Words.wrap(block.pen, title, room, t);
        if (titled.size() > 1) {
            block.words(titled.get(0), block.left, 15, t);
        }
        String rest = String.join(" ", titled.subList(Math.min(1, titled.size() - 1), titled.size()));
        block.words(Words.fit(block.pen, rest, room, t), block.left, 20, t);
        String parts = String.join(
                ", ", job.views().stream().map(View::words).distinct().toList());
        List<String> sub = Words.wrap(
                block.pen,
                "Full-size drilling template, " + total + " sheets "
                        + job.paper().words() + ": " + parts,
                room,
                SMALL);
        for (int i = 0; i < Math.min(2, sub.size()); i++) {
            block.words(
                    sub.size() > 2 && i == 1 ? Words.fit(block.pen, sub.get(1) + " …", room, SMALL) : sub.get(i),
                    block.left,
                    25.2 + 4 * i,
                    SMALL);
        }
        Box b = new Box(block.right - boxW, block.height - 29, block.right, block.height - Frame.MARGIN);
        block.pen.polyline(b.grown(-0.2).corners(), true, LineStyle.BOX);
        block.words("sheet 1 of " + total, block.right - boxW + 3, 17.2, TextStyle.BOLD);
        block.words(
                Words.fit(block.pen, job.fileName() + " · " + job.mark().words(), boxW - 6, SMALL),
                block.right - boxW + 3,
                21.8,
                SMALL);
        block.words("date", block.right - boxW + 3, 26.6, SMALL);
        block.rule(block.right - boxW + 12, block.right - 4, 26.9, LineStyle.DIMENSION);
        block.rule(block.left, block.right, 31.4, LineStyle.CHAMBER_WALL);
    }

    private double verdict(double top) {
        CheckResult r = job.result();
        long stops = job.stops();
        long cautions = r.cautions(Forbids.DRILLING);
        Pt c = block.at(block.left + 5.6, top + 4.5);
        if (stops > 0) {
            Signs.stop(block.pen, c, 9);
        } else {
            boolean unseen = r.notChecked().stream().anyMatch(n -> n.forbids() == Forbids.NOTHING);
            if (Unproven.drilling(r)) {
                Signs.notChecked(block.pen, c, 9);
            } else if (cautions + r.stops(Forbids.LIGHTING) > 0) {
                Signs.caution(block.pen, c, 9);
            } else if (unseen) {
                Signs.notChecked(block.pen, c, 9);
            } else {
                Signs.clear(block.pen, c, 9);
            }
        }
        String t = VerdictLine.drilling(r)
                + (stops > 0 || cautions == 0
                        ? ""
                        : cautions == 1 ? " Read the caution before drilling." : " Read the cautions before drilling.");
        double room = block.right - PIN_STRIP - block.left - 12;
        TextStyle s = HEADING;
        if (block.pen.textWidth(t, s) > room) {
            s = s.size(s.px(), s.mm() * room / block.pen.textWidth(t, s));
        }
        block.words(t, block.left + 12, top + 5.2, s);
        String open = Unproven.which(r);
        double under = open.isEmpty()
                ? top + 6.4
                : block.flow(open, block.left + 12, top + 6.8, room, HEADING.size(HEADING.px(), OPEN_MM)) + 0.6;
        int unmeasured = job.options().unmeasured();
        String lighting = (unmeasured == 0
                        ? ""
                        : unmeasured + (unmeasured == 1 ? " value is" : " values are")
                                + " still the starter's: measure your own kiln first. ")
                + (r.notChecked().isEmpty() ? "Every rule was checked. " : "")
                + lighting(r);
        if (!lighting.isEmpty()) {
            return Math.max(top + 16.2, block.flow(lighting, block.left + 12, under, room, SMALL) + 5.2);
        }
        return Math.max(top + 16.2, under + 5.2);
    }

    private static String lighting(CheckResult r) {
        long stops = r.stops(Forbids.LIGHTING);
        if (stops > 0) {
            return "Lighting: " + stops + (stops == 1 ? " stop" : " stops")
                    + ". Read the cures before you drill: a hole cannot be moved afterwards.";
        }
        if (r.notChecked().stream().anyMatch(n -> n.forbids() == Forbids.LIGHTING)) {
            return "Lighting: not proven, see what was not checked.";
        }
        long cautions = r.cautions(Forbids.LIGHTING);
        return cautions == 0
                ? ""
                : "Lighting: " + cautions + (cautions == 1 ? " caution" : " cautions") + ", see the last sheets.";
    }
}
