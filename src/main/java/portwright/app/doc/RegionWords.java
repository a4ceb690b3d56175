package portwright.app.doc;

import portwright.units.Format;

/** The room for a hole's centre in words. */
public final class RegionWords {
    /** As long as any of these words get: a view keeps the room of this text. */
    public static final String LONGEST = cleared("10000", "floor", 12);

    private RegionWords() {}

    /** Area and number of places; {@code null} while they are worked out. */
    public static String of(RegionDesk.Region r) {
        if (r == null) {
            return "Where it may go is being worked out.";
        }
        if (r.pieces().isEmpty()) {
            return "No place of the " + r.on().id()
                    + " is clear for it. Take a smaller hole, or move what is in the way.";
        }
        int n = r.pieces().size();
        return cleared(Format.plain(r.areaMm2() / 100, 0), r.on().id(), n);
    }

    private static String cleared(String cm2, String part, int n) {
        return "Its centre has " + cm2 + " cm² of clear " + part
                + (n == 1 ? "" : " in " + n + " places")
                + ", ruled on the board. Rules that look at all holes together still judge.";
    }
}
