package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Pt;

/** Words for what a part painter has painted, to be placed once everything else lies on the picture. */
final class Names {
    private final List<Name> names = new ArrayList<>();

    /** @param near the words stand in or beside it; where it is null they run along the line */
    private record Name(String words, List<Pt> along, boolean closed, Box near) {
        /** Whether both say the same of parts one over the other, as the posts of two shelves. */
        boolean twin(Name o) {
            return words.equals(o.words) && near.centre().distance(o.near.centre()) < SAME_MM;
        }
    }

    private static final double SAME_MM = 1;

    void along(String words, List<Pt> line, boolean closed) {
        names.add(new Name(words, line, closed, null));
    }

    void near(String words, Box box) {
        names.add(new Name(words, null, false, box));
    }

    /** Writes each once in this window, where there is room. */
    void write(Pen pen, Box window, Labels labels) {
        List<String> said = new ArrayList<>();
        List<Box> shapes = names.stream()
                .map(Name::near)
                .filter(java.util.Objects::nonNull)
                .toList();
        List<Name> placed = new ArrayList<>();
        double off = pen.size(1.2, 4);
        for (Name n : names) {
            if (n.near != null) {
                if (window.touches(n.near) && placed.stream().noneMatch(o -> o.twin(n))) {
                    placed.add(n);
                    List<Labels.Spot> spots = labels.near(n.near);
                    boolean inside = pen.textWidth(n.words, TextStyle.LABEL) < n.near.width() - off;
                    place(
                            labels,
                            n.words,
                            inside ? spots : spots.subList(1, spots.size()),
                            shapes.stream().filter(b -> !b.equals(n.near)).toList());
                }
            } else if (!said.contains(n.words)
                    && place(labels, n.words, within(labels, n, off, pen.textSize(TextStyle.LABEL)), shapes)) {
                said.add(n.words);
            }
        }
    }

    /** Spots along a line; words do not stick out of the outline that they name. */
    private static List<Labels.Spot> within(Labels labels, Name n, double off, double size) {
        List<Labels.Spot> spots = labels.along(n.along, n.closed, off);
        if (!n.closed) {
            return spots;
        }
        Box room = Box.around(n.along).grown(off + size);
        return spots.stream()
                .filter(s -> room.contains(labels.extent(n.words, s, TextStyle.LABEL)))
                .toList();
    }

    /** At a free spot where the words cover no other part that is named; where there is none, at any free one. */
    private static boolean place(Labels labels, String words, List<Labels.Spot> spots, List<Box> others) {
        List<Labels.Spot> off = spots.stream()
                .filter(s -> {
                    Box b = labels.extent(words, s, TextStyle.LABEL);
                    return others.stream().noneMatch(b::touches);
                })
                .toList();
        return labels.place(words, off, TextStyle.LABEL) || labels.place(words, spots, TextStyle.LABEL);
    }
}
