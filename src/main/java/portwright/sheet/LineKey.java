package portwright.sheet;

import java.util.List;
import portwright.drawing.LineStyle;

/** What each kind of line on the sheets means. */
final class LineKey {
    /** @param words what it stands for */
    record Row(LineStyle style, String words) {}

    private LineKey() {}

    /** Those that the printed faces show. */
    static List<Row> of(Job job, Fonts fonts) {
        Page trial = new Page(1, 1);
        job.views()
                .forEach(v -> v.painter()
                        .paint(PdfPen.onPage(trial, fonts), v.painter().bounds()));
        if (job.views().stream().anyMatch(v -> v.tiling().printed().size() > 1)) {
            trial.lines().add(LineStyle.TRIM);
        }
        return rows().stream().filter(r -> trial.lines().contains(r.style())).toList();
    }

    /** The lines in the order of what they cost when mistaken. */
    private static List<Row> rows() {
        return List.of(
                new Row(LineStyle.SAW_CIRCLE, "round a cross: the hole in the brick; the awl goes in the dot"),
                new Row(LineStyle.METAL_HOLE, "round that: the hole in the sheet metal, wider"),
                new Row(
                        LineStyle.KEEP_OUT,
                        "keep-clear ring, round the hole with its oversize: no groove, tail, fitting or other hole inside; joints may cross"),
                new Row(
                        LineStyle.FITTING,
                        "without a cross: there already, a leg (hatched), probe, spyhole or tail; not a hole to drill"),
                new Row(
                        LineStyle.SLAB_EDGE,
                        "edge of the part; of a wall from outside, top and bottom are those of the chamber"),
                new Row(LineStyle.TRIM, "with diamonds: cut here, or the neighbour's edge lies here"),
                new Row(LineStyle.JOINT, "brick joint of floor or lid; walls show none"),
                new Row(LineStyle.JOINT_BEHIND, "brick joint behind the metal"),
                new Row(LineStyle.HIDDEN, "on the other face: chamber wall, groove, fitting, metal hole"),
                new Row(LineStyle.NEIGHBOUR, "shelf and its posts inside the chamber"),
                new Row(LineStyle.AXIS, "middle of the kiln"),
                new Row(LineStyle.WEAKEST, "labelled so: the line with the least brick"));
    }
}
