package portwright.app.frame;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** A board that needs more room than a small window has is scrolled, not squeezed. */
final class BoardScroll extends ScrollPane {
    private static final double LEAST_WIDTH = 560;
    private static final double LEAST_HEIGHT = 420;

    BoardScroll(Node board) {
        super(board);
        if (board instanceof Region r && r.getMinHeight() < 0) {
            r.setMinSize(LEAST_WIDTH, LEAST_HEIGHT);
        }
        setFitToWidth(true);
        setFitToHeight(true);
        getStyleClass().add("board-scroll");
    }
}
