package portwright.app.frame;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import portwright.app.doc.OwnMeasures;
import portwright.app.part.PlainChoice;
import portwright.app.part.PlainField;
import portwright.file.DesignText;
import portwright.geometry.KilnGeometry;
import portwright.model.UnitSystem;

/** Asks for the measures of a kiln that is none of the starters; its plan is drawn as soon as it can be. */
final class OwnForm extends VBox {
    private static final double FIELDS_PX = 460;
    private static final double PLAN_PX = 300;

    private final OwnMeasures model;
    private final Supplier<String> title;
    private final Consumer<DesignText> take;
    private final VBox column = new VBox(6);
    private final Map<String, PlainField> fields = new LinkedHashMap<>();
    private final Map<String, ComboBox<String>> choices = new HashMap<>();
    private final StarterThumb plan = new StarterThumb(null, PLAN_PX, PLAN_PX);
    private final Label wrong = words("field-note");

    /**
     * @param title the kiln's name; null while there is none, after saying so
     * @param take hears the finished design
     * @param back leads to the starters
     */
    OwnForm(OwnMeasures model, Supplier<String> title, Consumer<DesignText> take, Runnable back) {
        super(8);
        this.model = model;
        this.title = title;
        this.take = take;
        Label first = words("muted");
        first.setText(
                "Measure inside, from hot face to hot face. What you do not write here stays unknown and is listed"
                        + " as not checked. Elements, fittings, brick joints and ports come next, on the board.");
        column.setMaxWidth(FIELDS_PX);
        column.setPrefWidth(FIELDS_PX);
        HBox both = new HBox(24, column, plan);
        both.setAlignment(Pos.TOP_LEFT);
        ScrollPane scroll = new ScrollPane(both);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Button other = Notices.button("Back to the starters", back);
        other.setMinHeight(44);
        Button make = new Button("Make this kiln");
        make.getStyleClass().setAll("main-button");
        make.setMinHeight(USE_PREF_SIZE);
        make.setOnAction(e -> make());
        HBox end = new HBox(8, make, other);
        end.setAlignment(Pos.CENTER_LEFT);
        wrong.managedProperty().bind(wrong.textProperty().isNotEmpty());
        getChildren().addAll(first, scroll, wrong, end);
        build();
    }

    /** Gives the first field the keys. */
    void begin() {
        fields.values().iterator().next().grab();
    }

    private static Label words(String style) {
        Label l = new Label();
        l.getStyleClass().addAll(style, "small");
        l.setWrapText(true);
        l.setMinHeight(Region.USE_PREF_SIZE);
        return l;
    }

    private void build() {
        fields.clear();
        column.getChildren()
                .setAll(
                        chooser(
                                "units",
                                List.of(UnitSystem.values()).stream()
                                        .map(UnitSystem::id)
                                        .toList(),
                                model.units().id(),
                                w -> model.units(UnitSystem.INCH.id().equals(w) ? UnitSystem.INCH : UnitSystem.METRIC)),
                        chooser("plan", OwnMeasures.SHAPES, model.shape(), model::shape));
        for (OwnMeasures.Ask ask : model.asks()) {
            PlainField f = new PlainField(ask.label(), model.typed(ask), t -> put(ask, t), () -> model.aside(ask))
                    .hinted(model.hint(ask), () -> model.typed(ask));
            fields.put(ask.path(), f);
            column.getChildren().add(f);
            if (!model.remark(ask).isEmpty()) {
                Label remark = words("muted");
                remark.setText(model.remark(ask));
                column.getChildren().add(remark);
            }
        }
        draw();
    }

    private javafx.scene.Node chooser(String label, List<String> words, String now, Consumer<String> chosen) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(words);
        box.setValue(now);
        box.valueProperty().addListener((o, a, b) -> {
            chosen.accept(b);
            build();
            // built anew: without that the keys fall to the name, all of it chosen
            choices.get(label).requestFocus();
        });
        choices.put(label, box);
        return PlainChoice.row(label, box);
    }

    private String put(OwnMeasures.Ask ask, String typed) {
        String no = model.put(ask, typed);
        wrong.setText("");
        draw();
        return no;
    }

    private void draw() {
        DesignText text = model.make("own").text();
        plan.show(text == null ? null : KilnGeometry.of(text.read().design()));
    }

    private void make() {
        String name = title.get();
        if (name == null) {
            return;
        }
        OwnMeasures.Made made = model.make(name);
        fields.forEach((path, field) -> field.say(made.wrong().get(path)));
        wrong.setText(made.wrong().getOrDefault("", ""));
        made.wrong().keySet().stream()
                .map(fields::get)
                .filter(f -> f != null)
                .findFirst()
                .ifPresent(PlainField::grab);
        if (made.text() != null) {
            take.accept(made.text());
        }
    }
}
