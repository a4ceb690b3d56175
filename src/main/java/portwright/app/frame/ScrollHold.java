package portwright.app.frame;

import java.util.Comparator;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * Keeps what is under the hand where it is: when something above an anchor comes, goes or takes another height, the place of the scroll follows,
 * so that the next click does not hit a neighbour. Where nothing is left to scroll, room is kept above until the mouse leaves.
 */
final class ScrollHold {
    private static final double TOP_PX = 4;
    /** Room left over a node that is scrolled to, px. */
    private static final double SEEN_PX = 40;

    /** What is to be seen of a part below its beginning, px. */
    private static final double BELOW_PX = 160;

    private final ScrollPane pane;
    private final Region content;
    private final Region anchor;
    private final Pane slips;
    private double roomPx;
    private boolean free = true;
    private boolean laying;

    /**
     * @param anchor child of the content that keeps its place
     * @param slips column in it: the one of its children that lies under the mouse keeps its place before the anchor does
     */
    ScrollHold(ScrollPane pane, Region content, Region anchor, Pane slips) {
        this.slips = slips;
        this.pane = pane;
        this.content = content;
        this.anchor = anchor;
        room(0);
        pane.setOnMouseExited(e -> {
            if (roomPx > 0) {
                letGo(Math.max(0, px() - roomPx));
            }
        });
        pane.vvalueProperty().addListener((o, a, b) -> {
            if (!laying && roomPx > 0 && px() >= roomPx) {
                room(0);
            }
        });
    }

    /** Goes to the top with the next layout, whatever comes there. */
    void top() {
        letGo(0);
    }

    /** Scrolls to a node of the content and puts the keys there. */
    void show(Node n) {
        begin(n);
        n.requestFocus();
    }

    /** What puts the scroll back to where it is now. */
    Runnable place() {
        double px = px() - roomPx;
        return () -> letGo(px);
    }

    /** Scrolls to the beginning of a node of the content; the keys stay where they are. */
    void begin(Node n) {
        pane.applyCss();
        pane.layout();
        letGo(topOf(n) - SEEN_PX);
    }

    /** Scrolls to a node of the content unless its beginning is in sight with some of what follows. */
    void see(Node n) {
        pane.applyCss();
        pane.layout();
        double top = topOf(n);
        double room = pane.getViewportBounds().getHeight();
        if (top < px() || top > px() + room - Math.min(BELOW_PX, room / 2)) {
            letGo(top - SEEN_PX);
        }
    }

    /** Goes to the first text field at or below a row, in the tickets. */
    void edit(Node row) {
        pane.applyCss();
        pane.layout();
        double top = topOf(row);
        anchor.lookupAll(".text-field").stream()
                .filter(n -> topOf(n) >= top)
                .min(Comparator.comparingDouble(this::topOf))
                .ifPresent(this::show);
    }

    private double topOf(Node n) {
        return content.sceneToLocal(n.localToScene(n.getBoundsInLocal())).getMinY();
    }

    private void letGo(double px) {
        free = true;
        room(0);
        to(px);
        pane.requestLayout();
    }

    private void room(double px) {
        roomPx = px;
        content.setPadding(new Insets(TOP_PX + px, 6, 10, 4));
    }

    /** Lays out; what is under the mouse, or the anchor, stays where it is seen. */
    void around(Runnable layout) {
        Node held = slips.getChildren().stream()
                .filter(n -> n.isManaged() && n.isHover())
                .findFirst()
                .orElse(anchor);
        Node under = held == anchor ? under(anchor) : null;
        double was = y(held) - px();
        double wasUnder = under == null ? 0 : topOf(under) - px();
        laying = true;
        layout.run();
        content.layout();
        if (!free) {
            boolean there = under != null && FocusIn.within(under, content);
            double px = there ? topOf(under) - wasUnder : y(held) - was;
            if (px < 0 && pane.isHover()) {
                room(roomPx - px);
                layout.run();
                content.layout();
                px = 0;
            }
            to(px);
        }
        free = false;
        laying = false;
    }

    /** The button of a form under the mouse; null where there is none. */
    private static Node under(Parent in) {
        for (Node n : in.getChildrenUnmodifiable()) {
            if (n.isHover() && n.isManaged()) {
                return n instanceof Button ? n : n instanceof Parent p ? under(p) : null;
            }
        }
        return null;
    }

    private double y(Node n) {
        return n == anchor ? n.getLayoutY() : slips.getLayoutY() + n.getLayoutY();
    }

    private double range() {
        return content.getHeight() - pane.getViewportBounds().getHeight();
    }

    /** How far the content is scrolled, px. */
    private double px() {
        return pane.getVvalue() * Math.max(0, range());
    }

    private void to(double px) {
        pane.setVvalue(value(px, range()));
    }

    /** Value of a scroll bar from 0 to 1 for a place; nothing to scroll is 0. */
    static double value(double px, double rangePx) {
        return rangePx <= 0 ? 0 : Math.max(0, Math.min(1, px / rangePx));
    }
}
