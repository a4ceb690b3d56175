package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.Step;
import portwright.file.Starters;

/** The words over the kiln's fields open what they name, also while the tip of a new kiln stands above. */
class KilnIndexTest {
    private static final Map<String, String> LONG = Map.of(
            "Title",
            "Title, notes, units",
            "Plan",
            "Inside plan",
            "Chamber",
            "Chamber and power",
            "Limits",
            "Own limits");

    @TempDir
    Path home;

    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> {
            open = OpenWindow.show(home, 1180, 720);
            open.shell()
                    .files()
                    .own(Starters.find("octagon-17")
                            .orElseThrow()
                            .remove("kiln.elements")
                            .remove("kiln.fittings")
                            .remove("shelves"));
            assertThat(open.view().step()).isEqualTo(Step.KILN);
        });
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private List<Button> all(String style) {
        return open.view().lookupAll(style).stream().map(Button.class::cast).toList();
    }

    private static double top(Node n) {
        return n.localToScene(n.getBoundsInLocal()).getMinY();
    }

    @Test
    void eachWordOpensItsFieldsAndShowsThem() {
        List<Button> links = Toolkit.call(() -> all(".index-link"));
        assertThat(links).hasSizeGreaterThan(9);
        for (Button link : links) {
            String word = link.getAccessibleText().substring("go to ".length());
            String title = LONG.getOrDefault(word, word);
            Toolkit.run(link::fire);
            Toolkit.run(() -> {
                Button head = all(".group-toggle").stream()
                        .filter(b -> b.getText().substring(2).equals(title))
                        .findFirst()
                        .orElseThrow();
                assertThat(head.getText()).startsWith("▾");
                assertThat(head.getParent().getChildrenUnmodifiable()).as(word).hasSizeGreaterThan(1);
                Region side = (Region) open.view().lookup(".side-scroll");
                assertThat(top(head)).as(word).isBetween(top(side), top(side) + side.getHeight());
            });
        }
    }

    /** Closed under the mouse; what stood below moves up. */
    @Test
    void noGapStaysWhereTheTipStood() {
        Toolkit.run(() -> open.view().layout());
        Button close = Toolkit.call(() -> all(".plain-button").stream()
                .filter(b -> b.getText().equals("Close"))
                .findFirst()
                .orElseThrow());
        Toolkit.run(() -> {
            var at = close.localToScreen(close.getWidth() / 2, close.getHeight() / 2);
            var robot = new javafx.scene.robot.Robot();
            robot.mouseMove(at);
            robot.mousePress(javafx.scene.input.MouseButton.PRIMARY);
            robot.mouseRelease(javafx.scene.input.MouseButton.PRIMARY);
        });
        Toolkit.until(() -> open.view().messages().getChildren().isEmpty());
        Toolkit.run(() -> {
            open.view().layout();
            Region side = (ScrollPane) open.view().lookup(".side-scroll");
            side.layout();
            Region content = (Region) ((ScrollPane) side).getContent();
            assertThat(content.getPadding().getTop()).isLessThan(10);
        });
    }
}
