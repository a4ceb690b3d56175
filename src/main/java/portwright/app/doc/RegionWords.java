package portwright.app.doc;

import java.util.List;
import portwright.check.NotChecked;
import portwright.form.FieldNames;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** The room for a hole's centre in words. */
public final class RegionWords {
    private RegionWords() {}

    /** As long as any of these words get for such a region, {@code null} while it is worked out: a view keeps the room of this text. */
    public static String longest(RegionDesk.Region r) {
        return cleared("10000 cm²", "10000 cm²", "floor", 12, r == null ? "" : unknown(r.unknown()));
    }

    /** Area and number of places, and what is not known of them; {@code null} while they are worked out. */
    public static String of(RegionDesk.Region r, UnitSystem units) {
        if (r == null) {
            return "Where it may go is being worked out.";
        }
        if (r.pieces().isEmpty()) {
            return "No place of the " + r.on().id()
                    + " takes it without a stop. Take a smaller hole, or move what is in the way.";
        }
        int n = r.pieces().size();
        return cleared(area(r.clearMm2(), units), area(r.areaMm2(), units), r.on().id(), n, unknown(r.unknown()));
    }

    /** What is ruled on the board, in a few words. */
    public static String ruled(RegionDesk.Region r) {
        return "ruled: where " + r.hole() + " may go" + partly(r);
    }

    /** The same where the board is narrow. */
    public static String ruledShort(RegionDesk.Region r) {
        return "ruled: it may go here" + partly(r);
    }

    private static String partly(RegionDesk.Region r) {
        return r.unknown().isEmpty() ? "" : ", not all checked";
    }

    private static String area(double mm2, UnitSystem units) {
        return units == UnitSystem.INCH ? Format.plain(mm2 / 645.16, 0) + " in²" : Format.plain(mm2 / 100, 0) + " cm²";
    }

    /** Fields that lack, by the names of the forms, then what is not checked for another cause; empty for nothing. */
    private static String unknown(List<NotChecked> some) {
        List<String> fields = some.stream()
                .filter(n -> n.cause().isEmpty())
                .flatMap(n -> n.needs().stream())
                .distinct()
                .toList();
        StringBuilder out = new StringBuilder();
        if (!fields.isEmpty()) {
            out.append("Not known: ").append(FieldNames.of(fields)).append(". ");
        }
        some.stream()
                .filter(n -> !n.cause().isEmpty())
                .map(FieldNames::told)
                .distinct()
                .forEach(t -> out.append("Not checked: ").append(t).append(". "));
        return out.toString();
    }

    private static String cleared(String clear, String area, String part, int n, String unknown) {
        String places = n == 1 ? "" : " in " + n + " places";
        return unknown.isEmpty()
                ? "Its centre has " + clear + " of clear " + part + "; with places that are cautioned " + area + places
                        + ", ruled on the board. Rules that look at all holes together still judge."
                : unknown + "Without that in the way its centre would have " + clear + " of the " + part
                        + "; with places that are cautioned " + area + places
                        + ", ruled on the board. What is not known may forbid any of it.";
    }
}
