package portwright.app.step;

import portwright.app.doc.Document;
import portwright.form.FormSpec;

/** Gas step: burners, the gas supply with its cylinder, the damper. */
public final class GasStep extends FormStep {
    public GasStep(Document doc, FormSpec... specs) {
        super(doc, new GasBoard(doc), specs);
    }
}
