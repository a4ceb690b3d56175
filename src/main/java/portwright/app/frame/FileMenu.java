package portwright.app.frame;

import java.nio.file.Path;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** The menu under the title. */
final class FileMenu {
    private FileMenu() {}

    static void fill(MenuButton button, Shell shell) {
        Menu recent = new Menu("Recent");
        button.getItems()
                .setAll(
                        item("New kiln…   Ctrl+N", shell.files()::newDialog),
                        item("Open…   Ctrl+O", shell.files()::openDialog),
                        recent,
                        new SeparatorMenuItem(),
                        item("Save   Ctrl+S", shell.files()::save),
                        item("Save as…   Ctrl+Shift+S", shell.files()::saveAs),
                        new SeparatorMenuItem(),
                        item("Light or dark", shell::turnTheme),
                        sizes(shell),
                        item("Keys   F1", () -> KeyCard.show(button.getScene().getWindow())));
        button.setOnShowing(e -> {
            recent.getItems().clear();
            for (Path p : shell.home().recent()) {
                recent.getItems()
                        .add(item(
                                p.getFileName() + "   " + p.getParent(),
                                () -> shell.files().open(p)));
            }
            recent.setDisable(recent.getItems().isEmpty());
        });
    }

    private static Menu sizes(Shell shell) {
        Menu m = new Menu("Size");
        for (int percent : new int[] {100, 125, 150, 175, 200}) {
            m.getItems().add(item(percent + " %", () -> shell.size(percent / 100.0)));
        }
        return m;
    }

    private static MenuItem item(String words, Runnable run) {
        MenuItem i = new MenuItem(words);
        i.setMnemonicParsing(false);
        i.setOnAction(e -> run.run());
        return i;
    }
}
