package portwright.layout;

import java.util.Set;
import portwright.units.Format;

/** Sentences about layouts. */
final class Words {
    /** Rules whose measure must not exceed its limit; shares. */
    private static final Set<String> AT_MOST = Set.of("weakest-section", "port-balance");

    private Words() {}

    static String count(int n, String one, String many) {
        String[] small = {"No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight"};
        return (n < small.length ? small[n] : String.valueOf(n)) + " " + (n == 1 ? one : many);
    }

    /** What a term says, with numbers: a phrase to follow "limited by". */
    static String term(Term t) {
        boolean most = AT_MOST.contains(t.rule());
        StringBuilder s = new StringBuilder(what(t))
                .append(": ")
                .append(number(t, t.measured()))
                .append("; ")
                .append(t.rule())
                .append(": ");
        if (!Double.isNaN(t.stop())) {
            s.append("stop ")
                    .append(most ? "over " : "under ")
                    .append(number(t, t.stop()))
                    .append(", ");
        }
        return s.append("caution ")
                .append(most ? "over " : "under ")
                .append(number(t, t.caution()))
                .toString();
    }

    private static String number(Term t, double v) {
        if (t.unit().equals("mm")) {
            return Format.plain(v, 1) + " mm";
        }
        return AT_MOST.contains(t.rule()) ? Format.plain(100 * v, 0) + " %" : Format.plain(v, 2);
    }

    private static String what(Term t) {
        String first = t.parts().get(0);
        String all = String.join(" and ", t.parts());
        return switch (t.rule()) {
            case "element-clearance", "port-spacing", "edge-distance" -> "brick between " + all;
            case "joint-sliver" ->
                t.parts().contains(Joints.CUT)
                        ? "reach of " + first + " over the joint that it cuts"
                        : "brick between " + first + " and the nearest joint";
            case "inside-chamber", "fitting-clearance" -> "room between " + all;
            case "flame-on-element", "post-in-flame" -> "room between the flame of " + all;
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
            return "without a stop, with a caution";
        }
        return "with " + Format.plain(m, 2) + " times what any caution asks";
    }
}
