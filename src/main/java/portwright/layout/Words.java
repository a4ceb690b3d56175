package portwright.layout;

import java.util.List;
import portwright.units.Format;

/** Sentences about layouts. */
final class Words {
    private Words() {}

    static String count(int n, String one, String many) {
        String[] small = {"No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight"};
        return (n < small.length ? small[n] : String.valueOf(n)) + " " + (n == 1 ? one : many);
    }

    /** What a term says, with numbers. */
    static String term(Term t) {
        String between =
                String.join(" to ", t.parts().size() > 2 ? List.of(t.parts().get(0) + " and others") : t.parts());
        String unit = t.unit().equals("mm") ? " mm" : "";
        int digits = t.unit().equals("mm") ? 1 : 3;
        StringBuilder s = new StringBuilder(t.rule())
                .append(" (")
                .append(between)
                .append("): ")
                .append(Format.plain(t.measured(), digits))
                .append(unit);
        if (!Double.isNaN(t.stop())) {
            s.append(", stop at ").append(Format.plain(t.stop(), digits)).append(unit);
        }
        return s.append(", caution at ")
                .append(Format.plain(t.caution(), digits))
                .append(unit)
                .toString();
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
