package portwright.app;

import javafx.scene.layout.Region;
import portwright.app.doc.Catalog;
import portwright.app.doc.Document;
import portwright.app.doc.Step;
import portwright.app.step.FormStep;
import portwright.app.step.StepView;

/** Makes the steps beyond Kiln and Ports. */
final class Steps {
    private Steps() {}

    static StepView make(Document doc, Step step) {
        return switch (step) {
            case GAS -> new FormStep(doc, new Region(), Catalog.burners(), Catalog.damper());
            case ROOM -> new FormStep(doc, new Region(), Catalog.room(), Catalog.supply());
            case FIRING -> new FormStep(doc, new Region(), Catalog.firing());
            default -> new FormStep(doc, new Region());
        };
    }
}
