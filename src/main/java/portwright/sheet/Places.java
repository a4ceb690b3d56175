package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.Box;
import portwright.drawing.Traces;

/** Room for words on one sheet: between the lines of the drawing and off one another. */
final class Places {
    private final Traces traces;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> shunned = new ArrayList<>();

    Places(Traces traces) {
        this.traces = traces;
    }

    void take(Box box) {
        taken.add(box);
    }

    /** Nothing goes there, though labels may. */
    void shun(Box box) {
        shunned.add(box);
    }

    /** What words and marks have taken. */
    List<Box> taken() {
        return taken;
    }

    /** Takes the first box that no line crosses, else the first that only joints, axes and hatching cross, else the first at all; null when there is none. */
    Box first(List<Box> boxes) {
        List<Box> apart = boxes.stream()
                .filter(b ->
                        taken.stream().noneMatch(b::touches) && shunned.stream().noneMatch(b::touches))
                .toList();
        Box found = apart.stream()
                .filter(traces::free)
                .findFirst()
                .or(() -> apart.stream().filter(traces::breakable).findFirst())
                .or(() -> apart.stream().findFirst())
                .orElse(null);
        if (found != null) {
            take(found);
        }
        return found;
    }
}
