package portwright.cli;

import java.util.Optional;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.report.VerdictLine;
import portwright.review.Review;

/** The verdict on lighting, for a command that tells figures of a fire and no findings. */
final class Lighting {
    private Lighting() {}

    /** The line of the whole rule book; empty where no gas is to be lit. */
    static Optional<String> line(Review review) {
        return review.design().allElectric()
                ? Optional.empty()
                : Optional.of(VerdictLine.lighting(new RuleBook(LimitTable.load()).check(review)));
    }
}
