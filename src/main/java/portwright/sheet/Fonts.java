package portwright.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import portwright.drawing.TextStyle;

/** The three type faces of a document. A sign that a face lacks is printed as an empty square and remembered. */
final class Fonts {
    static final String SUBSTITUTE = "□";
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    private final Map<TextStyle.Face, PDType0Font> fonts = new EnumMap<>(TextStyle.Face.class);
    private final Map<TextStyle.Face, CmapLookup> glyphs = new EnumMap<>(TextStyle.Face.class);
    private final SortedSet<Integer> missing = new TreeSet<>();

    Fonts(PDDocument document) {
        load(document, TextStyle.Face.SANS, "DejaVuSans.ttf");
        load(document, TextStyle.Face.SANS_BOLD, "DejaVuSans-Bold.ttf");
        load(document, TextStyle.Face.SERIF_BOLD, "DejaVuSerif-Bold.ttf");
    }

    private void load(PDDocument document, TextStyle.Face face, String file) {
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("type face " + file + " is not on the class path");
            }
            TrueTypeFont ttf = new TTFParser().parse(new RandomAccessReadBuffer(in));
            fonts.put(face, PDType0Font.load(document, ttf, true));
            glyphs.put(face, ttf.getUnicodeCmapLookup());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PDType0Font font(TextStyle.Face face) {
        return fonts.get(face);
    }

    /** The words as the face can print them, in the order of sight. */
    String printable(String words, TextStyle.Face face) {
        String t = Normalizer.normalize(words, Normalizer.Form.NFC);
        StringBuilder b = new StringBuilder(t.length());
        t.codePoints().forEach(c -> {
            if (Character.isISOControl(c)
                    || Character.getType(c) == Character.LINE_SEPARATOR
                    || Character.getType(c) == Character.PARAGRAPH_SEPARATOR) {
                b.append(' ');
            } else if (Character.getType(c) == Character.FORMAT) {
                return;
            } else if (glyphs.get(face).getGlyphId(c) != 0) {
                b.appendCodePoint(c);
            } else {
                missing.add(c);
                b.append(SUBSTITUTE);
            }
        });
        return inOrderOfSight(b.toString());
    }

    private static String inOrderOfSight(String t) {
        if (t.isEmpty() || !Bidi.requiresBidi(t.toCharArray(), 0, t.length())) {
            return t;
        }
        Bidi bidi = new Bidi(t, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int n = bidi.getRunCount();
        byte[] levels = new byte[n];
        String[] runs = new String[n];
        for (int i = 0; i < n; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = t.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] = levels[i] % 2 == 1 ? new StringBuilder(run).reverse().toString() : run;
        }
        Bidi.reorderVisually(levels, 0, runs, 0, n);
        return String.join("", runs);
    }

    double width(String words, TextStyle.Face face, double size) {
        String t = printable(words, face);
        try {
            return fonts.get(face).getStringWidth(t) / 1000.0 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Signs that no face could print, as code points. */
    SortedSet<Integer> missing() {
        return missing;
    }

    /** What whoever asked for the print should know of such signs; empty where there are none. */
    List<String> remarks() {
        return remarks(missing);
    }

    static List<String> remarks(SortedSet<Integer> missing) {
        return missing.isEmpty()
                ? List.of()
                : List.of((missing.size() == 1
                                ? "1 sign is not in the type face and prints as "
                                : missing.size() + " signs are not in the type face and print as ")
                        + SUBSTITUTE + ": " + words(missing) + ".");
    }

    static String words(SortedSet<Integer> signs) {
        return signs.stream().map(c -> String.format("U+%04X", c)).collect(Collectors.joining(", "));
    }
}
