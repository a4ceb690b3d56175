package portwright.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import portwright.model.Cylinder;
import portwright.review.CylinderCount;
import portwright.review.Known;
import portwright.review.Review;
import portwright.units.Format;

/** How many of the stated cylinders a firing takes. */
final class GasWords {
    private GasWords() {}

    /** One line; empty where no gas burns. */
    static List<ReportLine> cylinders(Review review) {
        if (!(review.firing().totals().fuelKg() > 0)) {
            return List.of();
        }
        return List.of(new ReportLine("cylinders", words(review, CylinderCount.of(review))));
    }

    private static String words(Review review, Known<Optional<CylinderCount>> count) {
        if (!count.known()) {
            return "not checked: add " + String.join(", ", count.needs());
        }
        if (count.value().isEmpty()) {
            return Boolean.FALSE.equals(review.supply().bottled())
                    ? "none, the gas comes from the mains"
                    : "not checked: the firing does not finish, so nobody knows how much it burns";
        }
        CylinderCount c = count.value().get();
        Cylinder typed = review.design().supply().cylinder();
        if (Double.isNaN(c.needed())) {
            return "the stated ones are empty; the firing burns " + n(c.burntKg(), 2) + " kg";
        }
        return n(c.taken(), 2) + " of one filled as stated (" + n(c.eachKg(), 1) + " kg: "
                + typed.capacity().typed() + ", " + typed.fill().typed() + "): " + n(c.needed(), 0)
                + " by weight, " + c.stated() + " stated" + (c.enough() ? "" : ", NOT ENOUGH")
                + ". Cold lets less gas off: see cylinder-boil-off in check";
    }

    static void cylinders(ObjectNode root, Review review) {
        Known<Optional<CylinderCount>> count = CylinderCount.of(review);
        ObjectNode o = root.putObject("cylinders");
        if (!count.known()) {
            var needs = o.putArray("notChecked");
            count.needs().forEach(needs::add);
        }
        CylinderCount c = count.known() ? count.value().orElse(null) : null;
        Json.number(o, "taken", c == null || !(c.eachKg() > 0) ? null : c.taken());
        Json.number(o, "needed", c == null || Double.isNaN(c.needed()) ? null : c.needed());
        Json.number(o, "stated", c == null ? null : (double) c.stated());
        Json.number(o, "kgEach", c == null ? null : c.eachKg());
        if (c != null) {
            o.put("enough", c.enough());
        }
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
