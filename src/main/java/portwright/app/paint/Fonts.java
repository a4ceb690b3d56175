package portwright.app.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import portwright.drawing.TextStyle;

/** The DejaVu faces, loaded from the class path so that the window looks alike everywhere. */
public final class Fonts {
    private static final String ROOT = "/net/sf/jasperreports/fonts/dejavu/";
    private static final String[] FILES = {
        "DejaVuSans.ttf",
        "DejaVuSans-Bold.ttf",
        "DejaVuSans-Oblique.ttf",
        "DejaVuSansCondensed.ttf",
        "DejaVuSansCondensed-Bold.ttf",
        "DejaVuSerif-Bold.ttf",
        "DejaVuSansMono.ttf"
    };

    private Fonts() {}

    /** Makes the faces known to the toolkit. Call once before the first scene. */
    public static void load() {
        for (String file : FILES) {
            try (InputStream in = Fonts.class.getResourceAsStream(ROOT + file)) {
                Font.loadFont(in, 12);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    public static Font sans(double px) {
        return Font.font("DejaVu Sans", px);
    }

    public static Font bold(double px) {
        return Font.font("DejaVu Sans", FontWeight.BOLD, px);
    }

    public static Font of(TextStyle.Face face, double px) {
        return switch (face) {
            case SANS -> sans(px);
            case SANS_BOLD -> bold(px);
            case SERIF_BOLD -> Font.font("DejaVu Serif", FontWeight.BOLD, px);
        };
    }
}
