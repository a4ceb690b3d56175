package portwright.app.step;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.drawing.Ink;

/** A veil over what was made of an earlier design, with words, so that nobody takes them for the present ones. */
final class StaleVeil {
    private static final double SHADE = 0.62;

    private StaleVeil() {}

    static void paint(GraphicsContext g, double w, double h, Palette p, String words) {
        g.setGlobalAlpha(SHADE);
        g.setFill(p.of(Ink.PAPER));
        g.fillRect(2, 2, w - 4, h - 4);
        g.setGlobalAlpha(1);
        double half = TextSizes.width(words, Fonts.bold(15)) / 2 + 16;
        g.setFill(p.of(Ink.RUTILE_FILL));
        g.fillRect(w / 2 - half, h / 2 - 20, 2 * half, 40);
        g.setStroke(p.of(Ink.RUTILE));
        g.setLineWidth(2);
        g.setLineDashes(8, 4);
        g.strokeRect(w / 2 - half, h / 2 - 20, 2 * half, 40);
        g.setLineDashes();
        Say.at(g, p, words, w / 2, h / 2, 15, true, Ink.INK, TextAlignment.CENTER, VPos.CENTER, false);
    }
}
