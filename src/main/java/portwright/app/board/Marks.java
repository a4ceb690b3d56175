package portwright.app.board;

import portwright.geometry.Pt;

/** What the hand has laid on the board: snap and measure modes, the caught thing, the two measured points. */
final class Marks {
    boolean snap = true;
    boolean measuring;
    boolean region = true;
    boolean centreToCentre;
    /** Name of the part the hand drags; null when none. */
    String dragged;
    /** What the dragged part caught on; null when nothing. */
    String caught;
    /** Part under the pointer, for its numbers. */
    String hovered;

    Pt hoverAt;
    Pt measureA;
    Pt measureB;
    String measureNameA;
    String measureNameB;
    double radiusA;
    double radiusB;

    void clearMeasure() {
        measureA = null;
        measureB = null;
    }
}
