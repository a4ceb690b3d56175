package portwright.app.part;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.Font;
import portwright.app.doc.FieldHelp;
import portwright.app.doc.FieldModel;
import portwright.app.doc.Offers;
import portwright.app.doc.OnTemplate;
import portwright.app.paint.Fonts;
import portwright.app.paint.TextSizes;
import portwright.form.FieldSpec.Type;
import portwright.units.Unbroken;

/** A field of a ticket: name at the left, box with typed text and the other system at its right end; what is wrong stands below it. */
public final class FieldBox extends Steady implements Typed {
    private static final Font TYPED = Fonts.sans(15);
    private static final Font ASIDE = Fonts.sans(12.5);
    /** What a field keeps beside words: its paddings; the mark of a starter's value, px. */
    private static final double ENDS_PX = 32;

    private static final double MARK_PX = 22;

    private final FieldModel model;
    private final HBox box = new HBox();
    private final Label aside = new Label();
    private final Label note = new Label();
    private final Label remark = new Label();
    private final Button mark = new Button("◇");
    private TextInputControl input;
    private ComboBox<String> choice;
    private boolean filling;
    /** Whether somebody wrote into the field since it last showed the design: only that is taken. */
    private boolean written;

    public FieldBox(FieldModel model) {
        super(3);
        this.model = model;
        Label name = new Label(model.spec().label());
        name.getStyleClass().add("field-name");
        name.setMinWidth(86);
        name.setMaxWidth(86);
        name.setWrapText(true);
        name.setPrefWidth(86);
        name.setMinHeight(USE_PREF_SIZE);
        box.getStyleClass().add("field");
        box.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(box, Priority.ALWAYS);
        box.setMinWidth(0);
        Control control = control();
        HBox.setHgrow(control, Priority.ALWAYS);
        control.setMinWidth(40);
        FieldRing.round(box, control);
        name.setLabelFor(control);
        control.setAccessibleText(model.spec().label());
        String help = FieldHelp.of(model.path());
        if (help != null) {
            name.setTooltip(tip(help));
            control.setTooltip(tip(help));
            control.setAccessibleHelp(help);
        }
        aside.getStyleClass().add("aside");
        aside.setMinWidth(USE_PREF_SIZE);
        aside.setMouseTransparent(true);
        note.setMouseTransparent(true);
        box.setOnMousePressed(e -> control(true));
        box.getChildren().addAll(control, aside);
        Offers.of(model.spec().key()).ifPresent(o -> {
            MenuButton list = OfferList.of(model.spec().label(), o.all(), v -> {
                input.setText(v);
                take();
            });
            box.getChildren().add(list);
            OfferList.downFrom(input, list);
        });
        box.getChildren().add(mark());
        remark.getStyleClass().add("field-remark");
        remark.setWrapText(true);
        remark.setMinHeight(USE_PREF_SIZE);
        remark.setMouseTransparent(true);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        note.setMinHeight(USE_PREF_SIZE);
        HBox row = new HBox(4, name, box);
        row.setAlignment(
                model.spec().type() == Type.PLACES || model.spec().type() == Type.LONG_TEXT
                        ? Pos.TOP_LEFT
                        : Pos.CENTER_LEFT);
        getChildren().add(row);
        refresh();
        box.widthProperty().addListener(o -> makeRoom());
    }

    private static Tooltip tip(String words) {
        Tooltip t = new Tooltip(words);
        t.setWrapText(true);
        t.setMaxWidth(320);
        return t;
    }

    /** Says that the value is the starter's; tapped, that it is right all the same. */
    private Button mark() {
        mark.getStyleClass().setAll("borrowed-mark");
        mark.setFocusTraversable(false);
        mark.setMinWidth(USE_PREF_SIZE);
        mark.setAccessibleText("still the starter's: tap when it is right for your kiln");
        mark.setTooltip(tip(
                "The starter's value, not measured on your kiln. Type yours; if this one is right, press Enter in the"
                        + " field or tap the mark. "
                        + OnTemplate.words(model.path())));
        mark.setOnAction(e -> {
            model.confirm();
            refreshNow();
        });
        return mark;
    }

    /** Somebody picked a word, the same again or another: it is the user's own now. */
    private void picked(String word) {
        if (!filling) {
            model.commit(word == null ? "" : word);
            refresh();
        }
    }

    private Control control() {
        Type type = model.spec().type();
        if (type == Type.CHOICE || type == Type.YES_NO) {
            choice = ChoiceBoxes.of(model.spec(), this::picked);
            return choice;
        }
        if (type == Type.PLACES || type == Type.LONG_TEXT) {
            TextArea area = new TextArea();
            area.setPrefRowCount(3);
            area.setWrapText(true);
            box.getStyleClass().add("tall");
            input = area;
        } else {
            input = new TextField();
        }
        input.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take();
            }
        });
        input.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && !(input instanceof TextArea)) {
                take();
                if (model.error() == null) {
                    model.confirm();
                    refreshNow();
                }
                e.consume();
            } else if (e.getCode() == KeyCode.TAB && input instanceof TextArea && !e.isControlDown()) {
                // a box of several lines would write it; with Control it goes on to the next field
                e.consume();
                input.fireEvent(
                        new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, e.isShiftDown(), true, false, false));
            } else if (e.getCode() == KeyCode.ESCAPE) {
                // goes on to the window, which gives the keys back to the board
                model.revert();
                refreshNow();
            }
        });
        input.textProperty().addListener((o, a, b) -> {
            if (!filling) {
                written = true;
                aside(model.aside(b == null ? "" : b));
                box.getStyleClass().remove("wrong");
            }
        });
        return input;
    }

    @Override
    public void take() {
        if (input == null) {
            return;
        }
        if (written) {
            written = false;
            model.commit(input.getText() == null ? "" : input.getText());
        }
        refreshNow();
    }

    /**
     * What is being typed and not taken yet.
     *
     * @param words as they stand
     * @param anchor where the selection begins
     * @param caret where it goes on
     */
    record Typing(String words, int anchor, int caret) {}

    /** Hands over what is being typed, for the field that is built in its place: this one takes nothing more. Null while nothing is. */
    Typing typing() {
        if (input == null || !written || !input.isFocused()) {
            return null;
        }
        written = false;
        return new Typing(input.getText(), input.getAnchor(), input.getCaretPosition());
    }

    /** Goes on with what was being typed; does nothing for null. */
    void resume(Typing t) {
        if (t != null && input != null) {
            input.setText(t.words());
            input.selectRange(t.anchor(), t.caret());
            written = true;
        }
    }

    /** Shows the model; leaves a field alone that someone is typing in. */
    public void refresh() {
        if (input != null && input.isFocused()) {
            return;
        }
        refreshNow();
    }

    private void refreshNow() {
        filling = true;
        written = false;
        String shown = model.shown();
        if (choice != null) {
            choice.setValue(shown);
        } else if (!shown.equals(input.getText())) {
            input.setText(shown);
        }
        filling = false;
        if (input != null) {
            input.setPromptText(model.hint());
        }
        boolean wrong = model.error() != null;
        box.getStyleClass().remove("wrong");
        if (wrong) {
            box.getStyleClass().add("wrong");
        }
        mark.setVisible(!wrong && model.borrowed());
        mark.setManaged(mark.isVisible());
        aside(wrong ? "" : model.aside());
        getChildren().removeAll(note, remark);
        remark.setText(Unbroken.words(model.remark()));
        if (!wrong && !remark.getText().isEmpty()) {
            getChildren().add(remark);
        }
        if (wrong) {
            String good = model.good();
            note.setText(Unbroken.words(model.error()
                    + (good.isEmpty() ? " The field stays empty." : " Last good value stays in use: " + good + ".")));
            getChildren().add(note);
        }
    }

    private void aside(String words) {
        aside.setText(words);
        makeRoom();
    }

    /** The other system gives way where it would cover what was typed. */
    private void makeRoom() {
        double typed = input == null ? 0 : TextSizes.width(input.getText() == null ? "" : input.getText(), TYPED);
        double room = box.getWidth() - ENDS_PX - (mark.isManaged() ? MARK_PX : 0) - typed;
        boolean on =
                !aside.getText().isEmpty() && (box.getWidth() == 0 || TextSizes.width(aside.getText(), ASIDE) < room);
        aside.setVisible(on);
        aside.setManaged(on);
    }

    public FieldModel model() {
        return model;
    }

    /** The control that takes the keys. */
    public Control control(boolean focus) {
        Control c = choice != null ? choice : input;
        if (focus) {
            c.requestFocus();
        }
        return c;
    }
}
