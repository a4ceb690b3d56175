package portwright.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.KilnHeat;
import portwright.data.FiringFigure;
import portwright.model.Heat;
import portwright.review.FiringReview;
import portwright.review.Missed;
import portwright.review.PowerMargin;
import portwright.review.Review;
import portwright.review.TradePower;
import portwright.units.Format;

/** The trade's rule of thumb about power beside the forecast, and what the firing can lose before its goal is lost. */
public final class PowerWords {
    /** So far under the smaller case, W/in², the rule says no more than that. */
    private static final double BELOW = 0.1;

    private PowerWords() {}

    static List<ReportLine> lines(Review review) {
        List<ReportLine> out = new ArrayList<>();
        if (review.design().kiln().noElements()) {
            out.add(new ReportLine("power", noElements(review)));
        }
        TradePower.of(review).ifPresent(p -> {
            out.add(new ReportLine("power", rule(p)));
            out.add(new ReportLine("", forecast(p, review.firing())));
        });
        String margin = margin(review);
        if (!margin.isEmpty()) {
            out.add(new ReportLine("goals are lost", margin));
        }
        return out;
    }

    private static String noElements(Review review) {
        List<String> vain = new ArrayList<>();
        for (int i = 0; i < review.design().firing().steps().size(); i++) {
            Heat heat = review.design().firing().steps().get(i).heat();
            if (heat == Heat.ELECTRIC || heat == Heat.BOTH) {
                vain.add("step " + (i + 1));
            }
        }
        return "no elements (kiln.elements is []), so no electric heat"
                + (vain.isEmpty() ? "" : ": in vain asked for by " + String.join(", ", vain));
    }

    /** One line for the card where trade and forecast contradict each other; empty else. */
    public static String conflict(Review review) {
        return TradePower.of(review)
                .filter(TradePower::conflict)
                .map(
                        p -> "Two sources disagree. " + n(p.wPerIn2(), 1) + " W for each square inch inside: "
                                + (p.trade() == TradePower.Says.STOPS_NEAR_CONE_8
                                        ? "the trade says that such a kiln stops near cone 8 on electricity, the forecast that it reaches "
                                                + p.goal()
                                                + goneAt(review.firing().electricMargin()) + ". Trust cones."
                                        : "the trade says that such a kiln reaches cone 10 on electricity, the forecast that it does not. Trust cones."))
                .orElse("");
    }

    private static String goneAt(PowerMargin m) {
        return Double.isFinite(m.elementRise())
                ? " until the elements have " + n(m.elementRise() * 100, 0) + " % more resistance"
                : "";
    }

    private static String rule(TradePower p) {
        FiringFigure enough = TradePower.figure("power-enough");
        FiringFigure less = TradePower.figure("power-short");
        return n(p.wPerIn2(), 1) + " W per square inch of inside surface, new elements. The trade's rule of thumb: "
                + n(enough.low(), 1) + " reaches cone 10, " + n(less.high(), 1) + " stops near cone 8; "
                + switch (p.trade()) {
                    case STOPS_NEAR_CONE_8 ->
                        p.wPerIn2() < less.high() - BELOW
                                ? "this kiln lies below both and stops earlier."
                                : "so this kiln would stop near cone 8.";
                    case REACHES_CONE_10 -> "so this kiln would reach cone 10.";
                    case NOTHING ->
                        "it says nothing of what lies between. This kiln is nearer to the one that "
                                + (p.wPerIn2() < (enough.low() + less.high()) / 2 ? "stops." : "reaches.");
                };
    }

    private static String forecast(TradePower p, FiringReview firing) {
        String electric = "electricity alone " + (p.electricReaches() ? "reaches " : "does not reach ") + p.goal();
        if (p.conflict()) {
            return "THE SOURCES DISAGREE: by this forecast " + electric
                    + (p.electricReaches() ? goneAt(firing.electricMargin()) : "")
                    + ". The rule is one trade page about kilns of unknown wear, voltage and lid; the forecast takes brick as tabled. Neither is averaged into the other: fire cones before ware.";
        }
        return "By this forecast " + electric
                + (p.reaches() && !p.electricReaches() ? "; with the gas of the steps it is reached" : "")
                + (p.electricReaches()
                                && !SlowHeat.words(firing.allElectric().value().run())
                                        .isEmpty()
                        ? ", see climb ends at"
                        : "")
                + ".";
    }

    /** The step whose goal is lost first, by number and goal. */
    private static String step(Review review, int index) {
        return "step " + (index + 1) + ", "
                + Missed.goal(review.design().firing().steps().get(index)) + ",";
    }

    private static String margin(Review review) {
        PowerMargin m = review.firing().margin();
        KilnHeat kiln = review.firing().kiln().value();
        if (Double.isNaN(m.elementRise())) {
            return "";
        }
        List<String> ways = new ArrayList<>();
        if (Double.isFinite(m.elementRise())) {
            ways.add("that of " + step(review, m.riseStep()) + " first, once the elements have "
                    + n(m.elementRise() * 100, 0) + " % more resistance than new (worn ones have 10 to 30 %)");
            ways.add("at a supply " + n(m.voltageDrop() * 100, 0) + " % under its voltage");
        }
        if (Double.isFinite(m.lossFactor())) {
            ways.add((m.lossStep() == m.riseStep() ? "" : "that of " + step(review, m.lossStep()) + " first, ")
                    + "where walls, joints and lid lose " + n((m.lossFactor() / kiln.lossFactor() - 1) * 100, 0)
                    + " % more than reckoned (loss factor " + n(m.lossFactor(), 2) + " for " + n(kiln.lossFactor(), 2)
                    + ")");
        }
        return ways.isEmpty()
                ? "in this firing neither by elements of twice their resistance nor by a loss factor of 3, each by itself with the gas on"
                : String.join(", or ", ways);
    }

    static void write(ObjectNode root, Review review) {
        KilnHeat kiln = review.firing().kiln().value();
        ObjectNode o = root.putObject("power");
        TradePower.of(review).ifPresent(p -> {
            Json.number(o, "wPerIn2", p.wPerIn2());
            o.put("goal", p.goal());
            o.put(
                    "trade",
                    switch (p.trade()) {
                        case STOPS_NEAR_CONE_8 -> "stops near cone 8";
                        case REACHES_CONE_10 -> "reaches cone 10";
                        case NOTHING -> "says nothing";
                    });
            o.put("electricityAloneReaches", p.electricReaches());
            o.put("conflict", p.conflict());
        });
        PowerMargin m = review.firing().margin();
        Json.number(o, "elementRise", kiln.elements().resistanceRise());
        Json.number(o, "lostAtElementRise", finite(m.elementRise()));
        if (TradePower.of(review).filter(TradePower::conflict).isPresent()) {
            Json.number(
                    o,
                    "electricityAloneLostAtElementRise",
                    finite(review.firing().electricMargin().elementRise()));
        }
        Json.number(o, "lostAtVoltageDrop", finite(m.voltageDrop()));
        index(o, "stepIndexLostByElements", m.riseStep());
        Json.number(o, "lossFactor", kiln.lossFactor());
        Json.number(o, "lostAtLossFactor", finite(m.lossFactor()));
        index(o, "stepIndexLostByLoss", m.lossStep());
    }

    /** A step from 0; null for none. */
    private static void index(ObjectNode o, String name, int step) {
        o.put(name, step < 0 ? null : Integer.valueOf(step));
    }

    private static Double finite(double v) {
        return Double.isFinite(v) ? v : null;
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
