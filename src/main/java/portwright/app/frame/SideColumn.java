package portwright.app.frame;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/**
 * The side, below it what the step pins there, then what was lost last. In a small window it is a drawer at the right of the board, or under it where
 * that would leave too little; a bar opens and shuts it, and what the window has to say opens it by itself.
 */
final class SideColumn {
    /** Height of the bar with its gap, px. */
    private static final double BAR_PX = 36;

    private static final double GAP_PX = 4;
    /** What the drawer takes of a high board, and at most, px. */
    private static final double SHARE = 0.4;

    private static final double MOST_PX = 260;
    /** The drawer is as high as that, px, while it leaves the board its least share. */
    private static final double USEFUL_PX = 210;

    private static final double LEAST_BOARD = 0.4;
    /** In less height than that, px, board and drawer are not seen together: the open drawer covers the board. */
    private static final double COVER_PX = 230;

    /** Breadth of the drawer at the right of the board, and what the board keeps beside it at least, px. */
    private static final double ASIDE_PX = 300;

    private static final double BOARD_PX = 380;

    private final Side side;
    private final StackPane pinned = new StackPane();
    private final Label words = new Label();
    private final Button bar = new Button();
    private boolean open;

    SideColumn(Side side, Pane view) {
        this.side = side;
        pinned.getStyleClass().add("pinned");
        Label key = new Label("F2");
        key.getStyleClass().add("key-cap");
        HBox line = new HBox(9, words, key);
        line.setAlignment(Pos.CENTER);
        bar.setGraphic(line);
        bar.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        bar.getStyleClass().setAll("plain-button", "drawer-bar");
        bar.setStyle("-fx-padding: 2 14 2 14;");
        bar.setOnAction(e -> turn());
        bar.setVisible(false);
        side.messages().getChildren().addListener((ListChangeListener<Node>) c -> {
            while (c.next()) {
                if (c.wasAdded()) {
                    open();
                }
            }
        });
        tell();
        view.getChildren().addAll(side, pinned, side.lost(), bar);
    }

    /** What the keys go through, in reading order. */
    List<Node> regions() {
        return List.of(bar, side, pinned, side.lost());
    }

    /** Shows what a step pins below the side; null for nothing. */
    void pin(Node n) {
        pinned.getChildren().clear();
        if (n != null) {
            pinned.getChildren().add(n);
        }
    }

    void open() {
        open = true;
        tell();
    }

    /** Opens or shuts the drawer. */
    void turn() {
        open = !open;
        tell();
    }

    /** Whether the side is seen: beside the board, or as an open drawer. */
    boolean shows() {
        return open || !bar.isVisible();
    }

    private void tell() {
        words.setText((open ? "▾  " : "▴  ") + "Fields and findings");
        bar.setAccessibleText((open ? "shut" : "open") + " fields and findings, F2");
        side.setVisible(shows());
        if (side.getParent() != null) {
            side.getParent().requestLayout();
        }
    }

    /** Lays it beside the board. */
    void beside(double x, double y, double w, double h) {
        bar.setVisible(false);
        side.setVisible(true);
        lay(x, y, w, h);
    }

    /** Whether board and open drawer have room beside each other. */
    static boolean hasRoom(double w) {
        return w - ASIDE_PX - GAP_PX >= BOARD_PX;
    }

    /** Lays the drawer at the right of the board and the bar below both; answers the breadth that it takes, px. */
    double aside(double x, double y, double w, double h) {
        bar.setVisible(true);
        side.setVisible(open);
        bar.resizeRelocate(x, y + h - BAR_PX + GAP_PX, w, BAR_PX - GAP_PX);
        lay(x + w - ASIDE_PX, y, ASIDE_PX, h - BAR_PX);
        return open ? ASIDE_PX + GAP_PX : 0;
    }

    /** Height of the bar with its gap, px. */
    static double barHeight() {
        return BAR_PX;
    }

    /** Lays it under the board, at the lower end of the room that both have; answers the height that it takes, px. */
    double under(double x, double y, double w, double h) {
        bar.setVisible(true);
        side.setVisible(open);
        double rest = h - BAR_PX;
        double some = Math.max(Math.min(SHARE * rest, MOST_PX), Math.min(USEFUL_PX, (1 - LEAST_BOARD) * rest));
        double drawer = !open ? 0 : rest < COVER_PX ? rest : some;
        bar.resizeRelocate(x, y + h - drawer - BAR_PX + GAP_PX, w, BAR_PX - GAP_PX);
        lay(x, y + h - drawer + GAP_PX, w, Math.max(0, drawer - GAP_PX));
        return drawer + BAR_PX;
    }

    private void lay(double x, double y, double w, double h) {
        Region lost = side.lost();
        double lostH = lost.isManaged() && side.isVisible() ? Math.min(h / 2, lost.prefHeight(w)) : 0;
        lost.setVisible(lostH > 0);
        double pinnedH = side.isVisible() ? Math.min((h - lostH) / 2, pinned.prefHeight(w)) : 0;
        pinned.setVisible(pinnedH > 0);
        pinned.resizeRelocate(x, y + h - lostH - pinnedH, w, pinnedH);
        side.resizeRelocate(x, y, w, h - lostH - pinnedH);
        lost.resizeRelocate(x, y + h - lostH, w, lostH);
    }
}
