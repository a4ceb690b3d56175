package portwright.app.part;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import portwright.app.doc.Offers.Offer;

/** A list to choose from beside free text. */
final class OfferList {
    private OfferList() {}

    /** The list opens from the text beside it with the down arrow. */
    static void downFrom(TextInputControl text, MenuButton list) {
        text.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.DOWN) {
                list.show();
                e.consume();
            }
        });
        text.setAccessibleHelp("down arrow: choose from a list");
    }

    /** @param chosen gets the value as the field takes it */
    static MenuButton of(String label, List<Offer> offers, Consumer<String> chosen) {
        MenuButton list = new MenuButton();
        list.getStyleClass().add("offers");
        list.setAccessibleText("choose " + label);
        list.setMinWidth(Region.USE_PREF_SIZE);
        // Tab goes on to the next field; from the text the list opens with the down arrow
        list.setFocusTraversable(false);
        for (Offer o : offers) {
            MenuItem item = new MenuItem(o.value() + "   " + o.words());
            item.setMnemonicParsing(false);
            item.setOnAction(e -> chosen.accept(o.value()));
            list.getItems().add(item);
        }
        return list;
    }
}
