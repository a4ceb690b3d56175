package portwright.app.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Extras;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DamperCurve;
import portwright.drawing.Ink;

/** The levels of the fire on the chart of lambda: name and CO of each, in its field or beside it. */
final class LevelNames {
    /** Under this height the levels beside the chart have one line each, px. */
    private static final double LOW_PX = 230;

    /** What burns beyond the levels; soot is expected only from the limit of its rule down. */
    private static final String WASTE = "waste";

    private final GraphicsContext g;
    private final Palette p;
    private final Extras.Gas gas;
    private final Places places;

    LevelNames(GraphicsContext g, Palette p, Extras.Gas gas, Places places) {
        this.g = g;
        this.p = p;
        this.gas = gas;
        this.places = places;
    }

    /** A line a level at the right end of its field, where the curves have passed; takes their places now, answers what writes them over the curves. */
    List<Runnable> inside(Chart c) {
        List<Runnable> out = new ArrayList<>();
        AtmosphereLevel[] levels = AtmosphereLevel.values();
        double[] heights = heights(c, levels);
        Places.spread(heights, 18, c.top() + 10, c.bottom() - 10);
        for (int i = 0; i < levels.length; i++) {
            AtmosphereLevel level = levels[i];
            double y = heights[i];
            String co = level == AtmosphereLevel.OXIDIZING ? "CO near 0 if mixed" : co(level);
            double right = c.right() - 8;
            double coW = TextSizes.width(co, Fonts.sans(12.5)) + 8;
            double w = coW + TextSizes.width(level.id(), Fonts.bold(14));
            out.add(() -> {
                Say.at(g, p, co, right, y, 12.5, false, Ink.INK2, TextAlignment.RIGHT, VPos.CENTER, true);
                Say.at(g, p, level.id(), right - coW, y, 14, true, Ink.INK, TextAlignment.RIGHT, VPos.CENTER, true);
            });
            places.name(right - w, y - 9, w, 18);
        }
        return out;
    }

    /** Names and CO of the levels in one line each, spread over a chart that is too low for two; {@code beyond} where gas is wasted, and soots from lambda 0.75 down. */
    private void shortLevels(Chart c) {
        AtmosphereLevel[] levels = AtmosphereLevel.values();
        double[] heights = heights(c, levels);
        Places.spread(heights, 19, c.top() + 10, c.bottom() - 10);
        for (int i = 0; i < levels.length; i++) {
            double x = c.right() + 12;
            Say.at(g, p, levels[i].id(), x, heights[i], 14, true, Ink.INK, TextAlignment.LEFT, VPos.CENTER, false);
            String co = levels[i] == AtmosphereLevel.OXIDIZING
                    ? "CO near 0"
                    : levels[i] == AtmosphereLevel.BEYOND ? WASTE : co(levels[i]);
            double after = x + TextSizes.width(levels[i].id(), Fonts.bold(14)) + 8;
            Say.at(g, p, co, after, heights[i], 12.5, false, Ink.INK2, TextAlignment.LEFT, VPos.CENTER, false);
        }
    }

    /** Where the levels lie, the leanest first, px. */
    private static double[] heights(Chart c, AtmosphereLevel[] levels) {
        return Arrays.stream(levels)
                .mapToDouble(l -> c.y(
                        l == AtmosphereLevel.OXIDIZING
                                ? 1.04
                                : l == AtmosphereLevel.BEYOND ? 0.74 : (l.lambdaLow() + l.lambdaHigh()) / 2))
                .toArray();
    }

    /** Names and CO beside the chart. */
    void beside(Chart c) {
        if (c.bottom() - c.top() < LOW_PX) {
            shortLevels(c);
            return;
        }
        double x = c.right() + 12;
        Say.at(g, p, "oxidizing", x, c.y(1.21), 14, true, Ink.INK, TextAlignment.LEFT, VPos.CENTER, false);
        Say.at(
                g,
                p,
                "CO near 0 if mixed",
                x,
                c.y(1.21) + 19,
                13,
                false,
                Ink.INK2,
                TextAlignment.LEFT,
                VPos.CENTER,
                false);
        double last = c.y(1.0) - 18;
        for (AtmosphereLevel level : List.of(
                AtmosphereLevel.NEUTRAL,
                AtmosphereLevel.LIGHT,
                AtmosphereLevel.MEDIUM,
                AtmosphereLevel.HEAVY,
                AtmosphereLevel.BEYOND)) {
            double mid = level == AtmosphereLevel.BEYOND ? 0.71 : (level.lambdaLow() + level.lambdaHigh()) / 2;
            boolean one = level == AtmosphereLevel.NEUTRAL || level == AtmosphereLevel.LIGHT;
            double y = Math.max(last + 19, c.y(mid) - (one ? 0 : 9));
            Say.at(g, p, level.id(), x, y, 14, true, Ink.INK, TextAlignment.LEFT, VPos.CENTER, false);
            String co = co(level);
            double ty = one ? y : y + 18;
            double tx = one ? x + TextSizes.width(level.id(), Fonts.bold(14)) + 8 : x;
            Say.at(g, p, co, tx, ty, 12.5, false, Ink.INK2, TextAlignment.LEFT, VPos.CENTER, false);
            last = ty;
        }
    }

    /** CO in dry gas between the level's ends, read off the curve; words where the curve does not pass there. */
    private String co(AtmosphereLevel level) {
        Double rich = coAt(Math.max(0.62, level.lambdaLow()));
        Double lean = coAt(level.lambdaHigh());
        if (level == AtmosphereLevel.BEYOND) {
            return lean == null ? WASTE : String.format(Locale.ROOT, "waste, CO over %.1f %%", lean);
        }
        return rich == null || lean == null ? "" : String.format(Locale.ROOT, "CO %.1f–%.1f %%", lean, rich);
    }

    private Double coAt(double lambda) {
        List<DamperCurve.Point> pts = gas.top().points();
        for (int i = 1; i < pts.size(); i++) {
            var a = pts.get(i - 1).state();
            var b = pts.get(i).state();
            if (a.lambda().isPresent()
                    && b.lambda().isPresent()
                    && a.shown().isPresent()
                    && b.shown().isPresent()
                    && a.lambda().getAsDouble() <= lambda
                    && b.lambda().getAsDouble() >= lambda) {
                double t = (lambda - a.lambda().getAsDouble())
                        / Math.max(1e-9, b.lambda().getAsDouble() - a.lambda().getAsDouble());
                return 100
                        * (a.shown().get().dryCo()
                                + t * (b.shown().get().dryCo() - a.shown().get().dryCo()));
            }
        }
        return null;
    }
}
