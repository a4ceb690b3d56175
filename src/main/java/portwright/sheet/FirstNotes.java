package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.HoleNote;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.model.ElementRun;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;

/** What has to be known to set out the schedule's holes with a tape: distances between holes, where the battens lie, what is where. */
final class FirstNotes {
    /** Up to so many holes every pair of one part is measured. */
    private static final int MOST_PAIRED = 5;

    private static final TextStyle STYLE = TextStyle.BAR;
    private static final double LINE = 4;

    private final Job job;
    private final Block block;
    private final boolean inch;
    private final List<HoleSchedule.Row> rows;
    private final List<String> notes;

    /** @param leftOut holes for which the schedule had no room */
    FirstNotes(Job job, Block block, int leftOut) {
        this.job = job;
        this.block = block;
        inch = job.kiln().design().units() != UnitSystem.METRIC;
        rows = HoleSchedule.of(job.kiln());
        notes = notes(leftOut);
    }

    /** Height at a width, mm. */
    double height(double width) {
        return 2 + LINE * lines(width).size();
    }

    void draw(double x, double top, double width) {
        double y = top;
        for (String line : lines(width)) {
            y += LINE;
            block.words(line, x, y, STYLE);
        }
    }

    private List<String> lines(double width) {
        return notes.stream()
                .flatMap(n -> Words.wrap(block.pen, n, width, STYLE).stream())
                .toList();
    }

    private List<String> notes(int leftOut) {
        List<String> out = new ArrayList<>();
        String pairs = pairs();
        if (!pairs.isEmpty()) {
            out.add(pairs);
        }
        List<String> how = new ArrayList<>();
        if (leftOut > 0) {
            how.add(leftOut + " more holes: last sheets");
        }
        if (rows.stream().anyMatch(r -> !r.wall())) {
            how.add("left: straight batten held outside against the leftmost corner or side");
            how.add("back: another against the backmost, square to it");
            how.add("bearing clockwise from the BACK, all seen from above"
                    + (job.views().stream().anyMatch(v -> v.face().mirrored())
                            ? "; on a MIRRORED face left and right change places"
                            : ""));
        }
        rows.stream()
                .filter(r -> r.overhangUnknown(job.kiln()))
                .map(HoleSchedule.Row::part)
                .distinct()
                .forEach(p -> how.add("overhang of the " + p + " not stated, taken as 0: measure it first"));
        rows.stream().filter(HoleSchedule.Row::wall).forEach(r -> how.add(wall(r)));
        if (rows.stream().anyMatch(HoleSchedule.Row::wall)) {
            how.add(
                    "wall: bore a pilot from inside through the jacket, then cut the jacket from outside, then the brick; where the bit comes out rules, not the paper's dot");
        }
        String others = unprinted();
        if (!others.isEmpty()) {
            how.add(others);
        }
        if (!how.isEmpty()) {
            out.add(String.join(" · ", how) + ".");
        }
        out.add(grooves());
        return out;
    }

    /** How many element rows the design has in what is printed and beside it: nothing in it tells whether one was forgotten. */
    private String grooves() {
        List<String> counts = new ArrayList<>();
        List<Face> parts = new ArrayList<>();
        job.views().forEach(v -> {
            if (parts.stream().noneMatch(f -> f.samePart(v.face()))) {
                parts.add(v.face());
                counts.add(
                        v.face().on() == On.WALL
                                ? count(
                                        job.kiln().panel(v.face().panel()).words(),
                                        On.WALL,
                                        v.face().panel())
                                : count(v.face().on().id(), v.face().on(), 0));
            }
        });
        if (parts.stream().noneMatch(f -> f.on() == On.WALL)) {
            counts.add(count("walls", On.WALL, 0));
        }
        return "Before you drill, open the kiln and count the element rows. Drawn here: " + String.join(", ", counts)
                + ". Where you find more, draw them first.";
    }

    /** @param panel of a wall; 0 for all walls together */
    private String count(String part, On on, int panel) {
        List<ElementRun> all = job.kiln().design().kiln().elements();
        long rows = all == null
                ? 0
                : all.stream()
                        .filter(e -> e.on() == on
                                && (panel == 0
                                        || e.panels() == null
                                        || e.panels().contains(panel)))
                        .count();
        return part + " " + (rows == 0 ? "none" : rows);
    }

    /** What a hole's figures in the schedule are taken from, and the same place from the wall's other side, where other edges are seen. */
    private String wall(HoleSchedule.Row r) {
        KilnGeometry kiln = job.kiln();
        String inside = both(r.fromLeftMm()) + " from the left corner, " + both(r.fromOtherMm()) + " up from the floor";
        String outside = both(r.outerLeftMm(kiln)) + " from the wall's left outer edge, " + both(r.outerRightMm(kiln))
                + " from the right one, " + both(r.upOutsideMm(kiln)) + " up from the floor's underside";
        return job.outsideOnly(r.note().hole().face().panel())
                ? r.note().number() + ": the schedule is from outside, left outer edge and floor's underside; inside "
                        + inside
                : r.note().number() + ": the schedule is from inside, left corner and floor; outside " + outside;
    }

    private String both(double mm) {
        String inches = InchFraction.words(mm, 32);
        String metric = Format.tenths(mm) + " mm";
        return inch ? inches + " (" + metric + ")" : metric + " (" + inches + ")";
    }

    /** Holes of parts that this print leaves out. */
    private String unprinted() {
        List<HoleSchedule.Row> out = rows.stream()
                .filter(r -> job.views().stream()
                        .noneMatch(v -> v.face().samePart(r.note().hole().face())))
                .toList();
        return out.isEmpty()
                ? ""
                : "no sheets here for "
                        + String.join(
                                ", ",
                                out.stream()
                                        .map(r -> r.note().number() + " (" + r.part() + ")")
                                        .toList());
    }

    /** Centre to centre of the holes of each part, to check across a seam; of many holes those next to each other in number. */
    private String pairs() {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            for (int k = i + 1; k < rows.size() && (rows.size() <= MOST_PAIRED || k == i + 1); k++) {
                HoleNote a = rows.get(i).note();
                HoleNote b = rows.get(k).note();
                if (rows.get(i).part().equals(rows.get(k).part())) {
                    double mm = a.hole().centre().distance(b.hole().centre());
                    out.add(a.number() + " to " + b.number() + ": " + both(mm));
                }
            }
        }
        return out.isEmpty() ? "" : "Centre to centre, to check across a seam: " + String.join(" · ", out) + ".";
    }
}
