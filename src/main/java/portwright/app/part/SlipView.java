package portwright.app.part;

import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import portwright.app.doc.RuleWords;
import portwright.check.Finding;
import portwright.check.NotChecked;
import portwright.source.Standing;

/** A finding as a paper slip: sign, heading, gauge, words, source. Focusable; acts on click and Enter. */
public final class SlipView extends StackPane {
    private SlipView(Sign sign, String style, String head, Node... rest) {
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
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(sign.word() + ": " + head);
    }

    /** A slip of a finding. */
    public static SlipView of(Finding f, Consumer<Finding> act) {
        VBox body = new VBox(2);
        boolean gauge = f.measured() != null
                && f.limit() != null
                && f.measured().unit().equals(f.limit().unit())
                && Gauge.fits(f.measured().value(), f.limit().value());
        if (gauge) {
            body.getChildren()
                    .add(new Gauge(
                            f.measured().value(),
                            f.limit().value(),
                            f.measured().unit(),
                            f.severity(),
                            f.limitSetByUser()));
        }
        addText(body, f.message(), "slip-text");
        if (f.remedy() != null && !f.remedy().isBlank()) {
            addText(body, f.remedy(), "slip-text");
        }
        if (f.source() != null) {
            addText(body, source(f), "source-line");
        }
        String style = switch (f.severity()) {
            case STOP -> "slip-stop";
            case CAUTION -> "slip-caution";
            case NOTE -> "slip-note";
        };
        SlipView s = new SlipView(Sign.of(f.severity()), style, RuleWords.head(f.rule()), body);
        s.setAccessibleText(f.severity().id() + ": " + f.message() + " " + (f.remedy() == null ? "" : f.remedy()));
        s.setUserData(f);
        s.act(() -> act.accept(f));
        return s;
    }

    /** Source and standing in one line. */
    public static String source(Finding f) {
        Standing st = f.source().standing();
        String standing = switch (st) {
            case PUBLISHED -> "Published: " + f.source().title() + ".";
            case PRACTICE -> "Trade practice, no source.";
            case MEMORY -> f.source().title() + ", from memory.";
            case JUDGEMENT -> "Our own judgement.";
        };
        return f.limitSetByUser() ? "Your limit. " + standing : standing;
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

    /** A plain note slip. */
    public static SlipView note(String head, String text) {
        VBox body = new VBox(2);
        addText(body, text, "slip-text");
        return new SlipView(Sign.NOTE, "slip-note", head, body);
    }

    /** A caution slip of the window itself, such as a file changed on disk, with buttons. */
    public static SlipView caution(String head, String text, Node... buttons) {
        VBox body = new VBox(6);
        addText(body, text, "slip-text");
        if (buttons.length > 0) {
            HBox row = new HBox(8, buttons);
            body.getChildren().add(row);
        }
        return new SlipView(Sign.CAUTION, "slip-caution", head, body);
    }

    /** A slip of a rule that lacks input. */
    public static SlipView unchecked(NotChecked n, Runnable act) {
        VBox body = new VBox(2);
        addText(body, "Not checked. Add " + String.join(", ", n.needs()) + ".", "slip-text");
        SlipView s = new SlipView(Sign.UNCHECKED, "slip-unchecked", RuleWords.head(n.rule()), body);
        s.act(act);
        return s;
    }

    /** Shows or hides the ring of the chosen slip. */
    public void chosen(boolean on) {
        getStyleClass().remove("chosen");
        if (on) {
            getStyleClass().add("chosen");
        }
    }

    private void act(Runnable run) {
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
        Label l = new Label(text);
        l.setWrapText(true);
        l.setMinHeight(USE_PREF_SIZE);
        l.getStyleClass().add(style);
        box.getChildren().add(l);
    }
}
