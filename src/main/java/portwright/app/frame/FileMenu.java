package portwright.app.frame;

import java.nio.file.Path;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;

/** The menu under the title. */
final class FileMenu {
    private FileMenu() {}

    static void fill(MenuButton button, Shell shell) {
        Menu recent = new Menu("Recent");
        Menu sizes = sizes(shell);
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
                        sizes,
                        item("Keys   F1", () -> KeyCard.show(button.getScene().getWindow())),
                        item("Safety   Shift+F1", shell::safety));
        button.setOnShowing(e -> {
            recent.getItems().clear();
            for (Path p : shell.home().recent()) {
                recent.getItems()
                        .add(item(
                                p.getFileName() + "   " + p.getParent(),
                                () -> shell.files().open(p)));
            }
            recent.setDisable(recent.getItems().isEmpty());
            // the size in use, however it was set
            sizes.getItems()
                    .forEach(i -> ((RadioMenuItem) i)
                            .setSelected(i.getUserData().equals((int) Math.round(100 * shell.size()))));
        });
    }

    private static Menu sizes(Shell shell) {
        Menu m = new Menu("Size");
        ToggleGroup one = new ToggleGroup();
        for (int percent : new int[] {100, 125, 150, 175, 200}) {
            RadioMenuItem i = new RadioMenuItem(percent + " %");
            i.setToggleGroup(one);
            i.setUserData(percent);
            i.setOnAction(e -> shell.size(percent / 100.0));
            m.getItems().add(i);
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
