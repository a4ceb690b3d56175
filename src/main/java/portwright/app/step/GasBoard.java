package portwright.app.step;

import java.util.List;
import java.util.Objects;
import javafx.scene.canvas.GraphicsContext;
import portwright.app.doc.Degrees;
import portwright.app.doc.Document;
import portwright.app.doc.Extras;
import portwright.app.doc.LambdaBand;
import portwright.app.doc.Lengths;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.part.PaintedRegion;
import portwright.calc.draft.DamperCurve;
import portwright.drawing.Ink;
import portwright.model.UnitSystem;
import portwright.review.FireReview;
import portwright.review.LevelSetting;
import portwright.units.Celsius;
import portwright.units.Format;
import portwright.units.Inches;

/** Gas step: lambda over the damper with band and levels, the plate to scale, one flue with its rule, the travel table. */
final class GasBoard extends PaintedRegion implements FormStep.Refreshing {
    /** From this width on, px, chart and plate stand side by side. */
    private static final double WIDE = 780;
    /** Under this width beside the plate the chart has the words of its levels inside, px. */
    private static final double ROOMY = 940;

    /** Height that chart and plate need side by side, px. */
    private static final double LEAST_WIDE_PX = 500;

    /** Parts of an inch on the finest steel rule. */
    private static final int FINEST = 64;

    private static final double SKETCH_UNDER = 250;

    private static final String COMPUTING = "These curves are older than the design: new ones are being computed.";
    private static final String CALLED_OFF = "These curves are older than the design: the check was called off.";

    private final Document doc;
    /** The chart as painted last: from its x to the open share; null before that. */
    private LambdaChart.Frame frame;

    /** Open share where the pointer is in the chart, 0 to 1; null when it is elsewhere. */
    private Double pointed;

    GasBoard(Document doc) {
        this.doc = doc;
        getStyleClass().add("paper");
        least(600, LEAST_WIDE_PX);
        widthProperty()
                .addListener((o, a, b) -> least(600, b.doubleValue() > WIDE ? LEAST_WIDE_PX : 440 + SKETCH_UNDER));
        setFocusTraversable(true);
        setOnMouseMoved(e -> point(frame == null ? null : frame.openAt(e.getX())));
        setOnMousePressed(e -> point(frame == null ? null : frame.openAt(e.getX())));
        setOnMouseDragged(e -> point(frame == null ? null : frame.openNear(e.getX())));
        setOnMouseReleased(e -> point(frame == null || !contains(e.getX(), e.getY()) ? null : frame.openAt(e.getX())));
        setOnMouseExited(e -> {
            if (!e.isPrimaryButtonDown()) {
                point(null);
            }
        });
    }

    /** Chart and plate both show this opening; null for the design's own. */
    private void point(Double open) {
        if (!Objects.equals(open, pointed)) {
            pointed = open;
            repaint();
        }
    }

    @Override
    public void refresh() {
        repaint();
        Extras.Gas gas = doc.extras().gas();
        setAccessibleText(
                gas == null
                        ? "gas chart, not computed"
                        : "lambda " + doc.extras().fire().now() + " "
                                + doc.extras().fire().nowBand() + " with the damper " + Math.round(gas.open() * 100)
                                + " % open");
    }

    @Override
    protected void paint(GraphicsContext g, double w, double h, Palette p) {
        Extras.Gas gas = doc.extras().gas();
        Say.left(g, p, "What the damper does to the fire", 24, 34, 17, true, Ink.INK);
        Say.left(g, p, "lambda: air drawn ÷ air needed", 24, 55, 13, false, Ink.INK2);
        if (gas == null) {
            String words = doc.checking()
                    ? doc.stopped() ? "The check was called off: no fire is computed." : "The fire is being computed."
                    : missing(doc.review().fire());
            Say.lines(g, p, words, 24, 100, w - 60, 14, Ink.INK);
            return;
        }
        charts(g, w, h, p, gas);
        if (doc.checking()) {
            StaleVeil.paint(g, w, h, p, doc.stopped() ? CALLED_OFF : COMPUTING);
        }
    }

    /** What the curves lack; the check is done and there are none. */
    private static String missing(FireReview fire) {
        if (fire == null || !fire.gas()) {
            return "No fire yet. Give every burner its gas, jet and pressure, or its heat, and the firing a step with gas.";
        }
        if (fire.gasOn().isEmpty()) {
            return "Add a firing step with gas: the curves are drawn at its temperatures.";
        }
        return fire.plate() == null
                ? "Add a flue: the curves show what a damper over it does."
                : "No curves could be drawn.";
    }

    private void charts(GraphicsContext g, double w, double h, Palette p, Extras.Gas gas) {
        boolean wide = w > WIDE;
        double plateW = wide ? Math.min(290, w * 0.3) : 0;
        boolean inside = wide && w < ROOMY;
        double right = w - plateW - (inside ? 50 : wide ? 196 : 176);
        double wordsW = w - plateW - (wide ? 48 : 30);
        double below = wide ? h : Math.max(440, h - SKETCH_UNDER);
        String band = ("Band at "
                        + Degrees.words(
                                gas.topK() - Celsius.ZERO_C, doc.design().units()) + ". "
                        + LambdaBand.of(gas.top()).why())
                .strip();
        double extra = Say.high(band, wordsW - 24, 12.5);
        double words = below - 62 - extra;
        double open = pointed == null ? gas.open() : pointed;
        frame = new LambdaChart(g, p, gas, doc.design().units())
                .paint(70, 80, right - 70, below - 80 - 176 - extra, inside, open);
        double under = Say.lines(g, p, DamperCurve.HOW_TO_SET, 24, words, wordsW - 24, 13, Ink.INK);
        under = Say.lines(g, p, DamperCurve.BAND_LEAVES_OUT, 24, under, wordsW - 24, 12.5, Ink.INK2);
        Say.lines(g, p, band, 24, under, wordsW - 24, 12.5, Ink.INK2);
        if (!wide) {
            new DamperSketch(g, p, doc, gas, open).beside(24, below + 10, w - 48);
        } else {
            g.setStroke(p.of(Ink.HAIR));
            g.setLineWidth(1.2);
            g.setLineDashes();
            g.strokeLine(w - plateW - 18, 24, w - plateW - 18, h - 60);
            new DamperSketch(g, p, doc, gas, open).paint(w - plateW, 0, plateW - 18, h);
        }
    }

    /** Travel of a level as a hand can set it; finer where another level of the table would show the same figure. */
    static String travelWords(LevelSetting s, List<LevelSetting> all, UnitSystem units) {
        if (!s.reachable()) {
            return "out of reach";
        }
        double mm = midMm(s);
        String coarse = Lengths.travel(mm, units);
        boolean twice = all.stream()
                .anyMatch(o -> o != s
                        && o.reachable()
                        && Lengths.travel(midMm(o), units).equals(coarse));
        if (!twice) {
            return coarse;
        }
        if (units != UnitSystem.INCH) {
            return Format.plain(mm, 1);
        }
        boolean fine = all.stream()
                .anyMatch(o -> o != s && o.reachable() && Inches.fine(midMm(o)).equals(Inches.fine(mm)));
        return (fine ? Inches.nearest(mm, FINEST) : Inches.fine(mm)).replace(" in", "");
    }

    private static double midMm(LevelSetting s) {
        return (s.travelLowMm() + s.travelHighMm()) / 2;
    }
}
