package portwright.app.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.doc.Degrees;
import portwright.app.paint.Chart;
import portwright.app.paint.Fonts;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.app.paint.TextSizes;
import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.Sample;
import portwright.drawing.Ink;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.review.ClimbEnds;
import portwright.review.StepRow;
import portwright.units.Celsius;

/** Temperature over the firing: forecast with its band, times of gas, stall lines, a peg at the end of each step. */
final class ForecastPlot {
    /** Top of the temperature axis where no stall lies above it, °C; also the hottest goal that the hand can pull to. */
    static final double MOST_C = 1400;

    /** No brick of such a kiln lives to see what lies higher, °C. */
    private static final double HIGHEST_C = 1600;

    private static final double PEG_PX = 9;
    /** How far above or below its peg a word may begin, and the steps in which room is looked for, px. */
    private static final double FAR_PX = 120;

    private static final double STEP_PX = 12;

    private final GraphicsContext g;
    private final Palette p;
    private final Chart chart;
    private final List<StepRow> rows;
    private final Places places;
    private final UnitSystem units;

    ForecastPlot(GraphicsContext g, Palette p, Chart chart, List<StepRow> rows, Places places, UnitSystem units) {
        this.units = units;
        this.places = places;
        this.g = g;
        this.p = p;
        this.chart = chart;
        this.rows = rows;
    }

    /** Top of the axis that shows both ends of the climb where they lie, °C. */
    static double topC(ClimbEnds ends) {
        double most = MOST_C;
        for (double k : new double[] {ends.gasK(), ends.electricK()}) {
            double c = k - Celsius.ZERO_C;
            if (c <= HIGHEST_C - 1) {
                most = Math.max(most, Math.ceil((c + 20) / 100) * 100);
            }
        }
        return Math.min(HIGHEST_C, most);
    }

    /** Everything under the pegs. */
    void curves(Forecast f, ClimbEnds ends, double hours) {
        gas();
        int apart = units == UnitSystem.INCH ? 400 : 200;
        for (int d = units == UnitSystem.INCH ? apart : 0; Degrees.celsius(d, units) <= chart.maxY(); d += apart) {
            chart.gridY(Degrees.celsius(d, units), String.valueOf(d));
        }
        hours(chart, hours);
        chart.clip();
        chart.area(curve(f.quick()), curve(f.slow()), p.of(Ink.INK).deriveColor(0, 1, 1, 0.13));
        chart.line(curve(f.quick()), Ink.INK2, 1.4, 7, 4);
        chart.line(curve(f.slow()), Ink.INK2, 1.4, 7, 4);
        List<Pt> nominal = curve(f.nominal());
        chart.line(nominal, Ink.INK, 3.4);
        for (FiringRun run : List.of(f.nominal(), f.quick(), f.slow())) {
            dodge(curve(run));
        }
        chart.unclip();
        stalls(ends.gasK() - Celsius.ZERO_C, ends.electricK() - Celsius.ZERO_C);
        chart.frame();
    }

    private void dodge(List<Pt> line) {
        for (int i = 1; i < line.size(); i++) {
            Pt a = line.get(i - 1);
            Pt b = line.get(i);
            places.line(chart.x(a.x()), chart.y(a.y()), chart.x(b.x()), chart.y(b.y()));
        }
    }

    /** Ticks of the time axis. */
    static void hours(Chart chart, double hours) {
        double px = (chart.right() - chart.left()) / hours;
        int every = 1;
        while (every * px < 34) {
            every *= 2;
        }
        for (int t = 0; t <= hours; t += every) {
            chart.tickX(t, String.valueOf(t));
        }
    }

    private void gas() {
        for (StepRow r : rows) {
            if (r.gasKg() > 0) {
                boolean heavy = "heavy".equals(r.atmosphere()) || "beyond".equals(r.atmosphere());
                chart.upright(r.startHours(), r.endHours(), ink(r.atmosphere()), heavy ? 0.35 : 0.75);
            }
        }
    }

    private static Ink ink(String atmosphere) {
        return switch (atmosphere == null ? "" : atmosphere) {
            case "heavy", "beyond" -> Ink.FLAME;
            case "light", "medium" -> Ink.RUTILE_FILL;
            default -> Ink.COBALT_FILL;
        };
    }

    private static List<Pt> curve(FiringRun run) {
        List<Pt> out = new ArrayList<>();
        for (Sample s : run.samples()) {
            out.add(new Pt(s.timeS() / 3600, s.chamberK() - Celsius.ZERO_C));
        }
        return out;
    }

    /** Stall lines with their words; in one line of words where they lie close or beyond the axis. */
    private void stalls(double allC, double electricC) {
        boolean all = stallLine(allC);
        boolean electric = stallLine(electricC);
        boolean same = Forecast.alike(allC, electricC) || allC > chart.maxY() && electricC > chart.maxY();
        boolean close = Math.abs(chart.y(allC) - chart.y(electricC)) < 36;
        if (all && electric && same) {
            say(allC, degrees(allC) + ", with or without gas");
        } else if (all && electric && close) {
            say(Math.min(allC, electricC), degrees(allC) + " with gas, " + degrees(electricC) + " electricity alone");
        } else {
            if (all) {
                say(allC, degrees(allC) + ", electricity and gas");
            }
            if (electric) {
                say(electricC, degrees(electricC) + ", electricity alone");
            }
        }
    }

    private String degrees(double c) {
        return c > chart.maxY() ? "over " + Degrees.words(chart.maxY(), units) : Degrees.words(c, units);
    }

    private boolean stallLine(double c) {
        if (!Double.isFinite(c) || c < 100) {
            return false;
        }
        if (c <= chart.maxY()) {
            List<Pt> whole = List.of(new Pt(chart.minX(), c), new Pt(chart.maxX(), c));
            chart.line(whole, Ink.OXBLOOD, 2, 14, 6);
            places.line(chart.left(), chart.y(c), chart.right(), chart.y(c));
        }
        return true;
    }

    private void say(double c, String words) {
        String line = (c > chart.maxY() ? "↑ stall " : "stall ") + words;
        double x = chart.left() + 12;
        double y = c > chart.maxY() ? chart.top() + 14 : chart.y(c) + 15;
        chart.say(line, x, y, 13, true, Ink.OXBLOOD, TextAlignment.LEFT, VPos.CENTER, true);
        places.name(x, y - 9, TextSizes.width(line, Fonts.bold(13)), 18);
    }

    /** A ring at the end of each step with its words; {@code held} is the index of the step in the hand, −1 for none. */
    void pegs(int held, double heldC) {
        for (StepRow r : rows) {
            boolean mine = held == r.index();
            double x = chart.x(r.endHours());
            double y = chart.y(mine ? heldC : r.endC());
            g.setFill(p.of(Ink.PAPER));
            g.fillOval(x - PEG_PX, y - PEG_PX, 2 * PEG_PX, 2 * PEG_PX);
            g.setStroke(p.of(mine ? Ink.EMBER : Ink.COBALT));
            g.setLineWidth(3);
            g.setLineDashes();
            g.strokeOval(x - PEG_PX, y - PEG_PX, 2 * PEG_PX, 2 * PEG_PX);
            places.name(x - PEG_PX, y - PEG_PX, 2 * PEG_PX, 2 * PEG_PX);
        }
        for (StepRow r : rows) {
            boolean mine = held == r.index();
            String head = r.sags()
                    ? r.goal() + ": sags"
                    : r.stalled()
                            ? r.goal() + stall(r.ending())
                            : r.goal() + (r.atmosphere() == null ? "" : " · " + r.atmosphere());
            String tail =
                    mine ? Degrees.words(heldC, units) : hm(r.endHours()) + " · " + Degrees.words(r.endC(), units);
            words(head, tail, chart.x(r.endHours()), chart.y(mine ? heldC : r.endC()), !r.reached());
        }
    }

    private static String stall(Ending e) {
        return e == Ending.FALLS ? ": falls" : e == Ending.KEEPS_HOT ? ": does not fall" : ": stalls";
    }

    /** Two lines beside a peg, in the first of a fixed list of places where nothing stands yet; left out where all are taken or a leader would strike other words. */
    private void words(String head, String tail, double x, double y, boolean stalled) {
        double w = Math.max(TextSizes.width(head, Fonts.bold(13)), TextSizes.width(tail, Fonts.sans(13)));
        double h = 34;
        double[][] within =
                corners(x, y, w).stream().filter(c -> inside(c, w, h)).toArray(double[][]::new);
        double[][] reached = Arrays.stream(within)
                .filter(c -> leader(x, y, c, w, h)
                        .map(l -> !places.strikes(l[0], l[1], l[2], l[3]))
                        .orElse(true))
                .toArray(double[][]::new);
        double[] at = places.first(reached, w, h);
        if (at != null) {
            places.name(at[0], at[1], w, h);
            leader(x, y, at, w, h).ifPresent(this::stroke);
            Ink ink = stalled ? Ink.OXBLOOD : Ink.INK;
            Say.at(g, p, head, at[0], at[1] + 9, 13, true, ink, TextAlignment.LEFT, VPos.CENTER, true);
            Say.at(g, p, tail, at[0], at[1] + 26, 13, false, Ink.INK, TextAlignment.LEFT, VPos.CENTER, true);
        }
    }

    /** Upper left corners for words of a width: the usual ones beside a peg, then others, the nearest first. */
    private static List<double[]> corners(double x, double y, double w) {
        List<double[]> usual = new ArrayList<>(List.of(
                new double[] {x - 16 - w, y - 30}, new double[] {x + 16, y + 6}, new double[] {x + 16, y - 12}));
        List<double[]> far = new ArrayList<>();
        for (double dx : new double[] {-w - 16, 16, -w / 2, -w - 60, 60, -w - 110, 110}) {
            for (double dy = -FAR_PX; dy <= FAR_PX; dy += STEP_PX) {
                far.add(new double[] {x + dx, y + dy});
            }
        }
        far.sort(Comparator.comparingDouble(c -> Math.hypot(c[0] + w / 2 - x, 2 * (c[1] + 17 - y))));
        usual.addAll(far);
        return usual;
    }

    /** A line from a peg to words that do not touch it; empty for words beside it. */
    private static Optional<double[]> leader(double x, double y, double[] at, double w, double h) {
        double nx = Math.max(at[0], Math.min(at[0] + w, x));
        double ny = Math.max(at[1], Math.min(at[1] + h, y));
        double d = Math.hypot(nx - x, ny - y);
        double start = (PEG_PX + 3) / d;
        return d > 24
                ? Optional.of(new double[] {x + (nx - x) * start, y + (ny - y) * start, nx, ny})
                : Optional.empty();
    }

    private void stroke(double[] l) {
        g.setStroke(p.of(Ink.COBALT));
        g.setLineWidth(1.2);
        g.strokeLine(l[0], l[1], l[2], l[3]);
        places.line(l[0], l[1], l[2], l[3]);
    }

    private boolean inside(double[] at, double w, double h) {
        return at[0] > chart.left() + 4
                && at[0] + w < chart.right() - 4
                && at[1] > chart.top() + 2
                && at[1] + h < chart.bottom() - 2;
    }

    static String hm(double hours) {
        long min = Math.round(hours * 60);
        return min / 60 + " h " + String.format(Locale.ROOT, "%02d", min % 60);
    }
}
