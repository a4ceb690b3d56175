package portwright.app.doc;

import portwright.model.UnitSystem;
import portwright.units.Format;

/** The room for a hole's centre in words. */
public final class RegionWords {
    /** As long as any of these words get: a view keeps the room of this text. */
    public static final String LONGEST = cleared("10000 cm²", "floor", 12);

    private RegionWords() {}

    /** Area and number of places; {@code null} while they are worked out. */
    public static String of(RegionDesk.Region r, UnitSystem units) {
        if (r == null) {
            return "Where it may go is being worked out.";
        }
        if (r.pieces().isEmpty()) {
            return "No place of the " + r.on().id()
                    + " is clear for it. Take a smaller hole, or move what is in the way.";
        }
        int n = r.pieces().size();
        String area = units == UnitSystem.INCH
                ? Format.plain(r.areaMm2() / 645.16, 0) + " in²"
                : Format.plain(r.areaMm2() / 100, 0) + " cm²";
        return cleared(area, r.on().id(), n);
    }

    private static String cleared(String area, String part, int n) {
        return "Its centre has " + area + " of clear " + part
                + (n == 1 ? "" : " in " + n + " places")
                + ", ruled on the board. Rules that look at all holes together still judge.";
    }
}
