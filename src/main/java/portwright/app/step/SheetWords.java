package portwright.app.step;

import portwright.sheet.SheetBook;

/** Which sheet of a print shows what. */
final class SheetWords {
    private SheetWords() {}

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
