package portwright.app.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import portwright.form.FieldSpec;

/** Choosers of words. The toolkit tells only of another word; these tell also when the same one is picked again or Enter is pressed on it. */
final class ChoiceBoxes {
    /** Letters nearer to each other in time belong to one word, ns. */
    private static final long SOON_NS = 900_000_000L;

    private ChoiceBoxes() {}

    /** @param picked hears the word that somebody picked or set; the same word may come twice */
    static ComboBox<String> of(FieldSpec spec, Consumer<String> picked) {
        ComboBox<String> choice = new ComboBox<>();
        choice.getStyleClass().add("choice");
        choice.setMaxWidth(Double.MAX_VALUE);
        List<String> words =
                new ArrayList<>(spec.type() == FieldSpec.Type.YES_NO ? List.of("yes", "no") : spec.words());
        words.add(0, "");
        choice.getItems().setAll(words);
        choice.valueProperty().addListener((o, a, b) -> picked.accept(b));
        choice.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && !choice.isShowing()) {
                picked.accept(choice.getValue());
                e.consume();
            }
        });
        choice.addEventHandler(KeyEvent.KEY_TYPED, letters(choice));
        choice.skinProperty().addListener((o, a, skin) -> {
            if (skin instanceof ComboBoxListViewSkin<?> s) {
                list(s.getPopupContent(), choice, picked);
            }
        });
        return choice;
    }

    /** Letters that follow one another soon take the word that begins with them; the same first letter again takes the next such word. */
    private static EventHandler<KeyEvent> letters(ComboBox<String> choice) {
        StringBuilder typed = new StringBuilder();
        long[] last = {0};
        return e -> {
            if (e.getCharacter().isBlank() || choice.isShowing()) {
                return;
            }
            long now = System.nanoTime();
            typed.setLength(now - last[0] > SOON_NS ? 0 : typed.length());
            last[0] = now;
            typed.append(e.getCharacter().toLowerCase(Locale.ROOT));
            List<String> words = choice.getItems();
            int from = words.indexOf(choice.getValue()) + (typed.length() == 1 ? 1 : 0);
            for (int i = 0; i < words.size(); i++) {
                String word = words.get(Math.floorMod(from + i, words.size()));
                if (word != null && word.toLowerCase(Locale.ROOT).startsWith(typed.toString())) {
                    choice.setValue(word);
                    return;
                }
            }
        };
    }

    /** The word that is shown was picked again when the list closes by Enter or by a tap on a word. */
    private static void list(Node list, ComboBox<String> choice, Consumer<String> picked) {
        list.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER) {
                picked.accept(choice.getValue());
            }
        });
        list.addEventFilter(MouseEvent.MOUSE_RELEASED, e -> {
            Node n = e.getTarget() instanceof Node t ? t : null;
            while (n != null && !(n instanceof ListCell<?>)) {
                n = n.getParent();
            }
            if (n instanceof ListCell<?> c && !c.isEmpty()) {
                picked.accept(String.valueOf(c.getItem()));
            }
        });
    }
}
