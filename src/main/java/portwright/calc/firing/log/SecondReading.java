package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import portwright.units.PlainSigns;

/** A second temperature column beside the one that is read: how far the two lie apart, in words. */
final class SecondReading {
    /** Two sound thermocouples of one chamber differ by less, this project's judgement. */
    private static final double APART_K = 15;

    private record Pair(int line, double differsK) {}

    private final List<Pair> pairs = new ArrayList<>();
    private boolean told;

    /** Whether the second column holds any reading. */
    boolean told() {
        return told;
    }

    /** Notes one row; {@code null} and NaN where a column tells nothing. */
    void row(int line, Double firstK, Double secondK) {
        told |= secondK != null && Double.isFinite(secondK);
        if (firstK != null && secondK != null && Double.isFinite(firstK - secondK)) {
            pairs.add(new Pair(line, secondK - firstK));
        }
    }

    /** What a log's reader should know of the column. */
    String words(String first, String second) {
        String head = "the temperature is read from column \"" + PlainSigns.shown(first) + "\"; \""
                + PlainSigns.shown(second) + "\" is only laid beside it: ";
        if (pairs.isEmpty()) {
            return head + "no row has both";
        }
        double middle = Followed.median(pairs.stream().map(Pair::differsK).toList());
        Pair most = pairs.stream()
                .max(Comparator.comparingDouble(p -> Math.abs(p.differsK())))
                .orElseThrow();
        String by = pairs.size() == 1
                ? "in the one row with both it reads " + apart(middle)
                : "in the middle of " + pairs.size() + " rows it reads " + apart(middle) + ", at most "
                        + apart(most.differsK());
        return head + by + " (line " + most.line() + ")"
                + (Math.abs(middle) > APART_K
                        ? "; so far apart, one of the two is wrong or they measure different places. Cones tell which"
                        : "");
    }

    private static String apart(double k) {
        return String.format(
                Locale.ROOT, "%.0f °C (%.0f °F) %s", Math.abs(k), Math.abs(k) * 1.8, k >= 0 ? "higher" : "lower");
    }
}
