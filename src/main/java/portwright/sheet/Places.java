package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import portwright.drawing.Box;
import portwright.drawing.Traces;

/** Room for words on one sheet: between the lines of the drawing and off one another. */
final class Places {
    private final Traces traces;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> closed = new ArrayList<>();
    private final List<Box> shunned = new ArrayList<>();

    Places(Traces traces) {
        this.traces = traces;
    }

    void take(Box box) {
        taken.add(box);
    }

    /** Nothing goes into the first box, and into the second only where there is no room elsewhere; labels may. */
    void shun(Box hole, Box round) {
        closed.add(hole);
        shunned.add(round);
    }

    /** What words and marks have taken. */
    List<Box> taken() {
        return taken;
    }

    /** Takes the first box that no line crosses, else the first that only joints, axes and hatching cross, else the first at all; null when there is none. */
    Box first(List<Box> boxes) {
        List<Box> apart =
                boxes.stream().filter(b -> off(b, taken) && off(b, closed)).toList();
        List<Predicate<Box>> wishes =
                List.of(b -> traces.free(b) && off(b, shunned), traces::free, traces::breakable, b -> true);
        Box found = wishes.stream()
                .flatMap(w -> apart.stream().filter(w).limit(1))
                .findFirst()
                .orElse(null);
        if (found != null) {
            take(found);
        }
        return found;
    }

    /** Whether only joints, axes and hatching cross it, which may be broken behind words. */
    boolean breakable(Box box) {
        return traces.breakable(box);
    }

    /** Whether hatching crosses it that may be broken behind words. */
    boolean hatched(Box box) {
        return traces.hatched(box);
    }

    private static boolean off(Box b, List<Box> others) {
        return others.stream().noneMatch(b::touches);
    }
}
