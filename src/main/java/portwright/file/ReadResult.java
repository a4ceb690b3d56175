package portwright.file;

import java.util.List;
import portwright.model.Design;

/**
 * What came of reading a design.
 *
 * @param design the design; null when there is any problem
 * @param document the text as an editable document; null when it is no JSON at all
 * @param problems every error found, in file order
 */
public record ReadResult(Design design, DesignText document, List<Problem> problems) {
    public ReadResult {
        problems = List.copyOf(problems);
    }

    /** Whether there is a design. */
    public boolean ok() {
        return design != null;
    }
}
