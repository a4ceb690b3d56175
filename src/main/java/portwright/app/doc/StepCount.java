package portwright.app.doc;

/** What a step's test tile shows. */
public record StepCount(int stops, int cautions, int notChecked) {
    /** Worded for a screen reader. */
    public String words() {
        if (stops + cautions + notChecked == 0) {
            return "clear";
        }
        return stops + (stops == 1 ? " stop, " : " stops, ") + cautions + (cautions == 1 ? " caution, " : " cautions, ")
                + notChecked + " not checked";
    }
}
