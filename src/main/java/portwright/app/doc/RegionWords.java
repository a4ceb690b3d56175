package portwright.app.doc;

import portwright.model.UnitSystem;
import portwright.units.Format;

/** The room for a hole's centre in words. */
public final class RegionWords {
    /** As long as any of these words get: a view keeps the room of this text. */
    public static final String LONGEST = cleared("10000 cm²", "10000 cm²", "floor", 12);

    private RegionWords() {}

    /** Area and number of places; {@code null} while they are worked out. */
    public static String of(RegionDesk.Region r, UnitSystem units) {
        if (r == null) {
            return "Where it may go is being worked out.";
        }
        if (r.pieces().isEmpty()) {
            return "No place of the " + r.on().id()
                    + " takes it without a stop. Take a smaller hole, or move what is in the way.";
        }
        int n = r.pieces().size();
        return cleared(area(r.clearMm2(), units), area(r.areaMm2(), units), r.on().id(), n);
    }

    private static String area(double mm2, UnitSystem units) {
        return units == UnitSystem.INCH ? Format.plain(mm2 / 645.16, 0) + " in²" : Format.plain(mm2 / 100, 0) + " cm²";
    }

    private static String cleared(String clear, String area, String part, int n) {
        return "Its centre has " + clear + " of clear " + part + "; with places that are cautioned " + area
                + (n == 1 ? "" : " in " + n + " places")
                + ", ruled on the board. Rules that look at all holes together still judge.";
    }
}
