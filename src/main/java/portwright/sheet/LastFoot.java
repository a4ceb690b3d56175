package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.CheckBar;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;

/** Foot of the last sheets: both check bars, the sheet's number, and which design this is. */
final class LastFoot {
    /** From line to line, mm. */
    private static final double LINE = 3.8;

    private LastFoot() {}

    static void draw(Job job, Page page, Fonts fonts, String number) {
        double sx = job.options().scaleX();
        double sy = job.options().scaleY();
        double edge = Frame.MARGIN;
        CheckBar.across(new PdfPen(page, fonts, edge + 2, edge + 5.4, sx, sy), new Pt(0, 0));
        double right = page.widthMm() - edge;
        CheckBar.down(
                new PdfPen(page, fonts, right - 7, edge + 10 + CheckBar.INCH_LENGTH_MM * sy, sx, sy), new Pt(0, 0));
        Pen pen = PdfPen.onPage(page, fonts);
        double x = edge + 2 + CheckBar.INCH_LENGTH_MM * sx + 12;
        double room = right - 14 - x;
        List<String> lines = new ArrayList<>(lines(pen, job.kiln().design().title(), room));
        lines.addAll(lines(pen, "content " + job.mark().words() + " · " + job.fileName(), room));
        for (int i = 0; i < lines.size(); i++) {
            pen.text(
                    lines.get(i),
                    new Pt(x, edge + 0.8 + LINE * (lines.size() - 1 - i)),
                    Pen.Align.LEFT,
                    0,
                    FirstPage.SMALL);
        }
        pen.text(number, new Pt(x, edge + 1.4 + LINE * lines.size()), Pen.Align.LEFT, 0, TextStyle.BOLD);
        if (job.stops() > 0) {
            Strike.through(pen, new Frame(job.paper()).inside(), Strike.stops(job.stops(), "DO NOT DRILL"));
        }
    }

    /** The words in two lines at most. */
    private static List<String> lines(Pen pen, String words, double room) {
        List<String> all = Words.wrap(pen, words, room, FirstPage.SMALL);
        return all.size() <= 2
                ? all
                : List.of(
                        all.get(0),
                        Words.fit(pen, String.join(" ", all.subList(1, all.size())), room, FirstPage.SMALL));
    }
}
