package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import portwright.calc.firing.Relight;
import portwright.review.LightingLimits;
import portwright.review.Review;
import portwright.units.Format;

/** What lighting again after a lost flame costs in degrees, and whether gas may then be lit. */
public final class RelightWords {
    private RelightWords() {}

    static List<ReportLine> lines(Review review) {
        List<Relight> all = review.firing().relights();
        if (all.isEmpty()) {
            return List.of();
        }
        Relight hot = Relight.hottest(all);
        Relight cold = Relight.coldest(all);
        return List.of(
                new ReportLine(
                        "to light again",
                        "after a lost flame in step " + (hot.step() + 1) + " at " + n(hot.fromK() - ZERO_C)
                                + " °C, " + n(hot.openS() / 60) + " min with ports open and plate off: expect "
                                + drop(hot, "with them as the step has them")),
                new ReportLine(
                        "",
                        "Coldest: step " + (cold.step() + 1) + " from " + n(cold.fromK() - ZERO_C) + " to "
                                + n(cold.offK() - ZERO_C) + " °C, elements off; "
                                + (allowed(review, cold)
                                        ? "over the " + n(limitC(review)) + " °C that the card asks for"
                                        : "UNDER the " + n(limitC(review))
                                                + " °C that the card asks for: heat by electricity before lighting")));
    }

    /** For the card; empty without gas or forecast. */
    public static String card(Review review) {
        if (review.firing() == null || !review.firing().forecast().known()) {
            return "";
        }
        List<Relight> all = review.firing().relights();
        return all.isEmpty()
                ? ""
                : "Relit near the top after " + n(all.get(0).openS() / 60) + " min open: "
                        + drop(Relight.hottest(all), "lower with them on") + ".";
    }

    private static String drop(Relight r, String helped) {
        double off = r.fromK() - r.offK();
        double on = r.fromK() - r.onK();
        return "about " + n(off) + " °C lower (" + n(off * 1.8) + " °F), elements off"
                + (off - on < 1 ? "" : "; " + n(Math.max(0, on)) + " °C " + helped);
    }

    private static boolean allowed(Review review, Relight r) {
        return r.offK() - ZERO_C >= limitC(review);
    }

    private static double limitC(Review review) {
        return LightingLimits.meter(review.design());
    }

    static void write(ObjectNode root, Review review) {
        var list = root.putArray("relight");
        for (Relight r : review.firing().relights()) {
            ObjectNode o = list.addObject().put("index", r.step());
            Json.number(o, "openMinutes", r.openS() / 60);
            Json.number(o, "fromC", r.fromK() - ZERO_C);
            Json.number(o, "elementsOffC", r.offK() - ZERO_C);
            Json.number(o, "elementsAsAskedC", r.onK() - ZERO_C);
            o.put("overLightingLimit", allowed(review, r));
        }
    }

    private static String n(double v) {
        return Format.plain(v, 0);
    }
}
