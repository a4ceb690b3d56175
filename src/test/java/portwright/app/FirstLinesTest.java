package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.control.Button;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Step;

/** The lines of a first start go when work goes on. */
class FirstLinesTest {
    @TempDir
    Path home;

    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(home, 1180, 720);
            open.shell().files().firstStart("octagon-17");
            assertThat(lines()).isEqualTo(1);
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private int lines() {
        return open.view().messages().getChildren().size();
    }

    @Test
    void withTheFirstEdit() {
        Toolkit.run(() -> {
            open.doc().edit("title", t -> t.setText("title", "mine"));
            assertThat(lines()).isZero();
        });
    }

    @Test
    void inAnotherStep() {
        Toolkit.run(() -> {
            open.view().go(open.view().step());
            assertThat(lines()).as("the same step").isEqualTo(1);
            open.view().go(Step.GAS);
            assertThat(lines()).isZero();
        });
    }

    @Test
    void whenTheyAreClosed() {
        Toolkit.run(() -> {
            open.view().messages().lookupAll(".plain-button").stream()
                    .map(Button.class::cast)
                    .filter(b -> b.getText().equals("Close"))
                    .forEach(Button::fire);
            assertThat(lines()).isZero();
        });
    }
}
