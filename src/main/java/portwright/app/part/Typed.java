package portwright.app.part;

import javafx.scene.Node;
import javafx.scene.Scene;

/** A field into which somebody may be typing. */
public interface Typed {
    /** Takes what stands in it, or says what is wrong with it. */
    void take();

    /** Takes what stands in the field that has the keys, as if they had left it; does nothing without a scene. */
    static void takeIn(Scene scene) {
        for (Node n = scene == null ? null : scene.getFocusOwner(); n != null; n = n.getParent()) {
            if (n instanceof Typed t) {
                t.take();
                return;
            }
        }
    }
}
