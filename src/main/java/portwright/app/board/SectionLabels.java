package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import portwright.app.doc.Lengths;
import portwright.app.paint.CanvasPen;
import portwright.drawing.Box;
import portwright.drawing.Ink;
import portwright.drawing.Labels;
import portwright.drawing.LineStyle;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;

/** Words and pressure signs of the section; each word stands where it covers nothing that was placed before it. */
final class SectionLabels {
    /** Height of a chamber that has room for words, px. */
    private static final double ROOMY_PX = 220;

    /** What words in the chamber keep from its walls, both together, px. */
    private static final double SIDES_PX = 16;

    /** Sizes of the line that counts most, px; the first that fits between the walls. */
    private static final double[] LAMBDA_PX = {16, 14.5, 13};

    private final CanvasPen pen;
    private final KilnGeometry k;
    private final SectionWords words;
    private final Labels labels;
    private final double[] in;
    /** Style of the line that counts most. */
    private final TextStyle lambda;
    /** Whether the chamber has room for words. */
    private final boolean roomy;
    /** Where the pressure signs stand right of the wall, mm. */
    private final double out;

    SectionLabels(CanvasPen pen, KilnGeometry k, SectionWords words, Labels labels) {
        this.pen = pen;
        this.k = k;
        this.words = words;
        this.labels = labels;
        in = k.inner().across(k.centre().y());
        out = in[1] + k.thickness(On.WALL) + pen.size(4, 14);
        TextStyle fits = null;
        for (double px : LAMBDA_PX) {
            TextStyle s = TextStyle.LABEL_BOLD.size(px, 4).plainGround();
            if (fits == null && in[1] - in[0] > pen.textWidth(words.lambda(), s) + pen.size(10, SIDES_PX)) {
                fits = s;
            }
        }
        roomy = fits != null && k.height() > pen.size(40, ROOMY_PX);
        lambda = roomy ? fits : TextStyle.LABEL_BOLD.plainGround();
    }

    /** Why there is nothing to tell. */
    void unknown() {
        List<Labels.Line> lines = List.of(
                new Labels.Line("The fire is not computed yet:", TextStyle.SMALL),
                new Labels.Line("give every burner gas and jet.", TextStyle.SMALL));
        List<Labels.Spot> spots = new ArrayList<>(besideAt(1.02, 0.7));
        if (in[1] - in[0] > pen.textWidth(lines.get(1).words(), TextStyle.SMALL) + pen.size(10, SIDES_PX)) {
            spots.add(0, spot((in[0] + in[1]) / 2, k.height() * 0.66, Pen.Align.CENTRE));
        }
        labels.block(lines, spots, pen.size(5, 18));
    }

    /** Neutral level, pressure signs, and what the chamber holds. */
    void fire() {
        Double z = words.neutralMm();
        if (z != null) {
            double left = in[0] - k.thickness(On.WALL) - pen.size(6, 20);
            double right = out + pen.size(20, 120);
            pen.line(new Pt(left, z), new Pt(right, z), LineStyle.NEUTRAL_LEVEL, Ink.COBALT);
            double half = pen.size(0.6, 2);
            labels.keepFree(new Box(left, z - half, right, z + half));
        }
        signs();
        chamber();
        if (z != null) {
            neutral(z);
        }
        if (words.lidPa() > 0) {
            labels.block(
                    List.of(
                            new Labels.Line("leaks out,", TextStyle.LABEL),
                            new Labels.Line("with CO", TextStyle.LABEL)),
                    besideAt(roomy ? new double[] {0.72, 0.6, 0.5, 0.85, 0.4} : new double[] {0.56, 0.7, 0.45, 0.3}),
                    pen.size(5, 19));
        }
    }

    private static Labels.Spot spot(double x, double y, Pen.Align align) {
        return new Labels.Spot(new Pt(x, y), align, 0);
    }

    /** Spots right of the signs at shares of the chamber's height. */
    private List<Labels.Spot> besideAt(double... shares) {
        List<Labels.Spot> spots = new ArrayList<>();
        for (double s : shares) {
            spots.add(spot(out + pen.size(6, 22), k.height() * s, Pen.Align.LEFT));
        }
        return spots;
    }

    /** In the chamber; in a small picture beside the kiln. */
    private void chamber() {
        List<Labels.Spot> spots = new ArrayList<>();
        if (roomy) {
            for (double s : new double[] {0.66, 0.76, 0.86, 0.56, 0.46, 0.36}) {
                spots.add(spot((in[0] + in[1]) / 2, k.height() * s, Pen.Align.CENTRE));
            }
        }
        spots.addAll(besideAt(1.02, 1.1, 0.9));
        labels.block(
                List.of(
                        new Labels.Line(words.head(), TextStyle.LABEL.plainGround()),
                        new Labels.Line(words.lambda(), lambda)),
                spots,
                pen.size(8, 23));
    }

    private void neutral(double z) {
        double x = out + pen.size(6, 22);
        labels.block(
                List.of(
                        new Labels.Line("neutral level", TextStyle.LABEL_BOLD.withInk(Ink.COBALT)),
                        new Labels.Line(
                                Lengths.shown(Math.abs(z), k.design().units()) + (z < 0 ? " below the floor" : " up"),
                                TextStyle.SMALL)),
                List.of(spot(x, z + pen.size(6, 24), Pen.Align.LEFT), spot(x, z - pen.size(5, 17), Pen.Align.LEFT)),
                pen.size(4, 16));
    }

    private void signs() {
        double s = pen.size(2, 7);
        for (int i = 1; i <= 6; i++) {
            double z = k.height() * i / 6.5;
            double pa = words.floorPa() + (words.lidPa() - words.floorPa()) * z / k.height();
            if (words.neutralMm() != null && Math.abs(z - words.neutralMm()) < pen.size(8, 34)) {
                continue;
            }
            Ink ink = pa > 0 ? Ink.EMBER : Ink.COBALT;
            pen.line(new Pt(out - s, z), new Pt(out + s, z), LineStyle.RULE, ink);
            if (pa > 0) {
                pen.line(new Pt(out, z - s), new Pt(out, z + s), LineStyle.RULE, ink);
            }
            labels.keepFree(new Box(out - s, z - s, out + s, z + s));
        }
    }

    /**
     * Names the burners beside what they cover, in a picture that has room.
     *
     * @param covers in the order of the design; a box without width for a burner that is not drawn
     */
    void burners(List<Box> covers) {
        for (int i = 0; roomy && i < covers.size(); i++) {
            Box b = covers.get(i);
            double gap = pen.size(2, 6);
            List<Labels.Spot> spots = new ArrayList<>();
            for (double share : new double[] {0.2, 0.45, 0}) {
                double y = b.minY() + share * b.height();
                spots.add(spot(b.minX() - gap, y, Pen.Align.RIGHT));
                spots.add(spot(b.maxX() + gap, y, Pen.Align.LEFT));
            }
            if (b.width() > 0) {
                labels.place(k.design().burners().get(i).name(), spots, TextStyle.LABEL);
            }
        }
    }
}
