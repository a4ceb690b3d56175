package portwright.app.doc;

/**
 * What a step's test tile shows.
 *
 * @param unread fields that hold something that cannot be read
 * @param borrowed values that are still the starter's
 * @param missing fields of the step that some rule lacks
 */
public record StepCount(int stops, int cautions, int notChecked, int unread, int borrowed, int missing) {
    /** What its sign of what is open counts: rules that are not checked, else fields that are not filled in. */
    public int open() {
        return notChecked > 0 ? notChecked : missing;
    }

    /** What the counts are, and what to do about the mark of the starter's values. */
    public String told() {
        return words()
                + (borrowed == 0
                        ? "."
                        : " (◇). Each is the example's, not measured on yours: type your own, or press Enter in a field that is right.");
    }

    /** Worded for a screen reader. */
    public String words() {
        String starters = borrowed == 0
                ? ""
                : borrowed + (borrowed == 1 ? " value is still the starter's" : " values are still the starter's");
        if (stops + cautions + notChecked + unread + missing == 0) {
            return starters.isEmpty() ? "clear" : starters;
        }
        return stops + (stops == 1 ? " stop, " : " stops, ") + cautions + (cautions == 1 ? " caution, " : " cautions, ")
                + notChecked + " not checked"
                + (unread == 0 ? "" : ", " + unread + (unread == 1 ? " field" : " fields") + " unreadable")
                + (missing == 0 ? "" : ", " + missing + (missing == 1 ? " field" : " fields") + " not filled in")
                + (starters.isEmpty() ? "" : ", " + starters);
    }
}
