package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import portwright.app.doc.DamperPlan;
import portwright.app.doc.Document;
import portwright.app.part.Plain;
import portwright.app.part.Ticket;
import portwright.form.FormSpec;

/** Gas step: how the kiln is lit and the damper set in each step with gas, burners, the gas supply with its cylinder, the damper. */
public final class GasStep extends FormStep {
    private final Document doc;
    private final VBox rows = new VBox(5);
    private final Ticket plan = Ticket.of("Light, set damper", "from shut", rows);

    public GasStep(Document doc, FormSpec... specs) {
        super(doc, new GasBoard(doc), specs);
        this.doc = doc;
        plan.shown(false);
    }

    @Override
    public List<Node> tickets() {
        List<Node> all = new ArrayList<>(List.of(plan));
        all.addAll(super.tickets());
        return all;
    }

    @Override
    public void changed(Document.Change change) {
        super.changed(change);
        if (change == Document.Change.CHECK || change == Document.Change.DESIGN) {
            plan();
        }
    }

    private void plan() {
        List<DamperPlan> all =
                doc.extras().gas() == null ? List.of() : doc.extras().gas().plan();
        plan.shown(!all.isEmpty());
        plan.aside(doc.checking() ? "as it was" : "from shut");
        rows.getChildren().clear();
        var units = doc.design().units();
        if (!all.isEmpty()) {
            rows.getChildren().add(Plain.text(DamperPlan.first(doc)));
        }
        for (DamperPlan p : all) {
            Label head = Plain.text(p.head(units));
            head.getStyleClass().add("strong");
            rows.getChildren().add(new VBox(0, head, Plain.text(p.setting(units))));
        }
        rows.getChildren()
                .add(Plain.words(
                        "Between two lines the plate goes evenly from one to the other. Lambda in brackets: 5 to"
                                + " 95 %."));
    }
}
