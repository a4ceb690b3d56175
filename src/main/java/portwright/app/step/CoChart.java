package portwright.app.step;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import portwright.app.paint.Chart;
import portwright.app.paint.Palette;
import portwright.app.paint.Say;
import portwright.calc.room.AlarmWindow;
import portwright.calc.room.RoomCo;
import portwright.data.CoAlarmPoint;
import portwright.data.ExposureLimit;
import portwright.data.LimitFamily;
import portwright.drawing.Ink;
import portwright.form.FieldNames;
import portwright.geometry.Pt;
import portwright.review.RoomReview;
import portwright.units.Format;

/** Carbon monoxide in the room over the firing, with the limits and who set them, and when a house alarm would sound. */
final class CoChart {
    /** Room right of the plot for the words of the limits. */
    static final double WORDS_PX = 236;

    private static final double LINE_PX = 17;
    /** From the middle of words to a limit's line at least, px. */
    private static final double LIMIT_PX = 13;

    private static final double LOW_PPM = 1;
    /** How far the plot reaches at least over the peak, so that its words stand above the curve. */
    private static final double HEADROOM = 3;

    private static final double BESIDE_PX = 14;

    private final GraphicsContext g;
    private final Palette p;

    CoChart(GraphicsContext g, Palette p) {
        this.g = g;
        this.p = p;
    }

    void paint(RoomReview r, double x, double y, double w, double h) {
        Say.left(g, p, "CO, ppm, from lighting on (each mark ten times the last)", 24, y - 14, 13, false, Ink.INK2);
        if (!r.co().known()) {
            Say.lines(g, p, "Not computed. Fill in " + FieldNames.of(r.co().needs()) + ".", 24, y + 20, w, 14, Ink.INK);
            return;
        }
        RoomReview.Co co = r.co().value();
        List<Pt> calm = pts(r.chartCalm());
        double from = calm.isEmpty() ? 0 : calm.get(0).x();
        double to = calm.isEmpty()
                ? 1
                : Math.max(from + 1, calm.get(calm.size() - 1).x());
        double most = Math.max(
                1000, Math.pow(10, Math.ceil(Math.log10(Math.max(10, co.calm().peakPpm() * HEADROOM)))));
        Chart c = new Chart(g, p, x, y, w, Math.max(80, h), from, to, 1, most, true);
        c.forbidden(co.ceiling().value(), most);
        for (double v = 1; v <= most; v *= 10) {
            c.gridY(v, grouped(v));
        }
        double step = to - from > 20 ? 4 : to - from > 10 ? 2 : 1;
        for (double t = Math.ceil(from); t <= to; t += step) {
            c.tickX(t, Math.round(t) + " h");
        }
        String standard = AlarmWindow.standard(r.family());
        limits(c, co, AlarmWindow.all(co.calm(), standard).isEmpty() ? null : standard);
        c.clip();
        boolean helps = co.stated().peakPpm() < co.calm().peakPpm() * 0.98;
        List<Pt> windy = pts(r.chartStated());
        if (helps) {
            c.line(windy, Ink.CELADON, 2.6, 9, 5);
        }
        c.line(calm, Ink.INK, 3.4);
        alarms(c, co, r.family());
        if (helps) {
            beside(
                    c,
                    calm,
                    "with the stated wind (dashed): " + grouped(co.stated().peakPpm()));
        }
        name(c, calm, "wind still, " + grouped(co.calm().peakPpm()) + " at worst", limits(co));
        c.unclip();
        c.frame();
    }

    /** The limits, the highest first. */
    private static List<ExposureLimit> limits(RoomReview.Co co) {
        List<ExposureLimit> all = new ArrayList<>(List.of(co.ceiling(), co.eightHours()));
        if (co.quarterHour() != null) {
            all.add(co.quarterHour());
        }
        all.sort(Comparator.comparingDouble(ExposureLimit::value).reversed());
        return all;
    }

    /** The limits, and right of the plot, where no curve runs, what everything is; {@code alarm} null where no bar is drawn. */
    private void limits(Chart c, RoomReview.Co co, String alarm) {
        List<ExposureLimit> all = limits(co);
        double last = c.top() - LINE_PX;
        for (ExposureLimit l : all) {
            c.line(
                    List.of(new Pt(c.minX(), l.value()), new Pt(c.maxX(), l.value())),
                    Ink.OXBLOOD,
                    2,
                    l == co.ceiling() ? new double[0] : new double[] {14, 6});
            last = Math.max(c.y(l.value()), last + LINE_PX);
            String over = l.averagingMinutes() == 0
                    ? "at any time"
                    : l.averagingMinutes() < 60
                            ? "over " + l.averagingMinutes() + " min"
                            : "over " + l.averagingMinutes() / 60 + " h";
            c.say(
                    Format.plain(l.value(), 0) + " " + over + ", " + l.body(),
                    c.right() + 12,
                    last,
                    13,
                    true,
                    Ink.OXBLOOD,
                    TextAlignment.LEFT,
                    VPos.CENTER,
                    false);
        }
        double y = last + 26;
        for (String line : List.of("struck area: over the ceiling;", "shut gas, nobody stays")) {
            Say.left(g, p, line, c.right() + 12, y, 13, false, Ink.INK2);
            y += LINE_PX;
        }
        if (alarm != null) {
            double above = c.y(co.ceiling().value()) - c.top();
            y = above > 3 * LINE_PX ? c.top() + LINE_PX / 2 : y;
            for (String line : List.of("bars: a house alarm sounds", "between (" + alarm + ")")) {
                Say.left(g, p, line, c.right() + 12, y, 13, true, Ink.RUTILE);
                y += LINE_PX;
            }
        }
    }

    /** A bar from when an alarm may sound to when it must, at each level of its standard. */
    private void alarms(Chart c, RoomReview.Co co, LimitFamily family) {
        for (AlarmWindow a : AlarmWindow.all(co.calm(), AlarmWindow.standard(family))) {
            CoAlarmPoint point = a.point();
            boolean must = a.latestS().isPresent();
            Pt at = new Pt((a.earliestS() - co.gasOnS()) / 3600, point.ppm());
            Pt by = new Pt((a.latestS().orElse(a.untilS()) - co.gasOnS()) / 3600, point.ppm());
            c.line(List.of(at, by), Ink.PAPER, 9);
            c.line(List.of(at, by), Ink.RUTILE, 5, must ? new double[0] : new double[] {5, 5});
        }
    }

    /** Words over the highest point of a curve, or as near above or under it as no limit runs through them. */
    private static void name(Chart c, List<Pt> line, String words, List<ExposureLimit> limits) {
        line.stream().max(Comparator.comparingDouble(Pt::y)).ifPresent(best -> {
            double px = Math.max(c.left() + 130, Math.min(c.right() - 130, c.x(best.x())));
            double top = Math.max(c.top() + 12, c.y(best.y()) - 16);
            double py = IntStream.range(0, 40)
                    .mapToDouble(i -> top + (i % 2 == 0 ? -i : i + 1) * 2)
                    .filter(y -> y >= c.top() + 12)
                    .filter(y -> limits.stream().noneMatch(l -> Math.abs(c.y(l.value()) - y) < LIMIT_PX))
                    .findFirst()
                    .orElse(top);
            c.say(words, px, py, 13.5, true, Ink.INK, TextAlignment.CENTER, VPos.CENTER, true);
        });
    }

    /** Words low beside all curves, where there is more room: neither curve nor limit crosses them. */
    private static void beside(Chart c, List<Pt> widest, String words) {
        double first = c.right();
        double last = c.left();
        for (Pt q : widest) {
            if (q.y() > LOW_PPM) {
                first = Math.min(first, c.x(q.x()));
                last = Math.max(last, c.x(q.x()));
            }
        }
        boolean before = first - c.left() > c.right() - last;
        c.say(
                words,
                before ? first - BESIDE_PX : last + BESIDE_PX,
                c.y(3 * LOW_PPM),
                13.5,
                true,
                Ink.CELADON,
                before ? TextAlignment.RIGHT : TextAlignment.LEFT,
                VPos.CENTER,
                true);
    }

    private static List<Pt> pts(List<RoomCo.Sample> series) {
        List<Pt> out = new ArrayList<>();
        series.forEach(s -> out.add(new Pt(s.timeS() / 3600, Math.max(0.01, s.ppm()))));
        return out;
    }

    /** A whole number with its thousands apart. */
    static String grouped(double v) {
        return Double.isFinite(v)
                ? String.format(java.util.Locale.ROOT, "%,.0f", v).replace(',', '\u202f')
                : "–";
    }
}
