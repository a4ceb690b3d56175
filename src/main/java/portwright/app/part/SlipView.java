package portwright.app.part;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import portwright.check.NotChecked;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.units.BothSystems;
import portwright.units.Unbroken;

/** A paper slip: sign, heading, words. Focusable; acts on click and Enter. */
public final class SlipView extends Steady {

    SlipView(Sign sign, String style, String head, Node... rest) {
        super(0);
        Label title = new Label(head);
        title.getStyleClass().add("slip-head");
        title.setWrapText(true);
        VBox words = new VBox(3, title);
        words.getChildren().addAll(rest);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        HBox row = new HBox(9, sign.draw(25), words);
        row.setAlignment(Pos.TOP_LEFT);
        row.getStyleClass().addAll("slip", style);
        getStyleClass().add("slip-ring");
        getChildren().add(row);
        setFocusTraversable(true);
        // not in the style sheet: a cursor that comes with the style has the whole window drawn anew
        setCursor(Cursor.HAND);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(sign.word() + ": " + head);
    }

    /** A slip that says something is clear. */
    public static SlipView clear(String head, String text, String source) {
        VBox body = new VBox(2);
        addText(body, text, "slip-text");
        if (source != null) {
            addText(body, source, "source-line");
        }
        return new SlipView(Sign.CLEAR, "slip-clear", head, body);
    }

    /** A plain note slip, with buttons. */
    public static SlipView note(String head, String text, Node... buttons) {
        return ofWindow(Sign.NOTE, "slip-note", head, text, buttons);
    }

    /** A slip of the window itself that keeps something from being done, with buttons. */
    public static SlipView stop(String head, String text, Node... buttons) {
        return ofWindow(Sign.UNREAD, "slip-stop", head, text, buttons);
    }

    /** A caution slip of the window itself, such as a file changed on disk, with buttons. */
    public static SlipView caution(String head, String text, Node... buttons) {
        return ofWindow(Sign.CAUTION, "slip-caution", head, text, buttons);
    }

    private static SlipView ofWindow(Sign sign, String style, String head, String text, Node... buttons) {
        VBox body = new VBox(6);
        addText(body, text, "slip-text");
        if (buttons.length > 0) {
            FlowPane row = new FlowPane(8, 6, buttons);
            body.getChildren().add(row);
        }
        return new SlipView(sign, style, head, body);
    }

    /** A slip of a rule that lacks input. */
    public static SlipView unchecked(NotChecked n, boolean inch, Runnable act) {
        String words = FieldNames.lacking(n);
        VBox body = new VBox(2);
        addText(body, "Not checked. " + (inch ? BothSystems.inchFirst(words) : words) + ".", "slip-text");
        SlipView s = new SlipView(Sign.UNCHECKED, "slip-unchecked", RuleWords.head(n.rule()), body);
        s.act(act);
        return s;
    }

    /** A slip of a step without findings where so many rules lack input: no sign that all is well. */
    public static SlipView unchecked(int rules) {
        VBox body = new VBox(2);
        addText(body, rules + (rules == 1 ? " rule" : " rules") + " not checked", "slip-text");
        return new SlipView(Sign.UNCHECKED, "slip-unchecked", "No stop or caution", body);
    }

    /** A slip of the window itself with the sign of what is not checked. */
    public static SlipView unchecked(String head, String text) {
        return ofWindow(Sign.UNCHECKED, "slip-unchecked", head, text);
    }

    /** A slip of a step with nothing to mend; all is well only where no rule of another step lacks input either. */
    public static SlipView nothing(int rules) {
        if (rules == 0) {
            return clear("Nothing to mend here", "No finding of this step.", null);
        }
        VBox body = new VBox(2);
        addText(body, rules + (rules == 1 ? " rule" : " rules") + " of other steps not checked yet", "slip-text");
        return new SlipView(Sign.UNCHECKED, "slip-unchecked", "Nothing to mend here", body);
    }

    /** Shows or hides the ring of the chosen slip. */
    public void chosen(boolean on) {
        if (!on) {
            getStyleClass().remove("chosen");
        } else if (!getStyleClass().contains("chosen")) {
            getStyleClass().add("chosen");
        }
    }

    /** Acts on click, Enter and space. */
    void act(Runnable run) {
        setOnMouseClicked(e -> {
            requestFocus();
            run.run();
        });
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                run.run();
                e.consume();
            }
        });
    }

    private static void addText(VBox box, String text, String style) {
        box.getChildren().add(text(text, style));
    }

    /** Words that wrap. */
    static Label text(String text, String style) {
        Label l = new Label(Unbroken.words(text));
        l.setWrapText(true);
        l.setMinHeight(USE_PREF_SIZE);
        l.getStyleClass().add(style);
        return l;
    }
}
