package portwright.app.doc;

/**
 * What a step's test tile shows.
 *
 * @param unread fields that hold something that cannot be read
 */
public record StepCount(int stops, int cautions, int notChecked, int unread) {
    /** Worded for a screen reader. */
    public String words() {
        if (stops + cautions + notChecked + unread == 0) {
            return "clear";
        }
        return stops + (stops == 1 ? " stop, " : " stops, ") + cautions + (cautions == 1 ? " caution, " : " cautions, ")
                + notChecked + " not checked"
                + (unread == 0 ? "" : ", " + unread + (unread == 1 ? " field" : " fields") + " unreadable");
    }
}
