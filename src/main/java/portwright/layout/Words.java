package portwright.layout;

import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Sentences about layouts. */
final class Words {
    /** Rules whose measure must not exceed its limit; shares. */
    private static final Set<String> AT_MOST = Set.of("weakest-section", "port-balance");

    /** Begins the sentence that tells a margin. */
    static final String WEIGHED = "Every clearance weighed for the places passes ";

    /** Broken stops of a rule that are named. */
    private static final int NAMED = 4;

    private Words() {}

    static String count(int n, String one, String many) {
        String[] small = {"No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight"};
        return (n < small.length ? small[n] : String.valueOf(n)) + " " + (n == 1 ? one : many);
    }

    /** The same in figures. */
    static String figure(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    /** What a term says, with numbers: a phrase to follow "limited by". */
    static String term(Term t) {
        boolean most = AT_MOST.contains(t.rule());
        int digits = digits(t);
        StringBuilder s = new StringBuilder(what(t))
                .append(": ")
                .append(measured(t, digits))
                .append("; ")
                .append(t.rule())
                .append(": ");
        if (t.caution() == 0) {
            return s.append(
                            t.rule().equals("fitting-clearance")
                                    ? "not known where it is gone, state its turn"
                                    : "caution where it is gone")
                    .toString();
        }
        if (!Double.isNaN(t.stop())) {
            s.append("stop ")
                    .append(most ? "over " : "under ")
                    .append(number(t, t.stop(), digits))
                    .append(", ");
        }
        return s.append("caution ")
                .append(most ? "over " : "under ")
                .append(number(t, t.caution(), digits))
                .toString();
    }

    /** As many further decimals as show a measure that is off its limit as off it. */
    private static int digits(Term t) {
        int more = 0;
        while (more < 4 && (alike(t, t.stop(), more) || alike(t, t.caution(), more))) {
            more++;
        }
        return more;
    }

    private static boolean alike(Term t, double limit, int more) {
        return Math.abs(t.measured() - limit) > 1e-9 * Math.max(1, Math.abs(limit))
                && figure(t, t.measured(), more).equals(figure(t, limit, more));
    }

    private static String figure(Term t, double v, int more) {
        return t.unit().equals("mm")
                ? Format.plain(v, 1 + more)
                : AT_MOST.contains(t.rule()) ? Format.plain(100 * v, more) + " %" : Format.plain(v, 2 + more);
    }

    private static String number(Term t, double v, int more) {
        return t.unit().equals("mm") ? BothSystems.told(v, figure(t, v, more), "mm") : figure(t, v, more);
    }

    /** What was measured, in inches too as another figure than the limits that it is off. */
    private static String measured(Term t, int more) {
        double[] limits = DoubleStream.of(t.stop(), t.caution())
                .filter(v -> !Double.isNaN(v))
                .toArray();
        return t.unit().equals("mm")
                ? BothSystems.toldBeside(t.measured(), figure(t, t.measured(), more), limits)
                : figure(t, t.measured(), more);
    }

    /** A broken stop with how much it lacks; what has no stop lacks nothing. */
    static String miss(Term t) {
        if (Double.isNaN(t.stop())) {
            return term(t);
        }
        return term(t) + ": " + lacks(t);
    }

    private static String lacks(Term t) {
        double lacks = AT_MOST.contains(t.rule()) ? t.measured() - t.stop() : t.stop() - t.measured();
        String amount = t.unit().equals("mm")
                ? BothSystems.told(lacks, 1 + digits(t), "mm")
                : AT_MOST.contains(t.rule())
                        ? Format.plain(100 * lacks, 1) + " % of the line too much"
                        : Format.plain(lacks, 2 + digits(t));
        return AT_MOST.contains(t.rule()) ? amount : amount + " short";
    }

    /** The broken stops of one rule, the worst first: a few by name with what they lack, and how many more. */
    static String misses(List<Term> some) {
        StringBuilder s = new StringBuilder(miss(some.get(0)));
        List<Term> named = some.subList(1, Math.min(NAMED, some.size()));
        for (int i = 0; i < named.size(); i++) {
            Term t = named.get(i);
            s.append(i == 0 ? "; also " : ", ").append(what(t)).append(": ").append(measured(t, digits(t)));
            s.append(Double.isNaN(t.stop()) ? "" : " (" + lacks(t) + ")");
        }
        return s + (some.size() > NAMED ? ", and " + (some.size() - NAMED) + " more" : "");
    }

    private static String what(Term t) {
        String first = t.parts().get(0);
        String all = String.join(" and ", t.parts());
        return switch (t.rule()) {
            case "element-clearance", "port-spacing", "edge-distance" -> "brick between " + all;
            case "joint-sliver" ->
                t.parts().contains(JointMargin.CUT)
                        ? "reach of " + first + " over the joint that it cuts"
                        : "brick between " + first + " and the nearest joint";
            case "inside-chamber", "fitting-clearance" -> "room between " + all;
            case "flame-on-element", "flame-on-fitting", "post-in-flame" -> "room between the flame of " + all;
            case "burner-room" -> "room between the burner under " + all;
            case "shelf-over-inlet" -> "height of " + t.parts().get(1) + " over " + first;
            case "flue-over-inlet" -> "distance of " + all + ", seen from above";
            case "weakest-section" -> "brick lost along the weakest straight line, by " + String.join(", ", t.parts());
            case "port-balance" -> "the middle of " + String.join(", ", t.parts()) + " off the axis, of the radius";
            case "flame-path" -> "free area beside " + all + " over the area of the inlets";
            case "flue-inlet-ratio" -> "area of the flues over that of the inlets";
            case "burner-fit" -> "ring of air round the tip of " + first;
            default -> all;
        };
    }

    static String margin(double m) {
        if (m < 0) {
            return "below its stop limit";
        }
        if (m < 1) {
            return "without a stop, with less room than is wanted";
        }
        if (Format.plain(m, 2).equals("1")) {
            return "with just what its caution asks";
        }
        return "with " + Format.plain(m, 2) + " times what its caution asks";
    }
}
