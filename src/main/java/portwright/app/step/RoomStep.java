package portwright.app.step;

import portwright.app.doc.Document;
import portwright.form.FormSpec;

/** Room step: the room, and the people in it. */
public final class RoomStep extends FormStep {
    public RoomStep(Document doc, FormSpec... specs) {
        super(doc, new RoomBoard(doc), specs);
    }
}
