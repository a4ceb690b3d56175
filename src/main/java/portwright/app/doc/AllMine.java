package portwright.app.doc;

import java.util.Set;

/** Says of all values of a step at once that they are the user's own: one step of the undo stack. */
public final class AllMine {
    private AllMine() {}

    /** All values of a step that are still the starter's are right. */
    public static void say(Document doc, Step step) {
        Borrowed borrowed = doc.borrowed();
        Set<String> keys = borrowed.keys(step);
        int n = borrowed.of(step).size();
        if (n > 0) {
            String name = step.word() + ": " + n + (n == 1 ? " value is mine" : " values are mine");
            Runnable back = () -> borrowed.takeBack(keys);
            Runnable again = () -> borrowed.confirm(keys);
            doc.undoStack().push(new Edit(name, doc.text(), doc.text(), back, again), null);
            borrowed.confirm(keys);
        }
    }
}
