package portwright.drawing;

import java.util.List;

/**
 * Line widths and dashes by meaning, after ISO 128 line types (from memory). Widths never scale with zoom.
 *
 * <p>A dash pattern is written for paper in mm; the screen pattern is in px.
 */
public enum LineStyle {
    SLAB_EDGE(2.8, 0.7, Dash.NONE, Ink.INK),
    CHAMBER_WALL(1.6, 0.5, Dash.NONE, Ink.INK),
    SAW_CIRCLE(2.8, 0.5, Dash.NONE, Ink.INK),
    /** Around the number of a hole; looks like a saw circle and is none. */
    NUMBER_RING(2.8, 0.5, Dash.NONE, Ink.INK),
    /** The nearest saw where it differs from the design diameter. */
    SAW_SECOND(1.2, 0.18, Dash.NONE, Ink.INK),
    METAL_HOLE(1.6, 0.35, Dash.DASHED, Ink.INK),
    KEEP_OUT(1.6, 0.25, Dash.KEEP_OUT, Ink.INK2),
    NEIGHBOUR(1.4, 0.25, Dash.TWO_DOTS, Ink.INK2),
    HIDDEN(1.4, 0.25, Dash.DASHED, Ink.INK2),
    AXIS(1, 0.25, Dash.ONE_DOT, Ink.INK2),
    NEUTRAL_LEVEL(2.2, 0.25, Dash.ONE_DOT, Ink.INK2),
    JOINT(1.5, 0.18, Dash.NONE, Ink.HAIR),
    /** A joint behind sheet metal; dotted, so that nobody cuts the paper on it. */
    JOINT_BEHIND(1.5, 0.3, Dash.DOTTED, Ink.HAIR),
    GROOVE(1, 0.25, Dash.NONE, Ink.EMBER),
    GROOVE_HATCH(1, 0.22, Dash.NONE, Ink.EMBER),
    COIL(1.6, 0.25, Dash.NONE, Ink.EMBER),
    FLAME(1.6, 0.35, Dash.DASHED, Ink.EMBER),
    WEAKEST(2.8, 0.5, Dash.ONE_DOT, Ink.INK),
    FITTING(1.6, 0.5, Dash.NONE, Ink.INK),
    DIMENSION(1.2, 0.18, Dash.NONE, Ink.INK),
    TRIM(1.2, 0.25, Dash.TRIM, Ink.INK),
    CUT_BRICK(2.6, 0.5, Dash.NONE, Ink.INK),
    CUT_HATCH(1, 0.18, Dash.NONE, Ink.HAIR),
    CLASH_HATCH(1.2, 0.22, Dash.NONE, Ink.OXBLOOD),
    SELECTION(3, 0.5, Dash.NONE, Ink.COBALT),
    PROPOSED(1.6, 0.25, Dash.DASHED, Ink.CELADON),
    FRAME(1.2, 0.18, Dash.NONE, Ink.EDGE),
    BOX(1.6, 0.35, Dash.NONE, Ink.INK),
    RULE(2, 0.6, Dash.NONE, Ink.INK);

    private final double px;
    private final double mm;
    private final Dash dash;
    private final Ink ink;

    LineStyle(double px, double mm, Dash dash, Ink ink) {
        this.px = px;
        this.mm = mm;
        this.dash = dash;
        this.ink = ink;
    }

    /** Width on screen, px. */
    public double px() {
        return px;
    }

    /** Width on paper, mm. */
    public double mm() {
        return mm;
    }

    /** On-off lengths on screen, px; empty for a continuous line. */
    public List<Double> dashPx() {
        return dash.px;
    }

    /** On-off lengths on paper, mm; empty for a continuous line. */
    public List<Double> dashMm() {
        return dash.mm;
    }

    /** Its usual colour on screen. */
    public Ink ink() {
        return ink;
    }

    private enum Dash {
        NONE(List.of(), List.of()),
        DASHED(List.of(9.0, 4.0), List.of(3.0, 1.2)),
        DOTTED(List.of(2.0, 4.0), List.of(0.5, 1.1)),
        TRIM(List.of(6.0, 5.0), List.of(2.0, 1.5)),
        KEEP_OUT(List.of(9.0, 5.0), List.of(7.0, 2.2)),
        TWO_DOTS(List.of(16.0, 4.0, 2.0, 4.0, 2.0, 4.0), List.of(6.0, 1.2, 0.5, 1.2, 0.5, 1.2)),
        ONE_DOT(List.of(20.0, 4.0, 2.0, 4.0), List.of(8.0, 1.2, 0.5, 1.2));

        private final List<Double> px;
        private final List<Double> mm;

        Dash(List<Double> px, List<Double> mm) {
            this.px = px;
            this.mm = mm;
        }
    }
}
