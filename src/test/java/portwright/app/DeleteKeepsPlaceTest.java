package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Step;
import portwright.app.frame.MainView;
import portwright.app.part.Showing;

/** Who takes one row after the other out of a list finds the next in sight, with the keys on it. */
class DeleteKeepsPlaceTest {
    @TempDir
    Path folder;

    private MainView view;
    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(folder.resolve("home"), 1180, 720);
            view = open.view();
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private Button button(Predicate<Button> which) {
        view.applyCss();
        view.layout();
        return view.lookupAll("*").stream()
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(b -> b.getText() != null && which.test(b))
                .findFirst()
                .orElseThrow();
    }

    private Button heading(String words) {
        return button(b -> b.getStyleClass().contains("group-toggle")
                && b.getText().substring(2).startsWith(words));
    }

    private boolean inSight(Node n) {
        double y = n.localToScene(0, 0).getY();
        return y > 80 && y + 20 < view.getHeight() - 100;
    }

    @Test
    void theNextRowIsInSight() {
        for (String name : new String[] {"E5", "E7", "E8"}) {
            String next = name.equals("E5") ? "E6" : name.equals("E7") ? "E8" : "E6";
            Toolkit.run(() -> {
                view.go(Step.KILN);
                if (!heading("Elements").getText().startsWith("▾")) {
                    heading("Elements").fire();
                }
                heading(name).fire();
            });
            Toolkit.run(() -> {
                Button delete = button(b -> b.getText().equals("Delete " + name));
                Showing.of(delete);
                view.layout();
                assertThat(inSight(delete)).as("Delete " + name).isTrue();
                delete.fire();
            });
            Toolkit.until(() -> {
                view.layout();
                return inSight(heading(next));
            });
            Toolkit.run(
                    () -> assertThat(open.stage().getScene().getFocusOwner()).isSameAs(heading(next)));
        }
    }
}
