package portwright.app.frame;

import portwright.app.part.SlipView;

/** Lines that say what to do with a kiln that is new on the board; they go with the first edit, in another step, and when they are closed. */
final class FirstLines {
    private FirstLines() {}

    /** Of the example that a first start shows. */
    static void ofExample(Notices notices) {
        add(
                notices,
                "This kiln is an example.",
                "Drag an inlet and watch the slips on the right.\nReady? Kiln step: measure yours.");
    }

    /** Of a kiln that begins as a starter. */
    static void ofStarter(Notices notices) {
        add(notices, "This kiln begins as the example.", """
                Kiln: type your own measures; what is not yours yet is marked ◇.
                Ports: drag the holes and watch the slips.
                Paper: print the template once nothing stops.""");
    }

    /** Of a kiln of its own measures. */
    static void ofOwn(Notices notices) {
        add(notices, "This kiln begins with what you measured.", """
                Kiln: add elements and fittings, or say that there are none; add the brick joints.
                Ports: press Ctrl+Shift+N for each hole.
                Paper: a list of what is still missing; each line leads to its field.""");
    }

    private static void add(Notices notices, String head, String words) {
        SlipView[] slip = new SlipView[1];
        slip[0] = SlipView.note(head, words, Notices.button("Close", () -> notices.remove(slip[0])));
        notices.addPassing(slip[0]);
    }
}
