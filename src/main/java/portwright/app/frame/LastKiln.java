package portwright.app.frame;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.event.ActionEvent;
import portwright.app.doc.HomeFolder;
import portwright.app.part.SlipView;

/** Offers the kiln that was open last when the window starts with the example. */
final class LastKiln {
    private LastKiln() {}

    /** Nothing is said where no file was opened yet, or it is gone. */
    static void offer(HomeFolder home, Notices notices, Consumer<Path> open) {
        home.recent().stream().findFirst().ifPresent(p -> {
            SlipView offer = SlipView.note(
                    "Your last kiln",
                    p.getFileName() + ", in " + p.getParent() + ". Others: the menu under the title, Recent.",
                    Notices.button("Open it", () -> open.accept(p)));
            notices.add(offer);
            offer.setOnMouseClicked(e -> notices.remove(offer));
            offer.addEventHandler(ActionEvent.ACTION, e -> notices.remove(offer));
        });
    }
}
