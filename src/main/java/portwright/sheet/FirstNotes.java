package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.HoleNote;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Face;
import portwright.geometry.Panel;
import portwright.model.ElementRun;
import portwright.model.On;
import portwright.model.UnitSystem;
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
            how.add("left: straight batten held against the leftmost corner or side");
            how.add("back: another against the backmost, square to it");
            how.add("bearing clockwise from the BACK, all seen from above"
                    + (job.views().stream().anyMatch(v -> v.face().mirrored())
                            ? "; on a MIRRORED face left and right change places"
                            : ""));
        }
        if (rows.stream().anyMatch(HoleSchedule.Row::wall)) {
            how.add(
                    "wall: from the left corner seen from inside, and up from the floor's hot face; outside, that face lies "
                            + HoleNote.both(job.kiln().thickness(On.FLOOR))
                            + " above the floor's underside. Bore a pilot from inside through the jacket, then cut the jacket from outside, then the brick: where the bit comes out rules, not the paper's dot. From outside the chamber's corner cannot be seen: "
                            + fromOutside());
        }
        how.add(grooves());
        String others = unprinted();
        if (!others.isEmpty()) {
            how.add(others);
        }
        out.add(String.join(" · ", how) + ".");
        return out;
    }

    /** Which of the printed parts have elements, as the design tells it. */
    private String grooves() {
        List<Face> parts = new ArrayList<>();
        job.views().forEach(v -> {
            if (parts.stream().noneMatch(f -> f.samePart(v.face()))) {
                parts.add(v.face());
            }
        });
        List<String> with = new ArrayList<>();
        List<String> without = new ArrayList<>();
        parts.forEach(f -> (has(f) ? with : without).add(f.on() == On.WALL ? "wall " + f.panel() : f.on().id()));
        return (with.isEmpty() ? "" : "element grooves in " + String.join(", ", with) + ", as drawn")
                + (with.isEmpty() || without.isEmpty() ? "" : "; ")
                + (without.isEmpty()
                        ? ""
                        : "no element in " + String.join(", ", without) + " by this design: look before you drill");
    }

    private boolean has(Face f) {
        List<ElementRun> all = job.kiln().design().kiln().elements();
        return all != null
                && all.stream()
                        .anyMatch(e -> e.on() == f.on()
                                && (f.on() != On.WALL
                                        || e.panels() == null
                                        || e.panels().contains(f.panel())));
    }

    /** How far each hole of a wall lies from the wall's outer edges, as a tape finds it from outside. */
    private String fromOutside() {
        List<String> out = new ArrayList<>();
        for (HoleSchedule.Row r : rows) {
            if (r.wall()) {
                Panel p = job.kiln().panel(r.note().hole().face().panel());
                double u = r.note().hole().centre().x();
                double left = p.uMax(p.thickness()) - u;
                double right = u - p.uMin(p.thickness());
                out.add(r.note().number() + " lies " + HoleNote.both(left) + " from the outer left edge there, "
                        + HoleNote.both(right) + " from the right one");
            }
        }
        return String.join("; ", out);
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
                    String words = InchFraction.words(mm, 32);
                    String metric = LastPages.tenths(mm) + " mm";
                    out.add(a.number() + " to " + b.number() + ": "
                            + (inch ? words + " (" + metric + ")" : metric + " (" + words + ")"));
                }
            }
        }
        return out.isEmpty() ? "" : "Centre to centre, to check across a seam: " + String.join(" · ", out) + ".";
    }
}
