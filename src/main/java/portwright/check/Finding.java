package portwright.check;

import java.util.List;
import java.util.function.UnaryOperator;
import portwright.source.Source;

/**
 * One finding.
 *
 * @param forbids what a stop forbids; on a caution or note the purpose it bears on, {@link Forbids#NOTHING} for both
 * @param parts names of the parts it is about: the hole first, then the obstacle
 * @param measured null where nothing is measured
 * @param limit null where there is none
 * @param message what is, present tense, number and unit
 * @param remedy what to do, with how much
 * @param limitSetByUser whether the design's own limit was used
 * @param marks places on drawings
 */
public record Finding(
        String rule,
        Severity severity,
        Forbids forbids,
        List<String> parts,
        Measure measured,
        Measure limit,
        String message,
        String remedy,
        Source source,
        boolean limitSetByUser,
        List<Mark> marks) {
    public Finding {
        parts = List.copyOf(parts);
        marks = List.copyOf(marks);
    }

    /** The same finding, its sentences put in other words. */
    public Finding inWords(UnaryOperator<String> words) {
        return new Finding(
                rule,
                severity,
                forbids,
                parts,
                measured,
                limit,
                words.apply(message),
                remedy == null ? null : words.apply(remedy),
                source,
                limitSetByUser,
                marks);
    }

    /** Whether who drills (or lights) has to know of it: it could forbid that, or it forbids nothing and counts for both. */
    public boolean bearsOn(Forbids purpose) {
        return forbids == purpose || forbids == Forbids.NOTHING;
    }
}
