package portwright.sheet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import portwright.check.Severity;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;

/** The card's two lists of cautions: those of the design with what is to be expected, and those of the common list. */
final class CardCautions {
    private static final TextStyle CARE = new TextStyle(TextStyle.Face.SANS, 13, 3.0, Ink.INK, false);
    private static final TextStyle NEVER = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.0, Ink.INK, false);
    /** Height of the heading over the design's own cautions, mm. */
    private static final double OWN_HEAD = 6;

    private final CardPaper c;
    private final List<CardData.Caution> common;
    private final List<Said> own;
    private final String open;
    private final boolean expected;

    /** Heights of the design's own, mm; found when first asked for. */
    private double[] ownHigh;

    private record Said(Severity severity, String words) {}

    /** {@code expected}: whether the remarks on the steps stand here, since the table has no room for them. */
    CardCautions(CardPaper c, CardData data, boolean expected) {
        this.c = c;
        common = data.cautions();
        open = data.notChecked().isEmpty() ? "" : "Not checked: " + String.join(", ", data.notChecked()) + ".";
        this.expected = expected && data.steps().stream().anyMatch(CardData.Step::remark);
        own = Stream.concat(
                        data.own().stream().map(o -> new Said(Severity.CAUTION, o.words())),
                        data.steps().stream()
                                .filter(s -> expected && s.remark())
                                .map(s -> new Said(Severity.NOTE, s.across())))
                .toList();
    }

    /** What the front says of {@link #own} where it stands on the back. */
    static String onBack(CardData data) {
        return !data.notChecked().isEmpty()
                ? " Not all was checked: see the back."
                : data.own().isEmpty() ? "" : " More cautions on the back.";
    }

    /** What {@link #common} takes, mm. */
    double commonHeight() {
        double third = (c.right - c.left) / 3;
        double sum = 0;
        for (int i = 0; i < common.size(); i += 3) {
            sum += common.subList(i, Math.min(i + 3, common.size())).stream()
                    .mapToDouble(k -> Words.height(c.pen, k.words(), third - 5.6, k.stop() ? NEVER : CARE))
                    .max()
                    .orElse(0);
        }
        return sum == 0 ? 0 : sum + 2;
    }

    /** What {@link #own} takes, mm. */
    double ownHeight() {
        return cautionsHeight() + (open.isEmpty() ? 0 : Words.height(c.pen, open, c.width(), NEVER) + 2);
    }

    private double cautionsHeight() {
        return own.isEmpty() ? 0 : Math.max(height(0, half()), height(half(), own.size())) + OWN_HEAD + 2;
    }

    private double columnWidth() {
        return (c.right - c.left) / 2 - 3;
    }

    private double height(int from, int to) {
        if (ownHigh == null) {
            ownHigh = own.stream()
                    .mapToDouble(o -> Words.height(c.pen, o.words(), columnWidth() - 4.6, CARE) + 0.6)
                    .toArray();
        }
        return Arrays.stream(ownHigh, from, to).sum();
    }

    /** How many stand in the first of two columns, so that the taller column is as low as can be. */
    private int half() {
        int all = own.size();
        return IntStream.rangeClosed(0, all)
                .boxed()
                .min(Comparator.comparingDouble(i -> Math.max(height(0, i), height(i, all))))
                .orElse(0);
    }

    /** The design's own cautions, with what to do, and what is to be expected, in two columns; under them in one line what was not checked. */
    void own(double top) {
        if (!open.isEmpty()) {
            c.flow(open, c.left, top + cautionsHeight(), c.width(), NEVER);
        }
        if (own.isEmpty()) {
            return;
        }
        c.words(
                "Cautions of this kiln for the firing" + (expected ? ", and what to expect" : ""),
                c.left,
                top + 4.4,
                CardPaper.HEADING);
        int half = half();
        double y = top + OWN_HEAD;
        for (int i = 0; i < own.size(); i++) {
            double x = i < half ? c.left : c.left + columnWidth() + 6;
            y = i == half ? top + OWN_HEAD : y;
            Signs.severity(c.pen, own.get(i).severity(), c.at(x + 1.9, y + 1.9), 3.2);
            y = c.flow(own.get(i).words(), x + 4.6, y, columnWidth() - 4.6, CARE) + 0.6;
        }
    }

    /** Short cautions in three columns, stops first; answers where they end. */
    double common(double top) {
        if (common.isEmpty()) {
            return top;
        }
        double third = (c.right - c.left) / 3;
        double y = top + 1.4;
        for (int i = 0; i < common.size(); i += 3) {
            double end = y;
            for (int k = i; k < Math.min(i + 3, common.size()); k++) {
                CardData.Caution said = common.get(k);
                double x = c.left + (k - i) * third;
                Signs.severity(c.pen, said.stop() ? Severity.STOP : Severity.CAUTION, c.at(x + 1.9, y + 1.9), 3.2);
                end = Math.max(end, c.flow(said.words(), x + 4.6, y, third - 5.6, said.stop() ? NEVER : CARE));
            }
            y = end;
        }
        c.rule(y + 0.6, LineStyle.CHAMBER_WALL);
        return y + 0.6;
    }
}
