package portwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Base64;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.app.doc.Picture;
import portwright.app.doc.Step;
import portwright.app.frame.ScaledPane;
import portwright.app.frame.Themes;

/** A window shown larger: nothing is blurred, and key hints lie beside the drawing. */
class LargerWindowTest {
    @TempDir
    Path home;

    private OpenWindow open;

    @BeforeEach
    void open() {
        Toolkit.run(() -> open = OpenWindow.show(home, 1180, 720));
    }

    @AfterEach
    void close() {
        Toolkit.run(() -> open.close());
    }

    private void show(double size, Picture picture) {
        Toolkit.run(() -> {
            open.shell().size(size);
            open.view().go(Step.PORTS);
            open.view().board().show(picture);
        });
        for (int i = 0; i < 3; i++) {
            Toolkit.run(() -> open.stage().getScene().getRoot().layout());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2})
    void aCanvasHoldsAsManyDotsAsAreSeen(double size) {
        show(size, Picture.FLOOR_HOT);
        Toolkit.run(() -> {
            Node board = open.view().board();
            Bounds seen = board.localToScene(board.getLayoutBounds());
            Canvas canvas = (Canvas) board.lookupAll("*").stream()
                    .filter(Canvas.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            assertThat(canvas.getWidth()).isCloseTo(seen.getWidth(), within(1.0));
            assertThat(canvas.localToScene(canvas.getLayoutBounds()).getWidth())
                    .as("where it was")
                    .isCloseTo(seen.getWidth(), within(1.0));
        });
    }

    /** On a low board a key hint lies left of the middle, where the tape of a slab, the walls' lid or the section's flues are. */
    @Test
    void keyHintsLieBesideTheDrawing() {
        for (Picture p : new Picture[] {Picture.FLOOR_HOT, Picture.LID_COLD, Picture.WALLS_HOT, Picture.SECTION}) {
            Toolkit.run(() -> open.stage().setHeight(640));
            show(1, p);
            Toolkit.run(() -> {
                double least = open.view().lookupAll(".key-hint").stream()
                        .filter(n -> n.isVisible()
                                && n.localToScene(n.getLayoutBounds()).getMinY() < 400)
                        .mapToDouble(n -> n.localToScene(n.getLayoutBounds()).getMaxX())
                        .max()
                        .orElseThrow();
                assertThat(least).as(p.title()).isLessThan(p == Picture.SECTION ? 300 : 400);
            });
        }
    }

    /** Menus and tips are windows of their own; the windows beside the main one ask it for its size. */
    @Test
    void menusTipsAndWindowsBesideGrowToo() {
        show(1.5, Picture.FLOOR_HOT);
        Toolkit.run(() -> {
            assertThat(Themes.size(open.stage())).isEqualTo(1.5);
            String sheet = open.stage().getScene().getStylesheets().get(2);
            String css = new String(Base64.getDecoder().decode(sheet.substring(sheet.indexOf(',') + 1)), UTF_8);
            assertThat(css).contains("21.0px").contains("19.5px");
            Region inside = new Region();
            inside.setPrefSize(300, 200);
            ScaledPane pane = new ScaledPane(inside);
            pane.factor(1.5);
            assertThat(pane.prefWidth(-1)).isEqualTo(450);
            assertThat(pane.prefHeight(-1)).isEqualTo(300);
        });
    }
}
