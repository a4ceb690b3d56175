package portwright.sheet;

import portwright.drawing.CheckBar;
import portwright.drawing.Pen;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;
import portwright.geometry.Pt;

/** Foot of the last sheets: both check bars, the sheet's number, and which design this is. */
final class LastFoot {
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
        pen.text(number, new Pt(x, edge + 9), Pen.Align.LEFT, 0, TextStyle.BOLD);
        line(pen, job.kiln().design().title(), x, edge + 4.6, room);
        line(pen, "content " + job.mark().words() + " · " + job.fileName(), x, edge + 0.8, room);
        if (job.stops() > 0) {
            Strike.through(pen, new Frame(job.paper()).inside(), Strike.stops(job.stops(), "DO NOT DRILL"));
        }
    }

    private static void line(Pen pen, String words, double x, double y, double room) {
        pen.text(Words.fit(pen, words, room, FirstPage.SMALL), new Pt(x, y), Pen.Align.LEFT, 0, FirstPage.SMALL);
    }
}
