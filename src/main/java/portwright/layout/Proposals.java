package portwright.layout;

import java.util.List;

/**
 * What a search found.
 *
 * @param best up to three clearly different layouts, and behind them the widest where it is uneven and distinctly wider, without a geometry stop, those with the fewest stops of any other rule first, then the best; empty
 *     when there is none. One that a rule of places or sizes stops is here only where every layout that was checked is stopped
 * @param impossible rules that no layout passes, each with words; empty when one passes all
 * @param nearestMiss the layout that comes nearest where none passes; null otherwise
 * @param widest the layout with the largest margin of all that pass with the fewest stops, whether shown or only told as what lying evenly costs; null
 *     when none passes
 * @param cancelled whether the search was ended early
 * @param tried numbers, sizes and parts that were tried, in a sentence
 */
public record Proposals(
        List<Proposal> best,
        List<Impossible> impossible,
        Proposal nearestMiss,
        Proposal widest,
        boolean cancelled,
        String tried) {
    Proposals(
            List<Proposal> best,
            List<Impossible> impossible,
            Proposal nearestMiss,
            Proposal widest,
            boolean cancelled) {
        this(best, impossible, nearestMiss, widest, cancelled, "");
    }

    /** The same with what was tried. */
    Proposals tried(String words) {
        return new Proposals(best, impossible, nearestMiss, widest, cancelled, words);
    }

    public Proposals {
        best = List.copyOf(best);
        impossible = List.copyOf(impossible);
    }

    /**
     * A rule that no layout keeps.
     *
     * @param alone whether a layout exists as soon as this rule alone is left out
     */
    public record Impossible(String rule, boolean alone, String words) {}
}
