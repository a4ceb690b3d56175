package portwright.app.frame;

import portwright.app.part.SlipView;

/** The slip of a step without findings; the same one as long as it says the same. */
final class NothingHere {
    private int here = -1;
    private int all = -1;
    private SlipView slip;

    /**
     * What it says as things stand.
     *
     * @param open rules of this step that lack input
     * @param whole rules of all steps that lack input
     */
    SlipView of(int open, int whole) {
        if (open != here || whole != all) {
            here = open;
            all = whole;
            slip = open > 0 ? SlipView.unchecked(open) : SlipView.nothing(whole);
        }
        return slip;
    }
}
