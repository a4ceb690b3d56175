package portwright.app.part;

import java.util.function.Consumer;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.Region;
import portwright.model.FittingKind;

/** A button that asks first what is to be added. */
final class KindMenu {
    private KindMenu() {}

    /** @param add gets the word of the file for the kind */
    static MenuButton of(Consumer<String> add) {
        MenuButton menu = new MenuButton("Add: which kind?");
        menu.getStyleClass().setAll("plain-button", "menu-button");
        menu.setStyle("-fx-padding: 0;");
        menu.setMinWidth(Region.USE_PREF_SIZE);
        menu.setAccessibleText("add a fitting: choose its kind");
        for (FittingKind k : FittingKind.values()) {
            MenuItem item = new MenuItem(k.id());
            item.setMnemonicParsing(false);
            item.setOnAction(e -> add.accept(k.id()));
            menu.getItems().add(item);
        }
        return menu;
    }
}
