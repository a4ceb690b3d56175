package portwright.app.step;

import portwright.app.doc.Document;
import portwright.app.doc.FindingOrder;
import portwright.app.part.SlipView;
import portwright.check.Verdict;

/** Says that a template prints, and whether that means that drilling is proven. */
final class PrintSlip {
    private static final String STRIKES = "A stop strikes every sheet through and takes the awl dots off.";

    private PrintSlip() {}

    static SlipView of(Document doc) {
        return FindingOrder.known(doc) && doc.result().drilling() != Verdict.INCOMPLETE
                ? SlipView.clear("No stop: the template prints", STRIKES, null)
                : SlipView.unchecked(
                        "The template prints; not all is checked",
                        "No stop was found that forbids drilling, but it is not proven that you may drill: see what was not checked. "
                                + STRIKES);
    }
}
