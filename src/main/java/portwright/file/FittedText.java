package portwright.file;

import java.util.Locale;

/** Puts the two numbers that a record teaches into a design's text. */
public final class FittedText {
    private FittedText() {}

    /**
     * The document with a fitted loss factor and leak area; everything else keeps its characters.
     *
     * @param lossFactor NaN keeps the design's own
     * @param leakM2 leak area, m²; NaN keeps the design's own
     */
    public static DesignText put(DesignText document, double lossFactor, double leakM2) {
        DesignText out = document;
        if (!Double.isNaN(lossFactor)) {
            out = out.set("kiln.lossFactor", String.format(Locale.ROOT, "%.3f", lossFactor));
        }
        if (!Double.isNaN(leakM2)) {
            out = out.setText("kiln.leakArea", String.format(Locale.ROOT, "%.1f cm2", leakM2 * 1e4));
        }
        return out;
    }
}
