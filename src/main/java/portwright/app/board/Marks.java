package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import portwright.check.Finding;
import portwright.geometry.Pt;

/** What the hand has laid on the board: snap and measure modes, the caught thing, the two measured ends. */
final class Marks {
    boolean snap = true;
    boolean measuring;
    boolean region = true;
    boolean centreToCentre;
    /** Name of the part the hand drags; null when none. */
    String dragged;
    /** What the dragged part caught on; null when nothing. */
    String caught;
    /** Flags of stops as painted last. */
    final List<StopPainter.Flag> flags = new ArrayList<>();
    /** What a click on one does. */
    Consumer<Finding> onFlag = f -> {};
    /** Part under the pointer, for its numbers. */
    String hovered;

    /** Why the last key did nothing; empty when it did something. */
    String refused = "";

    /** Where the pointer is, px; null beside the board. */
    Pt hoverAt;

    /** Where measuring begins and ends; null before they are tapped. */
    End from;

    End to;
    /** Where the pointer would end it. */
    End reach;

    /**
     * One end of a measure.
     *
     * @param at mm in the picture
     * @param radiusMm of the hole that was tapped; 0 on plain ground
     */
    record End(Pt at, double radiusMm) {}

    /** Takes a tapped end: the first, the second, or the first of the next measure. */
    void tap(End end) {
        boolean first = from == null || to != null;
        from = first ? end : from;
        to = first ? null : end;
        reach = null;
    }

    /** What measuring waits for, or why a key did nothing; empty when there is nothing to tell. */
    String words() {
        if (!measuring) {
            return refused;
        }
        String ends = centreToCentre ? "centre to centre" : "edge to edge";
        String tap = from == null ? "Tap the first point." : to == null ? "Tap the second point." : "Tap to go on.";
        return "Measuring " + ends + ". " + tap + " Tab: " + (centreToCentre ? "edges" : "centres") + ". Esc: ends.";
    }

    void clearMeasure() {
        from = null;
        to = null;
        reach = null;
    }
}
