package portwright.cli;

import java.util.Optional;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.report.VerdictLine;

/** What is said of paper that was printed although the verdict forbids to work from it. */
final class DespiteStops {
    private DespiteStops() {}

    /**
     * How the line on a file that is struck through ends; empty where the paper is whole. Sheets are struck for stops alone, as those that are merely not
     * proven say so themselves; the card is struck for both.
     */
    static Optional<String> of(CheckResult result, Forbids purpose) {
        boolean drilling = purpose == Forbids.DRILLING;
        long stops = result.stops(purpose);
        long unproven = drilling ? 0 : result.unchecked(purpose);
        if (stops + unproven == 0) {
            return Optional.empty();
        }
        return Optional.of(", STRUCK THROUGH, "
                + (stops > 0
                        ? VerdictLine.count(stops, "stop")
                        : VerdictLine.count(unproven, "rule") + " that could forbid lighting not checked")
                + (drilling ? ": do not drill from it." : ": do not fire from it."));
    }
}
