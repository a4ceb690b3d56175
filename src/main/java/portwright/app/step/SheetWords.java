package portwright.app.step;

import java.util.List;
import portwright.app.doc.PaperModel;
import portwright.model.UnitSystem;
import portwright.sheet.SheetBook;

/** Which sheet of a print shows what. */
final class SheetWords {
    private SheetWords() {}

    /** How many sheets there are, how far they overlap, and the mark of what they show. */
    static String count(PaperModel.Pages p, UnitSystem units) {
        return p.preview().sheets() + " sheets, overlap " + (units == UnitSystem.INCH ? "15/32 in" : "12 mm")
                + " or more, content mark " + p.mark();
    }

    /** The first sheet of a face that shows a hole's centre. */
    static int withHole(SheetBook.Layout l) {
        for (var c : l.painter().sawCircles()) {
            for (SheetBook.LaidTile t : l.tiles()) {
                if (t.page() >= 0 && t.window().contains(c.centre())) {
                    return t.page();
                }
            }
        }
        return 0;
    }

    /** What is to be known of a sheet: its holes, and the trim lines and blank sheets of its face; of all faces where it shows none. */
    static String remark(SheetBook.Print print, int page) {
        for (SheetBook.Layout l : print.layouts()) {
            for (SheetBook.LaidTile t : l.tiles()) {
                if (t.page() == page) {
                    String holes = t.holes().isEmpty() ? "No hole on this sheet." : String.join(" ", t.holes());
                    return holes + " " + trims(l.remarks(), "of this face");
                }
            }
        }
        return trims(print.remarks(), "of any face");
    }

    private static String trims(List<String> remarks, String where) {
        return remarks.isEmpty()
                ? "No trim line " + where + " cuts a hole; no sheet is left out as blank."
                : String.join(" ", remarks);
    }

    /** What a sheet shows, in words that follow its number. */
    static String title(SheetBook.Print print, int page) {
        for (SheetBook.Layout l : print.layouts()) {
            for (SheetBook.LaidTile t : l.tiles()) {
                if (t.page() == page) {
                    return " · " + l.words() + " · " + t.name();
                }
            }
        }
        return page == 0 ? " · start here" : " · cautions";
    }
}
