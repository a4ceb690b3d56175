package portwright.app;

import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.PaperChoice;
import portwright.app.doc.PaperModel;
import portwright.app.doc.PrinterBars;
import portwright.app.doc.Step;
import portwright.app.step.FiringStep;
import portwright.app.step.GasStep;
import portwright.app.step.PaperStep;
import portwright.app.step.RoomStep;
import portwright.app.step.StepView;
import portwright.form.Catalog;

/** Makes the steps beyond Kiln and Ports. */
final class Steps {
    private Steps() {}

    static StepView make(Document doc, HomeFolder home, Step step) {
        return switch (step) {
            case GAS -> new GasStep(doc, Catalog.burners(), Catalog.supply(), Catalog.damper());
            case ROOM -> new RoomStep(doc, Catalog.room());
            case FIRING -> new FiringStep(doc, Catalog.firing());
            default ->
                new PaperStep(
                        doc,
                        new PaperModel(doc, PaperChoice.of(home), javafx.application.Platform::runLater)
                                .measured(PrinterBars.of(home)),
                        home);
        };
    }
}
