package portwright.app.frame;

import java.util.function.Predicate;
import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.util.Duration;
import portwright.app.doc.Document;
import portwright.app.doc.OpenedFile;
import portwright.app.doc.Recovery;
import portwright.app.part.SlipView;

/** Keeps a copy of unsaved work under 1 s after the last edit, and offers what an earlier program left behind when it was killed. */
final class LeftWork {
    private final Document doc;
    private final OpenedFile file;
    private final Recovery recovery;
    private final Notices notices;
    private final PauseTransition pause = new PauseTransition(Duration.millis(700));

    LeftWork(Document doc, OpenedFile file, Recovery recovery, Notices notices) {
        this.doc = doc;
        this.file = file;
        this.recovery = recovery;
        this.notices = notices;
        pause.setOnFinished(e -> keep());
        doc.listen(c -> {
            if (c == Document.Change.DESIGN) {
                follow();
            }
        });
    }

    /** Work that is undone to what was saved needs no copy, and the one made of it is no longer true. */
    private void follow() {
        if (doc.unsaved()) {
            pause.playFromStart();
        } else {
            drop();
        }
    }

    private boolean keep() {
        return doc.unsaved()
                && recovery.keep(doc.text(), file.path(), doc.borrowed().starter());
    }

    /** Nothing more is written: the window is gone. */
    void rest() {
        pause.stop();
    }

    /** The work is saved or given up. */
    void drop() {
        rest();
        recovery.drop();
    }

    /** One slip for each piece of left work; {@code take} puts it on the board and answers whether it did. */
    void offer(Predicate<Recovery.Left> take) {
        for (Recovery.Left left : recovery.left()) {
            SlipView[] slip = new SlipView[1];
            Button open = Notices.button("Open it", () -> {
                if (take.test(left)) {
                    notices.remove(slip[0]);
                    if (keep()) {
                        Recovery.delete(left.copy());
                    }
                }
            });
            Button drop = Notices.button("Drop it", () -> {
                notices.remove(slip[0]);
                Recovery.delete(left.copy());
            });
            slip[0] = SlipView.caution(
                    "Unsaved work was left: " + (left.title().isEmpty() ? "a kiln without a title" : left.title()),
                    "Portwright ended without saving " + left.words() + ". It was changed last "
                            + (left.when().isEmpty() ? "at a time that is not known" : left.when()) + ".",
                    open,
                    drop);
            notices.add(slip[0]);
        }
    }
}
