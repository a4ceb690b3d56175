package portwright.app.paint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import portwright.drawing.Ink;

/** Colours of the drawings, read from the style sheet in force, so that a canvas follows the theme. */
public final class Palette {
    /** The order in which {@code .colour-probe} names the colours. SHADE is a tint of the ink; BENCH stands for no ink. */
    private static final List<Ink> ORDER = List.of(
            Ink.INK,
            Ink.INK2,
            Ink.EDGE,
            Ink.HAIR,
            Ink.COBALT,
            Ink.UMBER,
            Ink.EMBER,
            Ink.OXBLOOD,
            Ink.RUTILE,
            Ink.CELADON,
            Ink.BOXINK,
            Ink.PAPER,
            Ink.BISQUE,
            Ink.BRICK);

    private static final List<Ink> REST =
            List.of(Ink.FLAME, Ink.COBALT_FILL, Ink.OXBLOOD_FILL, Ink.RUTILE_FILL, Ink.CELADON_FILL, Ink.BOXWOOD);

    private final Map<Ink, Color> colours;

    private Palette(Map<Ink, Color> colours) {
        this.colours = colours;
    }

    /** Reads the colours of a node of style class {@code colour-probe} that is in a scene and has its style applied. */
    public static Palette of(Region probe) {
        List<Color> found = new ArrayList<>();
        if (probe.getBackground() != null) {
            for (BackgroundFill f : probe.getBackground().getFills()) {
                found.add((Color) f.getFill());
            }
        }
        Map<Ink, Color> map = new EnumMap<>(Ink.class);
        if (found.size() < ORDER.size() + 1 + REST.size()) {
            for (Ink ink : Ink.values()) {
                map.put(ink, ink.screenOnly() || ink == Ink.PAPER ? Color.WHITE : Color.BLACK);
            }
            return new Palette(map);
        }
        for (int i = 0; i < ORDER.size(); i++) {
            map.put(ORDER.get(i), found.get(i));
        }
        for (int i = 0; i < REST.size(); i++) {
            map.put(REST.get(i), found.get(ORDER.size() + 1 + i));
        }
        map.put(Ink.SHADE, map.get(Ink.INK).deriveColor(0, 1, 1, 0.07));
        return new Palette(map);
    }

    /** Paper: black and white, for the pictures of printed pages. */
    public static Palette paper() {
        Map<Ink, Color> map = new EnumMap<>(Ink.class);
        for (Ink ink : Ink.values()) {
            map.put(ink, ink == Ink.PAPER ? Color.WHITE : ink == Ink.SHADE ? Color.gray(0.93) : Color.BLACK);
        }
        return new Palette(map);
    }

    public Color of(Ink ink) {
        return colours.get(ink);
    }
}
