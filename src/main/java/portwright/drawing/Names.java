package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Pt;

/** Words for what a part painter has painted, to be placed once everything else lies on the picture. */
final class Names {
    private final List<Name> names = new ArrayList<>();

    /** @param near the words stand in or beside it; where it is null they run along the line */
    private record Name(String words, List<Pt> along, boolean closed, Box near) {}

    void along(String words, List<Pt> line, boolean closed) {
        names.add(new Name(words, line, closed, null));
    }

    void near(String words, Box box) {
        names.add(new Name(words, null, false, box));
    }

    /** Writes each once in this window, where there is room. */
    void write(Pen pen, Box window, Labels labels) {
        List<String> said = new ArrayList<>();
        double off = pen.size(1.2, 4);
        for (Name n : names) {
            if (n.near != null) {
                if (window.touches(n.near)) {
                    List<Labels.Spot> spots = labels.near(n.near);
                    boolean inside = pen.textWidth(n.words, TextStyle.LABEL) < n.near.width() - off;
                    labels.place(n.words, inside ? spots : spots.subList(1, spots.size()), TextStyle.LABEL);
                }
            } else if (!said.contains(n.words)
                    && labels.place(n.words, labels.along(n.along, n.closed, off), TextStyle.LABEL)) {
                said.add(n.words);
            }
        }
    }
}
