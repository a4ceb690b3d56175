package portwright.app.step;

import portwright.app.doc.Document;
import portwright.app.doc.FormSpec;

/** Firing step: forecast and steps. */
public final class FiringStep extends FormStep {
    public FiringStep(Document doc, FormSpec... specs) {
        super(doc, new FiringBoard(doc), specs);
    }
}
