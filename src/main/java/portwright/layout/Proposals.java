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
 * @param few why fewer than three are shown, in a sentence; empty where three are
 * @param own the layout that the design has; null where its ports are not of the kinds that are proposed, or differ in size
 */
public record Proposals(
        List<Proposal> best,
        List<Impossible> impossible,
        Proposal nearestMiss,
        Proposal widest,
        boolean cancelled,
        String tried,
        String few,
        OwnLayout own) {
    Proposals(
            List<Proposal> best,
            List<Impossible> impossible,
            Proposal nearestMiss,
            Proposal widest,
            boolean cancelled) {
        this(best, impossible, nearestMiss, widest, cancelled, "", "", null);
    }

    /** What stands against every layout, and the nearest miss, null where none is known. */
    static Proposals none(List<Impossible> impossible, Proposal nearestMiss, boolean cancelled) {
        return new Proposals(List.of(), impossible, nearestMiss, null, cancelled);
    }

    /** The same with what was tried and the design's own layout. */
    Proposals with(String words, OwnLayout own) {
        return new Proposals(best, impossible, nearestMiss, widest, cancelled, words, few, own);
    }

    /** The same with why it has fewer than three. */
    Proposals with(String fewer) {
        return new Proposals(best, impossible, nearestMiss, widest, cancelled, tried, fewer, own);
    }

    /** How a proposal compares with the layout that the design has; empty where there is nothing to tell. */
    public String besideOwn(Proposal p) {
        return own == null ? "" : own.beside(p);
    }

    /** What stops the nearest miss: what takes all room first, then the worst; empty where none is known. */
    public List<String> misses() {
        return nearestMiss == null
                ? List.of()
                : nearestMiss.misses(impossible.stream().map(Impossible::rule).toList());
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
