package portwright.app.part;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import portwright.app.doc.Offers.Offer;

/** A field that is no field of the design: takes a text or says what is wrong with it. */
public final class PlainField extends VBox implements Typed {
    private final TextField input = new TextField();
    private final Label aside = new Label();
    private final Label note = new Label();
    private final HBox box = new HBox(input, aside);
    private final Function<String, String> take;
    private final Supplier<String> words;
    /** What it held when it got the keys. */
    private String before = "";
    /** What is in use as written, shown once it is taken; null leaves what was typed. */
    private Supplier<String> taken;

    /**
     * @param take answers what is wrong, else null
     * @param words shown at the right end
     */
    public PlainField(String label, String text, Function<String, String> take, Supplier<String> words) {
        this.take = take;
        this.words = words;
        setSpacing(3);
        Label name = new Label(label);
        name.getStyleClass().add("field-name");
        name.setMinWidth(86);
        name.setMaxWidth(86);
        name.setWrapText(true);
        name.setLabelFor(input);
        input.setText(text);
        input.setAccessibleText(label);
        input.setOnAction(e -> take());
        input.focusedProperty().addListener((o, was, is) -> {
            if (is) {
                before = input.getText();
            } else {
                take();
            }
        });
        input.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                input.setText(before);
            }
        });
        HBox.setHgrow(input, Priority.ALWAYS);
        aside.getStyleClass().add("aside");
        aside.setMinWidth(USE_PREF_SIZE);
        aside.setText(words.get());
        box.getStyleClass().add("field");
        FieldRing.round(box, input);
        box.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(box, Priority.ALWAYS);
        HBox row = new HBox(4, name, box);
        row.setAlignment(Pos.CENTER_LEFT);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        note.setMinHeight(USE_PREF_SIZE);
        note.setMouseTransparent(true);
        getChildren().add(row);
    }

    /**
     * Shows an example while it is empty, and what was taken as it stands in the file.
     *
     * @param wanted the example
     * @param inUse what is in use
     */
    public PlainField hinted(String wanted, Supplier<String> inUse) {
        input.setPromptText(wanted);
        taken = inUse;
        return this;
    }

    /** Offers values to choose from beside the free text. */
    public PlainField offering(List<Offer> offers) {
        MenuButton list = OfferList.of(input.getAccessibleText(), offers, v -> {
            input.setText(v);
            take();
        });
        box.getChildren().add(list);
        OfferList.downFrom(input, list);
        return this;
    }

    @Override
    public void take() {
        String wrong = take.apply(input.getText());
        if (wrong == null && taken != null && !taken.get().equals(input.getText())) {
            input.setText(taken.get());
        }
        say(wrong);
    }

    /** Shows what is wrong with what stands in it; null for nothing. */
    public void say(String wrong) {
        box.getStyleClass().remove("wrong");
        getChildren().remove(note);
        if (wrong != null) {
            box.getStyleClass().add("wrong");
            note.setText(wrong);
            getChildren().add(note);
        }
        aside();
    }

    /** Shows the value in use in the place of an entry that was given up. */
    public void giveUp(String good) {
        if (getChildren().contains(note) && !input.getText().equals(good)) {
            input.setText(good);
            take();
        }
    }

    /** Shows the value in use, unless somebody is typing or what was typed is wrong. */
    public void show(String inUse) {
        if (!input.isFocused() && !getChildren().contains(note)) {
            input.setText(inUse);
        }
    }

    /** Gives it the keys. */
    public void grab() {
        input.requestFocus();
    }

    /** Shows the words at the right end anew. */
    public void aside() {
        aside.setText(words.get());
    }
}
